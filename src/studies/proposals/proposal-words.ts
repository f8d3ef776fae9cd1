import { CLASSES } from '../../calc/limits/classes.ts';
import { inputNamed, limitNamed } from '../../plan/book.ts';
import { intervalWords } from '../chance-words.ts';
import { capital, listed, told, type Words } from '../words.ts';
import type { Best, Conflict, Freed, Loosening, Mount, Proposal } from './ask.ts';

/** Limits named where several fail; the rest is counted. */
const MOST_NAMED = 3;

/** A freed choice at a value: `5 shims`, `the upper bracket at 812 mm`, `both feet at 790 mm`. */
function choiceWords(freed: Freed, value: number, words: Words): string {
  const [first] = freed.moves;
  const cell = words.cell(first?.input ?? freed.name);
  if (freed.moves.length > 1) {
    return freed.moves.some((it) => it.sign === -1)
      ? `both feet ${cell.figure(value)} from the centreline`
      : `both feet at ${cell.figure(value)}`;
  }
  return cell.noun === undefined ? `the ${cell.short} at ${cell.figure(value)}` : told(cell, value);
}

/** What a mount has other than it stands now; empty when nothing. */
export function changeWords(
  mount: Mount,
  present: readonly number[],
  freed: readonly Freed[],
  inputs: readonly string[],
  words: Words,
): string {
  const parts = freed.flatMap((it) => {
    const places = it.moves.map((move) => inputs.indexOf(move.input));
    if (places.every((at) => mount.values[at] === present[at])) return [];
    return [choiceWords(it, mount.values[places[0] as number] as number, words)];
  });
  return parts.length === 0 ? 'As it stands now' : capital(listed(parts));
}

const BEST: Readonly<Record<Best, string>> = {
  room: 'the most room',
  shims: 'the fewest shims',
  bolts: 'the shortest bolts',
  odds: 'the best odds',
};

/** The limit with the least room, and how much: `tightest limit: stock, 21 % in hand`; where it fails, by how much. */
export function nearestWords({ limit, room }: Mount, words: Words): string {
  if (limit === undefined) return 'no limit has a figure here';
  const { short, figures } = words.limit(limit);
  if (Number.isNaN(room)) return `tightest limit: ${short}`;
  const [size = ''] = figures([Math.abs(room)]);
  if (room < 0) return `furthest outside: ${short}, by ${size}`;
  return `tightest limit: ${short}, ${size} ${size.endsWith('%') ? 'in hand' : 'room'}`;
}

/** What cannot be built before what is too close before what is too weak. */
const classRank = (limit: string): number => CLASSES.indexOf(limitNamed(limit)?.class ?? 'too close');

/** The limits that fail at a mount, the gravest class first: `stock; skin (foot bolts); and 4 more`. */
export function failingWords({ failing }: Pick<Mount, 'failing'>, words: Words): string {
  const graveFirst = failing.toSorted((a, b) => classRank(a) - classRank(b));
  const shorts = [...new Set(graveFirst.map((it) => words.limit(it).short))];
  const rest = shorts.length - MOST_NAMED;
  return `${shorts.slice(0, MOST_NAMED).join('; ')}${rest > 0 ? `; and ${rest} more` : ''}`;
}

/** How likely it is that everything holds at a mount; empty where it was not worked out. */
export const oddsWords = ({ odds }: Pick<Mount, 'odds'>): string =>
  odds === undefined ? '' : `all limits are met in ${intervalWords(odds)} of all cases`;

/** Why a proposal is told, in one sentence. */
export function proposalSentence({ best, ...mount }: Proposal, words: Words): string {
  const what =
    best.length === 0
      ? 'Between the others'
      : `${capital(listed(best.map((it) => BEST[it])))} of the mounts tried that meet every limit`;
  return `${[what, nearestWords(mount, words), oddsWords(mount)].filter((it) => it !== '').join('; ')}.`;
}

const SHOWN: Readonly<Record<Conflict['shownBy'], string>> = {
  'every mount': '',
  'a search': '',
  chance: ' This is not proved: a mount that meets them may lie between those tried.',
};

/** Why nothing holds, and how sure that is. */
export function conflictSentence({ limits, isSmallest, shownBy }: Conflict, words: Words): string {
  const names = [...new Set(limits.map((it) => words.limit(it).short))];
  if (names.length === 0) return 'No mount with an answer was found.';
  const none = shownBy === 'every mount' ? 'No mount meets' : 'No mount tried meets';
  const more = isSmallest ? '' : ' There may be a smaller conflict among other limits.';
  const says =
    names.length === 1
      ? `${none} the limit on ${listed(names)}, whatever else is given up.`
      : `${none} the limits on ${listed(names)} together; without any one of them the others can be met.`;
  return `${says}${more}${SHOWN[shownBy]}`;
}

/** A change that would free it: `Least clearance between the two rudders: with 90 mm instead of 110 mm, all limits can be met.` */
export function looseningSentence({ name, from, to }: Loosening, words: Words): string {
  const { short, figure } = words.cell(name);
  const called = inputNamed(name)?.label ?? capital(short);
  return `${called}: with ${figure(to)} instead of ${figure(from)}, all limits can be met.`;
}
