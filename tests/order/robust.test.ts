import fc from 'fast-check';
import { expect, it } from 'vitest';
import { orderList } from '../../src/order/list/order-list.ts';
import { dxfOf } from '../../src/order/template/dxf.ts';
import { svgOf } from '../../src/order/template/svg.ts';
import { templateParts } from '../../src/order/template/template-parts.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { randomInputs } from '../workbook/random-inputs.ts';

const plan = newPlan('Drawn at random');

it('the order of any plan is whole sentences and finite figures, and what has no answer is said', () => {
  const book = new Workbook(plan, null);
  fc.assert(
    fc.property(randomInputs, fc.constantFrom('mm', 'in', 'both'), (drawn, units) => {
      book.show(plan, null, new Map(Object.entries(drawn)));
      const ask = (name: string) => book.answer(name).value;
      const list = orderList({ ask, units, profile: [] }, []);
      const { parts, unanswered } = templateParts({ ask, units, profile: [] });
      for (const it of list)
        expect([it.title, it.tables.length + it.unanswered.length > 0]).toEqual([it.title, true]);
      for (const sentence of [...list.flatMap((it) => [...it.notes, ...it.unanswered]), ...unanswered])
        expect(sentence).toMatch(/^[A-Z\d].*\.$/s);
      const all = JSON.stringify(list) + dxfOf(parts, 'x') + svgOf(parts, 'x');
      expect(all).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }),
    { numRuns: 80, seed: 5, endOnFailure: true },
  );
  book.destroy();
});
