import { allHold, type Span, spansOf } from './spans.ts';
import { fails as isFailing } from './standing.ts';
import type { Swept, Turning } from './sweep.ts';
import { type CellWords, capital, listed, told, type Words } from './words.ts';

/** Ways of turning that are told; the limits that turn otherwise are counted. */
const MOST_TOLD = 3;

/** One limit, several. */
type Verb = readonly [one: string, many: string];

const HOLDS: Verb = ['holds', 'hold'];
const FAILS: Verb = ['fails', 'fail'];
const LACKS: Verb = ['has no answer', 'have no answer'];

interface Clause {
  readonly verb: Verb;
  readonly where: string;
  /** Where the limit turns first. */
  readonly at: number;
}

interface Told extends Clause {
  readonly shorts: Set<string>;
  readonly count: number;
  /** Distance from the present value to where it turns nearest; without end when it fails throughout. */
  readonly away: number;
}

const along = (x: CellWords, from: number, to: number): string =>
  from === to ? `at ${told(x, from)} alone` : `from ${x.bare(from)} to ${told(x, to)}`;

/** Where a limit that turns holds, or fails when that is shorter to say. */
function clauseOf(spans: readonly Span[], { points, ask }: Swept, x: CellWords): Clause {
  const high = points.at(-1)?.x;
  const at = spans[0]?.to ?? 0;
  const failing = spans.filter((it) => it.fails);
  const holding = spans.filter((it) => !it.fails);
  const [bad, good] = [failing[0], holding[0]];
  const fails = failing.every((it) => it.lacks) ? LACKS : FAILS;
  if (good === undefined || bad === undefined) {
    return { verb: bad === undefined ? HOLDS : fails, where: 'throughout', at };
  }
  if (failing.length === 1 && bad.to === high) {
    // A count fails from its first failing step; a measure from just beyond the last value that holds.
    const where = ask.whole ? `from ${told(x, bad.from)} up` : `above ${told(x, good.to)}`;
    return { verb: fails, where, at };
  }
  if (holding.length === 1 && good.to === high)
    return { verb: HOLDS, where: `from ${told(x, good.from)} up`, at };
  return { verb: HOLDS, where: listed(holding.map((it) => along(x, it.from, it.to))), at };
}

function overall(swept: Swept, x: CellWords): string {
  const parts = allHold(swept);
  const [first] = parts;
  if (first === undefined) return 'no value lets every limit hold';
  if (parts.length === 1 && first.from === swept.points[0]?.x && first.to === swept.points.at(-1)?.x) {
    return 'every limit holds throughout';
  }
  return `every limit holds ${listed(parts.map((it) => along(x, it.from, it.to)))}`;
}

/**
 * What holds along a sweep, in one sentence: the limits that turn (those that turn nearest to the present value, told
 * rising), those that fail throughout, and where all of them hold.
 */
export function whatHolds(swept: Swept, words: Words): string {
  const x = words.cell(swept.ask.input);
  const limits = (swept.points[0]?.limits ?? []).map(({ name }) => ({ name, spans: spansOf(swept, name) }));
  const present = swept.ask.present ?? swept.points[0]?.x ?? 0;
  const clauses = new Map<string, Told>();
  for (const { name, spans } of limits) {
    if (spans.every((it) => !it.fails)) continue;
    const clause = clauseOf(spans, swept, x);
    const key = `${clause.verb[0]} ${clause.where}`;
    const { shorts, count } = clauses.get(key) ?? { shorts: new Set<string>(), count: 0 };
    const away = Math.min(...spans.slice(1).map((it) => Math.abs(it.from - present)));
    clauses.set(key, { ...clause, away, count: count + 1, shorts: shorts.add(words.limit(name).short) });
  }
  const all = [...clauses.values()];
  const turning = all.filter((it) => Number.isFinite(it.away)).sort((a, b) => a.away - b.away);
  const shown = turning.slice(0, MOST_TOLD).sort((a, b) => a.at - b.at);
  const rest = turning.slice(MOST_TOLD).reduce((sum, it) => sum + it.count, 0);
  const throughout = all.filter((it) => !Number.isFinite(it.away));
  const parts = [...shown, ...throughout].map(({ shorts, verb, where }) =>
    shorts.size === 1
      ? `the limit on ${[...shorts].join('')} ${verb[0]} ${where}`
      : `the limits on ${listed([...shorts])} ${verb[1]} ${where}`,
  );
  if (rest > 0) parts.push(`${rest} more ${rest === 1 ? 'limit turns' : 'limits turn'}`);
  return `${capital([...parts, overall(swept, x)].join('; '))}.`;
}

/** Whether a limit goes from holding to failing there, or the other way round. */
export const isCrossing = ({ from, to }: Turning): boolean => isFailing(from) !== isFailing(to);

/** A crossing as it is lettered in the plot: `turns at 4`. */
export const turnsAt = ({ at }: Turning, x: CellWords): string => `turns at ${x.figure(at)}`;
