/** One thing that a sheet, page, file, message or command tells, with the words it uses for it. */
export interface Told {
  readonly where: string;
  readonly what: string;
  readonly words: string;
}

/** Spaces of every kind are one, so that words can be compared. */
export const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

export const told = (where: string, what: string, words: string): Told => ({
  where,
  what,
  words: plain(words),
});

/** A length or number as it was read: its value, mm for lengths, and half of what its last place is worth. */
interface Read {
  readonly value: number;
  readonly half: number;
}

const FRACTION = /^(−?)(?:(\d+) )?(\d+)⁄(\d+)$/;
const MM_PER_IN = 25.4;
/** What a tape's inches are read to where no fraction says so. */
const PARTS = 16;

function inches(text: string): Read | undefined {
  const [, sign, whole = '0', above, below] = FRACTION.exec(text) ?? [];
  const value =
    below === undefined ? Number(text.replace('−', '-')) : Number(whole) + Number(above) / Number(below);
  if (!Number.isFinite(value)) return undefined;
  const half = MM_PER_IN / 2 / Number(below === undefined ? PARTS : Math.min(PARTS, Number(below)));
  return { value: (sign === '−' ? -value : value) * MM_PER_IN, half };
}

function decimal(text: string): Read | undefined {
  const value = Number(text.replace('−', '-'));
  const places = text.split('.')[1]?.length ?? 0;
  return Number.isFinite(value) ? { value, half: 0.5 * 10 ** -places } : undefined;
}

const METRIC = /(−?\d+(?:\.\d+)?) mm/;
const IMPERIAL = /(−?(?:\d+ )?\d+⁄\d+|−?\d+) in\b/;
const NUMBER = /^(−?\d+(?:\.\d+)?)\D*$/;

const reads = (words: string): Readonly<Record<'mm' | 'in' | 'number', Read | undefined>> => ({
  mm: decimal(METRIC.exec(words)?.[1] ?? '?'),
  in: inches(IMPERIAL.exec(words)?.[1] ?? '?'),
  number: decimal(NUMBER.exec(words)?.[1] ?? '?'),
});

const near = (a: Read, b: Read): boolean => Math.abs(a.value - b.value) <= a.half + b.half + 1e-9;

/** Whether two tell the same: the same words, or figures that are both roundings of one value. */
export function agree(a: string, b: string): boolean {
  if (a === b) return true;
  const [one, two] = [reads(a), reads(b)];
  const both = (['mm', 'in', 'number'] as const).filter((unit) => one[unit] && two[unit]);
  return both.length > 0 && both.every((unit) => near(one[unit] as Read, two[unit] as Read));
}

export interface Compared {
  /** What two tell and not alike. */
  readonly differs: readonly string[];
  /** How many things two or more tell. */
  readonly shared: number;
}

/** Holds everything that two or more tell against one another. */
export function compare(all: readonly Told[]): Compared {
  const byWhat = new Map<string, Told[]>();
  for (const it of all) byWhat.set(it.what, [...(byWhat.get(it.what) ?? []), it]);
  const differs: string[] = [];
  let shared = 0;
  for (const [what, [first, ...others]] of byWhat) {
    if (first === undefined) continue;
    if (others.some((it) => it.where !== first.where)) shared++;
    for (const it of others)
      if (!agree(first.words, it.words))
        differs.push(`${what}: “${first.words}” on ${first.where}, “${it.words}” on ${it.where}`);
  }
  return { differs, shared };
}
