import { type ReactNode, useId, useState } from 'react';
import type { InputRow, LimitRow, ScenarioTable } from '../../session/compare-scenarios.ts';
import type { ByScenario } from '../../session/scenario-answers.ts';
import { usePlan } from '../use-session.ts';
import { columnClass } from './column-class.ts';
import { InputLine } from './input-line.tsx';
import { LimitLine } from './limit-line.tsx';
import { WorstLimitWords } from './worst-limit-words.tsx';

interface Props {
  readonly table: ScenarioTable;
  readonly answers: ByScenario;
  readonly waiting: number;
  readonly why: string | undefined;
}

const columnKey = (column: string | null): string => column ?? '';
const columnTitle = (column: string | null): string => column ?? 'Base values';

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** A column picked where there is room for one. It holds until another scenario is shown. */
interface Picked {
  readonly column: string | null;
  readonly active: string | null;
}

interface GroupProps {
  readonly span: number;
  readonly title: string;
  readonly children: ReactNode;
}

const GroupLine = ({ span, title, children }: GroupProps) => (
  <tr className="scenarios-group">
    <th className="type-section" scope="rowgroup" colSpan={span}>
      {title} <span className="type-small base-soft">{children}</span>
    </th>
  </tr>
);

/** Every scenario in a column: what differs first, then limits, the rest behind a button. */
export function Comparison({ table, answers, waiting, why }: Props) {
  const { active } = usePlan();
  const { columns, inputs, limits } = table;
  const id = useId();
  const [picked, setPicked] = useState<Picked>();
  const [all, setAll] = useState(false);
  const one = picked?.active === active && columns.includes(picked.column) ? picked.column : active;
  const differing = { inputs: inputs.filter((it) => it.differs), limits: limits.filter((it) => it.differs) };
  const alike = { inputs: inputs.filter((it) => !it.differs), limits: limits.filter((it) => !it.differs) };
  const span = columns.length + 1;
  const line = { columns, active, picked: one };
  const inputLines = (rows: readonly InputRow[]) =>
    rows.map((row) => <InputLine key={row.cell.name} row={row} {...line} />);
  const limitLines = (rows: readonly LimitRow[]) =>
    rows.map((row) => <LimitLine key={row.name} row={row} {...line} />);
  return (
    <div className="scenarios-compare">
      <h3 className="type-section">Side by side</h3>
      <p className="type-small base-soft" role="status">
        {why ?? (waiting > 0 ? `${count(waiting, 'scenario is', 'scenarios are')} being worked out.` : '')}
      </p>
      <div className="scenarios-picker">
        <label className="type-small base-soft" htmlFor={`${id}pick`}>
          Column shown
        </label>
        <select
          id={`${id}pick`}
          className="scenarios-pick"
          value={columnKey(one)}
          onChange={(event) =>
            setPicked({ column: event.target.value === '' ? null : event.target.value, active })
          }
        >
          {columns.map((it) => (
            <option key={columnKey(it)} value={columnKey(it)}>
              {columnTitle(it)}
            </option>
          ))}
        </select>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled with the keys */}
      <section className="scenarios-scroll" aria-label="Scenarios side by side" tabIndex={0}>
        <table className="scenarios-table">
          <thead>
            <tr>
              <th scope="col" className="type-small base-soft">
                Choice or limit
              </th>
              {columns.map((it) => (
                <th
                  key={columnKey(it)}
                  scope="col"
                  className={`${columnClass(it, one)} type-label`}
                  data-shown={it === active ? '' : undefined}
                >
                  {columnTitle(it)}
                  {it === active && <span className="type-small base-soft"> shown now</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row" className="type-label">
                Worst limit
              </th>
              {columns.map((it) => (
                <td key={columnKey(it)} className={columnClass(it, one)}>
                  <WorstLimitWords answer={answers.get(it)} />
                </td>
              ))}
            </tr>
          </tbody>
          <tbody>
            <GroupLine span={span} title="Choices that differ">
              {differing.inputs.length === 0 && 'None: all columns have the same choices.'}
            </GroupLine>
            {inputLines(differing.inputs)}
          </tbody>
          {answers.size > 0 && (
            <tbody>
              <GroupLine span={span} title="Limits that differ">
                {differing.limits.length === 0 && 'None.'}
              </GroupLine>
              {limitLines(differing.limits)}
            </tbody>
          )}
          <tbody>
            <tr className="scenarios-group">
              <th scope="rowgroup" colSpan={span}>
                <button
                  type="button"
                  className="scenarios-all type-label"
                  aria-expanded={all}
                  onClick={() => setAll(!all)}
                >
                  The same in every column: {count(alike.inputs.length, 'choice', 'choices')},{' '}
                  {count(alike.limits.length, 'limit', 'limits')}
                </button>
              </th>
            </tr>
            {all && inputLines(alike.inputs)}
            {all && limitLines(alike.limits)}
          </tbody>
        </table>
      </section>
    </div>
  );
}
