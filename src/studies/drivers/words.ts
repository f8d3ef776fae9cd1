import type { LimitDrivers } from '../drivers.ts';
import type { Factor } from '../uncertain/error-model.ts';
import { listed, type Words } from '../words.ts';

/** What stands beside the plan's own words: which inputs are chosen, not measured, and how far each may be off. */
export interface DriverWords extends Words {
  isChoice(name: string): boolean;
  offBy(name: string): number;
}

const MOST_NAMED = 3;
/** A measurement that narrows the spread by less than this part of it is not worth the walk. */
const WORTH = 0.05;

const percent = (part: number): string => `${Math.round(100 * Math.min(1, Math.max(0, part)))} %`;

const times = (count: number): string =>
  count < 10 ? `${count.toFixed(1).replace(/\.0$/, '')} times` : `${Math.round(count)} times`;

/** A factor as it stands in a sentence. */
export const factorWords = ({ shared, name }: Factor, words: Words): string =>
  shared ? `what all readings with the ${name} share` : `the ${words.cell(name).short}`;

/** What moves a limit most, for all that it may be off. */
export function moverSentence({ limit, drivers }: LimitDrivers, words: DriverWords): string {
  const { short, figure } = words.limit(limit);
  const [first, second] = drivers.filter((it) => it.perOffBy !== 0);
  if (first === undefined) return `No input that may be off moves the limit on ${short}.`;
  const cell = words.cell(first.input);
  const off = cell.figure(first.offBy);
  const says =
    `The ${cell.short} moves the ${short} most: ${first.table ? `rows ${off} off change` : `${off} off changes`} ` +
    `it by ${figure(Math.abs(first.perOffBy))}`;
  if (second === undefined) return `${says}.`;
  return `${says}; next is the ${words.cell(second.input).short} with ${figure(Math.abs(second.perOffBy))}.`;
}

/** Which input by itself would break the limit soonest, or mend it. */
export function soonestSentence({ limit, holds, soonest }: LimitDrivers, words: Words): string {
  const { short } = words.limit(limit);
  if (soonest === null) {
    return holds
      ? `No input by itself breaks the limit on ${short}, not even 64 times as far off as it may be.`
      : `No input by itself mends the limit on ${short}.`;
  }
  const cell = words.cell(soonest.input);
  const way = `${cell.figure(Math.abs(soonest.by))} ${soonest.by < 0 ? 'less' : 'more'}`;
  const much = `${times(soonest.times)} what it may be off`;
  return holds
    ? `The ${cell.short} by itself would break it soonest: at ${way}, ${much}.`
    : `The ${cell.short} by itself would mend it soonest: ${way}, ${much}.`;
}

/** Where the spread of a limit comes from. */
export function shareSentence({ limit, shares = [] }: LimitDrivers, words: Words): string {
  const { short } = words.limit(limit);
  if (shares.length === 0) return `Nothing that may be off moves the ${short}.`;
  const named = shares.slice(0, MOST_NAMED).filter((it) => it.total.value > 0.01);
  const parts = named.map(
    ({ factor, total }) => `${percent(total.value)} from ${factorWords(factor, words)}`,
  );
  return `Of how far the ${short} may be off, ${listed(parts)}.`;
}

/** Which measurement is worth taking again, and what it would bring. */
export function againSentence({ limit, again = [] }: LimitDrivers, words: DriverWords): string | undefined {
  const { short, figure } = words.limit(limit);
  const [best] = again;
  if (best === undefined) return undefined;
  const { factor, now, better } = best;
  const narrows = `it would narrow the ${short} by ${figure(now - better)}, from ±${figure(now)} to ±${figure(better)}`;
  if (now - better < WORTH * now) {
    return `No one reading is worth taking again for the ${short}: it lies within ±${figure(now)}, and the best would narrow it by ${figure(now - better)}.`;
  }
  if (factor.shared) return `Check the ${factor.name} against a better one: known to half, ${narrows}.`;
  const cell = words.cell(factor.name);
  return words.isChoice(factor.name)
    ? `Hold the ${cell.short} to half of ${cell.figure(words.offBy(factor.name))}: ${narrows}.`
    : `Measure the ${cell.short} again: known to half, ${narrows}.`;
}
