import { cellNamed, limitNamed } from '../plan/book.ts';
import type { Units } from '../plan/plan.ts';
import type { LimitCell } from '../plan/template.ts';
import { MINUS } from '../units/decimal-figure.ts';
import { formatLength } from '../units/format-length.ts';
import { formatNumber } from '../units/format-number.ts';
import { formatFlag, formatValue } from '../units/format-value.ts';
import type { LimitAnswer } from './judged.ts';

/** The one unit of a short line: millimetres unless inches alone are shown. */
const bareUnit = (units: Units): 'mm' | 'in' => (units === 'in' ? 'in' : 'mm');

/** A figure in one unit system, so that a line stays short. */
export const brief = (value: number, unit: string, units: Units): string =>
  formatValue(value, unit, { unit: bareUnit(units) });

const MOST_DECIMALS = 4;

/** The unit of what a limit judges. */
export const judgedUnit = (limit: LimitAnswer): string => cellNamed(limit.result)?.unit ?? '–';

const isFlag = (limit: LimitAnswer): boolean => {
  const cell = cellNamed(limit.result);
  return cell?.kind === 'result' && cell.flag === true;
};

/** One value in the first unit shown. */
const first = (value: number, unit: string, units: Units, decimals?: number): string =>
  unit === 'mm'
    ? formatLength(value, {
        unit: bareUnit(units),
        ...(decimals === undefined ? {} : { decimals }),
      })
    : formatNumber(value, unit, decimals);

/** Without decimals that are all 0: 50.0 and 50 read the same. */
const bare = (text: string): string => text.replace(/\.0+(?!\d)/, '');

/** Fewest decimals at which a value off its bound does not read like the bound itself; undefined: the usual ones. */
function telling(value: number, bound: number | undefined, unit: string, units: Units): number | undefined {
  if (bound === undefined || value === bound) return undefined;
  if (bare(first(value, unit, units)) !== bare(first(bound, unit, units))) return undefined;
  for (let decimals = 1; decimals <= MOST_DECIMALS; decimals++) {
    if (first(value, unit, units, decimals) !== first(bound, unit, units, decimals)) return decimals;
  }
  return undefined;
}

/** The bound that a limit's value is nearest to, or outside. */
function nearerBound({ value, low, high }: LimitAnswer): number | undefined {
  if (low === undefined || high === undefined || value === undefined) return low ?? high;
  return high - value < value - low ? high : low;
}

/** The value that a limit judges, in the first unit shown. */
export function valueWords(limit: LimitAnswer, units: Units): string {
  if (limit.value === undefined) return 'no answer';
  if (isFlag(limit)) return formatFlag(limit.value === 1);
  const unit = judgedUnit(limit);
  return first(limit.value, unit, units, telling(limit.value, nearerBound(limit), unit, units));
}

/** A length in inches as the second figure, where both units are shown; undefined elsewhere. */
export const secondWords = (value: number | undefined, unit: string, units: Units): string | undefined =>
  units === 'both' && unit === 'mm' && value !== undefined ? formatLength(value, { unit: 'in' }) : undefined;

/** Shares of strength are told in per cent, as plainly as a length is told in its unit. */
const isShare = (limit: LimitAnswer): boolean => limit.result.endsWith('_utilisation');

const percent = (share: number): string =>
  `${formatNumber(share * 100, '–', share < 0.001 ? 2 : share < 0.01 ? 1 : 0)} %`;

/** "5.3 mm short", "4 mm too much", "18.7° room", "21 % in hand"; what is wrong where there is no distance. */
export function roomWords(limit: LimitAnswer, units: Units): string {
  const { verdict, graded, value } = limit;
  const { state, room } = verdict;
  if (state === 'no answer' || state === 'does not apply') return '';
  if (!graded) return state === 'outside' ? 'not held' : 'held';
  if (room === undefined) return 'not above 0';
  const unit = judgedUnit(limit);
  const bound = nearerBound(limit);
  const decimals = value === undefined ? undefined : telling(value, bound, unit, units);
  const size = first(Math.abs(room), unit, units, decimals);
  // 0 is outside only where the bound itself is.
  if (room === 0 && state === 'outside') return 'on the bound';
  if (isShare(limit)) return room < 0 ? `${percent(-room)} over` : `${percent(room)} in hand`;
  if (room >= 0) return `${size} room`;
  return bound === limit.low ? `${size} short` : `${size} too much`;
}

