import { Fragment, useRef } from 'react';
import type { Estimate } from '../../calc/uncertainty/interval.ts';
import { chanceWords, intervalWords } from '../../studies/chance-words.ts';
import { differenceSentence, failsOf } from '../../studies/odds/words.ts';
import type { LimitOdds, Odds } from '../../studies/odds.ts';
import type { Words } from '../../studies/words.ts';
import { useBox } from '../parts/use-box.ts';
import { ChanceAxis, ChanceStrip } from './chance-strip.tsx';

interface Props {
  readonly odds: Odds;
  readonly words: Words;
  readonly title: (limit: string) => string;
}

/** The least room in the worst case, as it reads on the board. */
function worstWords({ worst, limit }: LimitOdds, words: Words): string {
  if (worst.room === null) return worst.fails ? 'no answer' : 'holds';
  const size = words.limit(limit).figure(Math.abs(worst.room));
  return worst.room < 0 ? `${size} outside` : `${size} room`;
}

/** A chance with its interval, the interval on a line of its own where there is one. */
function Sampled({ fails }: { readonly fails: Estimate }) {
  const [value = '', interval] = intervalWords(fails).split(' (');
  return (
    <td className="odds-sampled">
      {value}
      {interval !== undefined && <span className="odds-interval base-soft"> ({interval}</span>}
    </td>
  );
}

/** Worst case, first order and sample side by side, for every limit that can fail at all. */
export function OddsTable({ odds, words, title }: Props) {
  const frame = useRef<HTMLTableCellElement>(null);
  const width = Math.max(60, useBox(frame)?.width ?? 240);
  const { together, limits } = odds;
  const rows = limits
    .filter((it) => it.worst.fails || it.sampled.hits > 0 || it.rare !== undefined)
    .sort((a, b) => failsOf(b).value - failsOf(a).value);
  const strip = (of: Pick<LimitOdds, 'rare' | 'sampled'>, first: number | null, worstFails: boolean) => (
    <ChanceStrip fails={failsOf(of)} firstOrder={first} worstFails={worstFails} width={width} />
  );
  return (
    <table className="odds-table type-small">
      <caption className="base-spoken">Chance that each limit fails, three ways</caption>
      <thead>
        <tr>
          <th scope="col">Chance of failing</th>
          <th scope="col" className="odds-worst">
            Worst case
          </th>
          <th scope="col" className="odds-first">
            First order
          </th>
          <th scope="col" className="odds-sampled">
            Sampled
          </th>
          <th scope="col" className="odds-picture" ref={frame}>
            <ChanceAxis width={width} />
          </th>
        </tr>
      </thead>
      <tbody>
        <tr className="odds-all">
          <th scope="row">Any limit</th>
          <td className="odds-worst">{together.worstHolds ? 'holds' : 'outside'}</td>
          <td className="odds-first">
            {together.firstOrder === null ? '' : `at most ${chanceWords(together.firstOrder)}`}
          </td>
          <Sampled fails={failsOf(together)} />
          <td className="odds-picture">{strip(together, null, !together.worstHolds)}</td>
        </tr>
        {rows.map((it) => {
          const why = differenceSentence(it, words);
          return (
            <Fragment key={it.limit}>
              <tr className={why === undefined ? undefined : 'odds-has-why'} data-odds={it.limit}>
                <th scope="row">{title(it.limit)}</th>
                <td className="odds-worst">{worstWords(it, words)}</td>
                <td className="odds-first">
                  {it.firstOrder === null ? 'none' : chanceWords(it.firstOrder.fails)}
                </td>
                <Sampled fails={failsOf(it)} />
                <td className="odds-picture">{strip(it, it.firstOrder?.fails ?? null, it.worst.fails)}</td>
              </tr>
              {why !== undefined && (
                <tr className="odds-why">
                  <td colSpan={5} className="base-soft">
                    {why}
                  </td>
                </tr>
              )}
            </Fragment>
          );
        })}
      </tbody>
    </table>
  );
}
