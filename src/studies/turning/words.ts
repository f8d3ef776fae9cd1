import { fails, type Standing } from '../standing.ts';
import type { LimitTurns, Turnings } from '../turning.ts';
import { capital, listed, numberWord, told, type Words } from '../words.ts';

const BECOMES: Readonly<Record<Standing, string>> = {
  holds: 'holds',
  outside: 'is outside',
  'no answer': 'has no answer',
  'does not apply': 'does not apply',
};

/** Whether a limit's room is the same all along, as far as was seen. */
export const isUnmoved = ({ turns, moved }: LimitTurns): boolean => turns.length === 0 && !moved;

/** Where a limit turns, in one sentence; where it does not, how far it stays from its bound and how sure that is. */
export function turnSentence(limit: LimitTurns, { ask }: Turnings, words: Words): string {
  const x = words.cell(ask.input);
  const { short, figure } = words.limit(limit.limit);
  const range = `between ${x.bare(ask.low)} and ${told(x, ask.high)}`;
  if (limit.turns.length > 0) {
    const parts = limit.turns.map(({ at, to }) =>
      ask.whole ? `from ${told(x, at)} it ${BECOMES[to]}` : `past ${x.figure(at)} it ${BECOMES[to]}`,
    );
    const sure = limit.complete ? '' : ' Others may lie between the values looked at.';
    return `The limit on ${short} ${BECOMES[limit.first]} at first; ${listed(parts)}.${sure}`;
  }
  if (limit.first === 'does not apply') return `None: ${range}, the limit on ${short} does not apply.`;
  if (limit.first === 'no answer') return `None: ${range}, ${short} has no answer.`;
  if (isUnmoved(limit)) return `None: ${x.short} does not move ${short}.`;
  if (limit.closest === null)
    return `None: ${range}, the limit on ${short} ${BECOMES[limit.first]} throughout.`;
  const least = figure(Math.abs(limit.surely ?? limit.closest.room));
  const stays = fails(limit.first)
    ? `stays outside by at least ${least}`
    : `stays inside by at least ${least}`;
  const sure =
    limit.surely === null
      ? ', as far as the values looked at show; its room is too steep to be sure between them'
      : '';
  return `None: ${range}, ${short} ${stays}${sure}.`;
}

/** What all turns along an input come to: where everything holds, and how it was found. */
export function turningSentence(turnings: Turnings, words: Words): string {
  const { ask, limits, evaluations } = turnings;
  const x = words.cell(ask.input);
  const turning = limits.filter((it) => it.turns.length > 0);
  const range = `between ${x.bare(ask.low)} and ${told(x, ask.high)}`;
  const looked = `${evaluations.toLocaleString('en-GB')} values looked at`;
  if (turning.length === 0) return `No limit turns ${range}; ${looked}.`;
  const many = turning.length === 1 ? 'one limit turns' : `${numberWord(turning.length)} limits turn`;
  if (ask.present === null) return `${capital(many)} ${range}; ${looked}.`;
  const { present } = ask;
  const nearest = turning
    .flatMap(({ limit, turns }) => turns.map((it) => ({ limit, ...it })))
    .sort((a, b) => Math.abs(a.at - present) - Math.abs(b.at - present))[0];
  const first =
    nearest === undefined
      ? ''
      : `, nearest to ${x.bare(present)} the limit on ${words.limit(nearest.limit).short} at ${told(x, nearest.at)}`;
  return `${capital(many)} ${range}${first}; ${looked}.`;
}
