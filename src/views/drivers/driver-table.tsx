import { useMemo, useRef } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { intervalPercent } from '../../studies/chance-words.ts';
import { errorsAmong, type Varied } from '../../studies/drivers/varied.ts';
import type { DriverWords } from '../../studies/drivers/words.ts';
import type { LimitDrivers } from '../../studies/drivers.ts';
import { cellHref } from '../parts/cell-href.ts';
import { labelOf } from '../parts/show.ts';
import { useBox } from '../parts/use-box.ts';
import { DriverBar, DriverHead } from './driver-bar.tsx';
import { type DriverRow, driverRows, roomEnds, tellingRows } from './driver-rows.ts';

interface Props {
  readonly of: LimitDrivers;
  readonly inputs: readonly Varied[];
  readonly words: DriverWords;
  readonly plan: Plan;
}

const signed = (value: number, figure: (value: number) => string): string =>
  value === 0 ? figure(0) : `${value < 0 ? '−' : '+'}${figure(Math.abs(value))}`;

/** The picture and its figures in one: each input that may be off, how it moves the room, and what it has in the spread. */
export function DriverTable({ of, inputs, words, plan }: Props) {
  const rows = useMemo(() => driverRows(of), [of]);
  const shown = tellingRows(rows);
  const frame = useRef<HTMLTableCellElement>(null);
  const width = Math.max(40, useBox(frame)?.width ?? 240);
  const room = of.room ?? 0;
  const [low, high] = roomEnds(room, shown);
  const scale = { low, high, width };
  const { figure } = words.limit(of.limit);
  const shares = new Map((of.shares ?? []).map((it) => [it.factor.name, it]));
  const errors = errorsAmong(inputs);
  const shared = (of.shares ?? []).filter((it) => it.factor.shared);
  const toolOf = new Map(
    shared.flatMap(({ factor }) => factor.moves.map((i) => [errors[i]?.name, factor.name] as const)),
  );
  const again = new Map((of.again ?? []).map((it) => [it.factor.name, it]));
  const nowWords = `${figure(Math.abs(room))} ${room < 0 ? 'outside' : 'room'}`;
  const cellsOf = (row: DriverRow) => {
    const share = shares.get(row.input);
    const known = again.get(row.input);
    return (
      <>
        <td className="driver-changes">
          {row.slope.kink ? (
            <>
              {signed(row.more, figure)} more
              <br />
              {signed(row.less, figure)} less
            </>
          ) : row.table ? (
            `±${figure(row.more)}`
          ) : (
            signed(row.more, figure)
          )}
        </td>
        <td className="driver-share">
          {share === undefined ? 'none by itself' : intervalPercent(share.total)}
          {toolOf.has(row.input) && (
            <span className="driver-tool base-soft">and the {toolOf.get(row.input)}’s</span>
          )}
        </td>
        <td className="driver-again">{known === undefined ? '' : `±${figure(known.better)}`}</td>
      </>
    );
  };
  const rest = rows.length - shown.length;
  return (
    <>
      <table className="driver-table type-small">
        <caption className="base-spoken">What moves {words.limit(of.limit).short}, strongest first</caption>
        <thead>
          <tr>
            <th scope="col">Input, and how far it may be off</th>
            <th scope="col" className="driver-picture" ref={frame}>
              <span className="base-spoken">Room now {nowWords}</span>
              <DriverHead room={room} scale={scale} now={`now ${nowWords}`} />
            </th>
            <th scope="col" className="driver-changes">
              If it is that much more
            </th>
            <th scope="col" className="driver-share">
              Part of the spread
            </th>
            <th scope="col" className="driver-again">
              Spread, known to half
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((row) => (
            <tr key={row.input}>
              <th scope="row">
                <a href={cellHref(row.input)}>{labelOf(row.input, plan)}</a>{' '}
                <span className="base-soft driver-off">±{words.cell(row.input).figure(row.offBy)}</span>
              </th>
              <td className="driver-picture">
                <DriverBar room={room} less={row.less} more={row.more} scale={scale} />
              </td>
              {cellsOf(row)}
            </tr>
          ))}
        </tbody>
      </table>
      {shared.map(({ factor, total }) => (
        <p key={factor.name} className="type-small">
          What all readings with the {factor.name} share: {intervalPercent(total)} of the spread.
        </p>
      ))}
      {rest > 0 && (
        <p className="driver-rest type-small base-soft">
          {rest === 1 ? 'One more input moves' : `${rest} more inputs move`} it by less than any of these.
        </p>
      )}
    </>
  );
}
