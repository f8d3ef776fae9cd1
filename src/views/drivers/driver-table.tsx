import { useMemo } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { intervalPercent } from '../../studies/chance-words.ts';
import type { Varied } from '../../studies/drivers/varied.ts';
import type { DriverWords } from '../../studies/drivers/words.ts';
import type { LimitDrivers } from '../../studies/drivers.ts';
import { cellHref } from '../parts/cell-href.ts';
import { labelOf } from '../parts/show.ts';
import { DriverBar } from './driver-bar.tsx';
import { type DriverRow, driverRows, MOST_ROWS, roomEnds } from './driver-rows.ts';

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
  const rows = useMemo(() => driverRows(of, inputs), [of, inputs]);
  const shown = rows.slice(0, MOST_ROWS);
  const room = of.room ?? 0;
  const ends = roomEnds(room, shown);
  const { figure } = words.limit(of.limit);
  const shares = new Map((of.shares ?? []).map((it) => [it.factor.name, it]));
  const again = new Map((of.again ?? []).map((it) => [it.factor.name, it]));
  const cellsOf = (row: DriverRow) => {
    const share = shares.get(row.input);
    const better = again.get(row.input);
    return (
      <>
        <td className="driver-changes">
          {row.slope.kink ? (
            <>
              {signed(row.more, figure)} more
              <br />
              {signed(row.less, figure)} less
            </>
          ) : (
            signed(row.more, figure)
          )}
        </td>
        <td className="driver-share">{share === undefined ? 'none' : intervalPercent(share.total)}</td>
        <td className="driver-again">{better === undefined ? '' : `±${figure(better.then)}`}</td>
      </>
    );
  };
  return (
    <table className="driver-table type-small">
      <caption className="base-spoken">What moves {words.limit(of.limit).short}, strongest first</caption>
      <thead>
        <tr>
          <th scope="col">Input, and how far it may be off</th>
          <th scope="col" className="driver-picture">
            <span className="driver-head">
              Room now <b>{figure(room)}</b>
            </span>
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
              <DriverBar room={room} less={row.less} more={row.more} ends={ends} />
            </td>
            {cellsOf(row)}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
