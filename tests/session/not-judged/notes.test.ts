import { describe, expect, it } from 'vitest';
import { cellNamed } from '../../../src/plan/book.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Value } from '../../../src/plan/plan.ts';
import { NOTES } from '../../../src/session/not-judged/notes.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const workbook = new Workbook(newPlan('Notes'));
const valueAt = (name: string): Value => workbook.answer(name).value;

const said = (title: string, look = valueAt): string => {
  const note = NOTES.find((it) => it.title === title);
  if (note === undefined) throw new Error(`There is no note on ${title}.`);
  return note.pieces
    .map((piece) =>
      typeof piece === 'string' ? piece : 'cell' in piece ? String(look(piece.cell)) : piece.works(look),
    )
    .join('');
};

describe('notes on what is not judged', () => {
  it('name only cells that are there', () => {
    const names = NOTES.flatMap((note) => note.pieces).flatMap((it) =>
      typeof it === 'object' && 'cell' in it ? [it.cell] : [],
    );
    expect(names.length).toBeGreaterThan(5);
    expect(names.filter((name) => cellNamed(name) === undefined)).toEqual([]);
  });

  it('show the stock in both steels', () => {
    // By hand from the model's answers: 0.7853·450/205 = 1.7238.
    expect(said('The steel of the stock')).toContain('it would bear 1.72.');
  });

  it('put the part with the largest share first', () => {
    expect(said('What gives first')).toMatch(
      /^By share of what each bears: the lower bolts 0\.96, the stock 0\.79, the skin round a lower bolt 0\.75/,
    );
  });

  it('say whether the packing is past four thirds of the bolt', () => {
    const packed =
      (packing: number) =>
      (name: string): Value =>
        name === 'lower_packing' ? packing : name === 'bolt_diameter' ? 12 : 0;
    expect(said('Loose sheets creep', packed(16))).toContain('It is not past that here.');
    expect(said('Loose sheets creep', packed(16.1))).toContain('It is past that here.');
  });

  it('estimate bending, slamming and the swing of the bolts', () => {
    const text = said('Bending, slamming, fatigue');
    // By hand from the model's answers: 4471.1642·150²·(550 + 150)/(3·193000·I), I = π/64·(60.3⁴ − 52.5⁴) mm⁴.
    expect(text).toContain('gives way by about 0.4 mm');
    // ½·1025·5.15·0.0603·5².
    expect(text).toContain('pushes with about 3979 N on each metre');
    // 11936.2·(752.36/2794.48)/84.3.
    expect(text).toContain('swings by about 38 MPa under daily steering');
  });

  it('size what the loads leave out', () => {
    // By hand from the model's answers: 2794.48·(0.4·230 − 55) = 103 396 N·mm; over 140 mm, × cos 10°.
    expect(said('The blade’s own turning moment')).toContain('about 103 N·m');
    expect(said('The blade’s own turning moment')).toContain('about 727 N more');
    // 331.68·45/550.
    expect(said('What slips at the clamp, ahead of the shaft')).toContain('about 27 N');
    // 200·84.3 N over 87 mm on 193 000·84.3: 0.0902 mm, of 48 mm.
    expect(said('The clamping is soon lost')).toContain('only 0.09 mm longer');
    expect(said('The clamping is soon lost')).toContain('0.2 % of the shim stack');
    // m = 70, n = 30.
    expect(said('Flanges that bend')).toContain('up to 117 % more');
  });

  it('say so where a number is missing', () => {
    const nothing = (): Value => null;
    expect(said('The steel of the stock', nothing)).toContain('no answer');
    expect(said('What gives first', nothing)).toContain('no answer');
    expect(said('Bending, slamming, fatigue', nothing).match(/no answer/g)).toHaveLength(3);
  });
});
