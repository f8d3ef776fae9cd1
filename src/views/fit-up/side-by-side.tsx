import { memo } from 'react';
import { feetInUse } from '../../order/feet.ts';
import { cellNamed, results } from '../../plan/book.ts';
import type { AsFitted } from '../../session/fit-up/as-fitted.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { roomWords } from '../../workbook/limit-words.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { labelOf, shown, unitOf } from '../parts/show.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useJudgement, usePlan, useSession } from '../use-session.ts';
import { CompareTable } from './compare-table.tsx';

/** Smallest difference that is shown, as a share of the planned value; the rest is arithmetic noise. */
const SAME_WITHIN = 1e-9;

const isSame = (a: unknown, b: unknown): boolean =>
  a === b ||
  (typeof a === 'number' &&
    typeof b === 'number' &&
    Math.abs(a - b) <= SAME_WITHIN * Math.max(1, Math.abs(a)));

const RANK = { outside: 0, 'no answer': 1, near: 2, inside: 3, 'does not apply': 4 } as const;

/** Limits and results planned against as fitted; what differs stands first, the worst above. */
export function SideBySide({ found }: { readonly found: AsFitted | undefined }) {
  const session = useSession();
  const { units, fit, ...plan } = usePlan();
  const planned = new Map(useJudgement().limits.map((it) => [it.name, it]));
  if (fit.fitted.size === 0) {
    return (
      <section className="fit-up-section" aria-label="Planned and as fitted">
        <h3 className="type-section">Planned and as fitted</h3>
        <p className="type-small">No reading replaces a planned value yet, so both are the same.</p>
      </section>
    );
  }
  const limits = (found?.limits ?? [])
    .filter((it) => it.verdict.state !== 'does not apply')
    .filter((it) => {
      const before = planned.get(it.name);
      return !isSame(before?.value, it.value) || before?.verdict.state !== it.verdict.state;
    })
    .sort((a, b) => RANK[a.verdict.state] - RANK[b.verdict.state]);
  const unused = feetInUse((name) => found?.answers.get(name)?.value).includes('single')
    ? /^(port|starboard)_/
    : /^single_/;
  const judged = new Set(limits.map((it) => it.result));
  const moved = results.filter(({ name }) => {
    const now = found?.answers.get(name)?.value;
    return now !== undefined && !judged.has(name) && !unused.test(name) && !isSame(session.value(name), now);
  });
  const whole = { ...plan, units, fit };
  const say = (name: string, value: unknown): string =>
    value === null || value === undefined ? 'no answer' : shown(value as number, unitOf(name, whole), units);
  return (
    <section className="fit-up-section" aria-label="Planned and as fitted">
      <h3 className="type-section">Planned and as fitted</h3>
      {limits.length + moved.length === 0 && (
        <p className="type-small">Nothing that is worked out differs from the plan.</p>
      )}
      {limits.length > 0 && (
        <CompareTable what="Limit">
          {limits.map((it) => (
            <LimitRow
              key={it.name}
              planned={planned.get(it.name)}
              fitted={it}
              label={labelOf(it.result, whole)}
              say={say}
            />
          ))}
        </CompareTable>
      )}
      {moved.length > 0 && (
        <CompareTable what="Result">
          {moved.map(({ name }) => (
            <tr key={name}>
              <th scope="row">{cellNamed(name)?.label}</th>
              <td>{say(name, session.value(name))}</td>
              <td>{say(name, found?.answers.get(name)?.value)}</td>
            </tr>
          ))}
        </CompareTable>
      )}
    </section>
  );
}

interface RowProps {
  readonly planned: LimitAnswer | undefined;
  readonly fitted: LimitAnswer;
  readonly label: string;
  readonly say: (name: string, value: unknown) => string;
}

const LimitRow = memo(function LimitRow({ planned, fitted, label, say }: RowProps) {
  const { units } = usePlan();
  return (
    <tr data-fitted-limit={fitted.name} data-state={fitted.verdict.state}>
      <th scope="row">{label}</th>
      <td>
        {say(fitted.result, planned?.value)}{' '}
        {planned !== undefined && <StateWord state={planned.verdict.state} />}
      </td>
      <td>
        {say(fitted.result, fitted.value)} <StateWord state={fitted.verdict.state} />{' '}
        <Mark small limit={markedOf(fitted)} /> {fitted.graded && roomWords(fitted, units)}
      </td>
    </tr>
  );
});
