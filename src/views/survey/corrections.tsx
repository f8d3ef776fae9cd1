import { useCallback } from 'react';
import { cellNamed, inputNamed } from '../../plan/book.ts';
import { standInsBehind } from '../../plan/stand-ins.ts';
import type { Session } from '../../session/session.ts';
import { listed } from '../../studies/words.ts';
import { bareUnit } from '../parts/length-style.ts';
import { shortOf, shown } from '../parts/show.ts';
import { TakeOver } from '../parts/take-over.tsx';
import { useUnits } from '../parts/use-units.ts';
import { useLook } from '../use-session.ts';

/** What was read, what it is once trim and list are taken out, and the reading of the boat it is for. */
const LINES: readonly (readonly [read: string | undefined, corrected: string, boat: string])[] = [
  ['survey_slope_read', 'survey_rake', 'transom_rake'],
  ['rake_reading', 'level_rake', 'transom_rake'],
  ['top_reading', 'survey_top', 'transom_top'],
  ['bottom_reading', 'survey_bottom', 'transom_bottom'],
  ['rudder_head_reading', 'survey_rudder_head', 'main_rudder_head'],
  ['rudder_foot_reading', 'survey_rudder_foot', 'main_rudder_foot'],
  [undefined, 'survey_overhang_head', 'rudder_overhang'],
  [undefined, 'survey_overhang_foot', 'rudder_overhang_foot'],
  [undefined, 'survey_camber_radius', 'transom_camber_radius'],
];

const MOST_NAMED = 3;

/** Names in a row, the first few where there are many. */
const joined = (names: readonly string[]): string =>
  listed(
    names.length > MOST_NAMED ? [...names.slice(0, MOST_NAMED), `${names.length - MOST_NAMED} more`] : names,
  );

const useNumber = (name: string | undefined): number | null =>
  useLook(
    useCallback(
      (it: Session) => {
        const value = name === undefined ? null : it.value(name);
        return typeof value === 'number' ? value : null;
      },
      [name],
    ),
  );

function Line({ read, corrected, boat }: { read: string | undefined; corrected: string; boat: string }) {
  const units = useUnits();
  const [was, is] = [useNumber(read), useNumber(corrected)];
  const cell = cellNamed(corrected);
  const text = (value: number | null): string =>
    value === null ? '' : shown(value, cell?.unit ?? '–', bareUnit(units));
  const isStandIn = useLook(
    useCallback(
      (it: Session) =>
        read !== undefined && inputNamed(read) !== undefined && it.reading(read)?.origin !== 'reading',
      [read],
    ),
  );
  const standIns = useLook(
    useCallback(
      ({ plan }: Session) => joined(standInsBehind(plan, corrected).map((it) => shortOf(it, plan))),
      [corrected],
    ),
  );
  if (is === null || isStandIn) return null;
  return (
    <tr data-name={corrected} data-value={String(is)}>
      <th scope="row">
        {cell?.label}
        <TakeOver name={boat} from={corrected} />
      </th>
      <td>{text(was)}</td>
      <td>{was === null ? '' : text(is - was)}</td>
      <td className="survey-corrected">
        {text(is)}
        {standIns !== '' && <span className="base-soft"> stand-in: {standIns} not read yet</span>}
      </td>
    </tr>
  );
}

/** Reading, correction, corrected value, and the way to Boat. */
export const Corrections = () => (
  <section className="survey-table" aria-label="Reading, correction, corrected">
    <h3 className="type-section">Reading, correction, corrected</h3>
    <p className="type-small base-soft">
      Trim and list turn every height and slope that was read against gravity. What you take over follows the
      survey from then on. A line stands here once there is a reading for it.
    </p>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keyboard */}
    <section className="survey-scroll" tabIndex={0} aria-label="Corrections">
      <table className="survey-corrections">
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Reading</th>
            <th scope="col">Correction</th>
            <th scope="col">Corrected</th>
          </tr>
        </thead>
        <tbody>
          {LINES.map(([read, corrected, boat]) => (
            <Line key={corrected} read={read} corrected={corrected} boat={boat} />
          ))}
        </tbody>
      </table>
    </section>
  </section>
);