/** "at least 50 mm", "at most 1", "50 mm to 250 mm". */
export function boundWords(limit: LimitAnswer, units: Units): string {
  if (isFlag(limit)) return 'yes';
  const { low, high } = limit;
  const unit = judgedUnit(limit);
  const lowIsOutside = limitNamed(limit.name)?.low_is_outside === true;
  if (low !== undefined && high !== undefined) {
    return `${first(low, unit, units)} to ${first(high, unit, units)}`;
  }
  if (low !== undefined) return `${lowIsOutside ? 'more than' : 'at least'} ${first(low, unit, units)}`;
  return high === undefined ? '' : `at most ${first(high, unit, units)}`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a limit is called on the board: its result's short name. */
export function limitTitle(limit: LimitAnswer): string {
  const cell = cellNamed(limit.result);
  const short = cell?.short ?? limit.result;
  return limit.own === true ? `${capital(short)}, your own limit` : capital(short);
}

/** Who asks for a bound, as it stands in a sentence. */
const ASKS: Readonly<Record<LimitCell['source'], string>> = {
  "owner's choice": 'you asked for',
  "gear's manual": 'the gear’s manual asks for',
  'published source': 'allowed is',
  'common practice, no source': 'common practice, without a source, is',
  assumed: 'assumed here:',
  geometry: 'it takes',
};

/** Shares that a sentence tells in per cent: those of strength, and of the blade under water. */
const isToldInPercent = (limit: LimitAnswer): boolean =>
  isShare(limit) || limit.result === 'rudder_immersion';

/** A share in per cent, with decimals enough that it does not read like the bound when it is off it. */
function shareWords(share: number, bound: number | undefined): string {
  const at = (value: number, decimals: number): string => formatNumber(value * 100, '–', decimals);
  let decimals = 0;
  while (
    bound !== undefined &&
    share !== bound &&
    decimals < MOST_DECIMALS &&
    at(share, decimals) === at(bound, decimals)
  ) {
    decimals++;
  }
  return `${at(share, decimals)} %`;
}

/** What is asked for, as a sentence tells it. */
function askedWords(limit: LimitAnswer, units: Units): string {
  if (!isToldInPercent(limit)) return boundWords(limit, units);
  const { low, high } = limit;
  if (low !== undefined) return `at least ${shareWords(low, undefined)}`;
  return high === undefined ? '' : `at most ${shareWords(high, undefined)}`;
}

/** The value as a sentence tells it. */
function toldWords(limit: LimitAnswer, units: Units): string {
  const { value } = limit;
  if (value !== undefined && isToldInPercent(limit)) return shareWords(value, nearerBound(limit));
  return valueWords(limit, units);
}

/** A limit as a sentence: the value as it is, and, outside or near, what was asked for and by whom. */
export function limitSentence(limit: LimitAnswer, units: Units): string {
  const cell = limitNamed(limit.name);
  const { state } = limit.verdict;
  if (state === 'outside' && cell?.outside !== undefined) return cell.outside;
  if (state === 'no answer') return `${limitTitle(limit)} has no answer. ${limit.why ?? ''}`.trimEnd();
  const below = limit.value !== undefined && limit.value < 0 ? cell?.says_below_0 : undefined;
  const told = toldWords(limit, units);
  const said =
    below?.replace('{value}', told.replace(MINUS, '')) ??
    cell?.says.replace('{value}', told) ??
    `${limitTitle(limit)}: ${told}.`;
  const bound = askedWords(limit, units);
  if (state !== 'outside' && state !== 'near') return said;
  const asks = cell === undefined ? 'you asked for' : ASKS[cell.source];
  return `${said.replace(/\.$/, '')}; ${asks} ${bound}.`;
}
