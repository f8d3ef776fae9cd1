import { useRef } from 'react';
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
  return worst.room < 0 ? `${size} past` : `${size} room`;
}

/** Worst case, first order and sample side by side, for every limit that can fail at all. */
export function OddsTable({ odds, words, title }: Props) {
  const frame = useRef<HTMLTableCellElement>(null);
  const width = Math.max(60, (useBox(frame)?.width ?? 240) - 16);
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
          <th scope="col">Worst case</th>
          <th scope="col">First order</th>
          <th scope="col">Sampled</th>
          <th scope="col" className="odds-picture" ref={frame}>
            <ChanceAxis width={width} />
          </th>
        </tr>
      </thead>
      <tbody>
        <tr className="odds-all">
          <th scope="row">Any limit</th>
          <td>{together.worstHolds ? 'holds' : 'past'}</td>
          <td>{together.firstOrder === null ? '' : `at most ${chanceWords(together.firstOrder)}`}</td>
          <td>{intervalWords(failsOf(together))}</td>
          <td className="odds-picture">{strip(together, null, !together.worstHolds)}</td>
        </tr>
        {rows.map((it) => {
          const why = differenceSentence(it, words);
          return (
            <tr key={it.limit} data-odds={it.limit}>
              <th scope="row">
                {title(it.limit)}
                {why !== undefined && <span className="odds-why base-soft">{why}</span>}
              </th>
              <td>{worstWords(it, words)}</td>
              <td>{it.firstOrder === null ? 'none' : chanceWords(it.firstOrder.fails)}</td>
              <td>{intervalWords(failsOf(it))}</td>
              <td className="odds-picture">{strip(it, it.firstOrder?.fails ?? null, it.worst.fails)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
