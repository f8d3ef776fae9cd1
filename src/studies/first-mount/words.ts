import { inputNamed, limitNamed } from '../../plan/book.ts';
import { capital, listed, told, type Words } from '../words.ts';
import { type Conflict, type FirstMount, type Freeing, MADE, type MadeMount } from './ask.ts';

/** Names told of a longer list. */
const MOST = 3;

/** Every name once, the first few of many. */
function few(names: readonly string[]): string {
  const all = [...new Set(names)];
  if (all.length <= MOST + 1) return listed(all);
  return listed([...all.slice(0, MOST), `${all.length - MOST} more`]);
}

const choiceOf = ({ values }: MadeMount, name: (typeof MADE)[number]): number =>
  values[MADE.indexOf(name)] ?? 0;

/** What the mount is made up of, in one sentence. */
export function mountSentence(mount: MadeMount, words: Words): string {
  const at = (name: (typeof MADE)[number]): number => choiceOf(mount, name);
  const figure = (name: (typeof MADE)[number]): string => words.cell(name).figure(at(name));
  const shims =
    at('shim_count') === 0
      ? 'no shims'
      : `${told(words.cell('shim_count'), at('shim_count'))} of ${figure('shim_thickness')}`;
  const wedge = at('wedge_edge') > 0 ? ['a wedge under the lower flange'] : [];
  const brackets = [
    `the lower bracket at ${figure('lower_bracket_height')}`,
    `the upper bracket at ${figure('upper_bracket_height')}`,
    `the shaft’s foot at ${figure('shaft_foot_height')}`,
  ];
  const struts =
    at('strut_count') === 1
      ? `one strut with its foot at ${figure('single_foot_height')}`
      : `two struts with their feet at ${figure('starboard_foot_height')}, ${figure('starboard_foot_y')} from the centreline`;
  return `A mount for this boat: ${listed([shims, ...wedge, ...brackets, struts])}.`;
}

const LOOKED =
  'Every shim count was tried, with each bracket every 10 mm up the transom and the shaft and feet placed to suit.';

/** Which limits stand in each other's way; those that fail at the nearest mount come first. */
export function conflictSentence(
  { limits, how, isSmallest }: Conflict,
  { mount }: FirstMount,
  words: Words,
): string {
  const fails = (limit: string): boolean => mount.failing.includes(limit);
  const names = [...limits.filter(fails), ...limits.filter((it) => !fails(it))].map(
    (it) => words.limit(it).short,
  );
  if (how === 'no choice') {
    const says = limits.map((it) => limitNamed(it)?.outside).find((it) => it !== undefined);
    const none = `No choice of mount changes the limit on ${few(names)}, which is outside.`;
    return says === undefined ? none : `${none} ${says}`;
  }
  if (new Set(names).size === 1) return `No mount meets the limit on ${few(names)}. ${LOOKED}`;
  if (how === 'each alone') return `No mount meets any of the limits on ${few(names)}. ${LOOKED}`;
  const fewer = isSmallest ? ' Without any one of them the others can be met.' : '';
  return `No mount meets the limits on ${few(names)} together.${fewer} ${LOOKED}`;
}

/** A single change that would do: `Shim stack, greatest: 105 mm instead of 75 mm`. */
export function freeingWords({ name, from, to }: Freeing, words: Words): string {
  const { short, figure } = words.cell(name);
  return `${inputNamed(name)?.label ?? capital(short)}: ${figure(to)} instead of ${figure(from)}`;
}

/** How the mount stands to the limits, as far as is known. */
export function standingSentence(
  { mount: { failing }, conflicts, unfinished }: FirstMount,
  words: Words,
): string {
  if (failing.length === 0) return 'It meets every limit.';
  const anyway = new Set(conflicts.filter((it) => it.how !== 'together').flatMap((it) => it.limits));
  const names = few(failing.map((it) => words.limit(it).short));
  if (failing.every((it) => anyway.has(it)))
    return `Outside with any mount: ${names}. This one meets every other limit.`;
  const nearest =
    unfinished === true
      ? 'The search was stopped: another mount may do better.'
      : 'No mount that was tried comes nearer to meeting every limit.';
  return `Outside with it: ${names}. ${nearest}`;
}
