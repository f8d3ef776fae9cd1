import { describe, expect, it } from 'vitest';
import {
  againSentence,
  type DriverWords,
  moverSentence,
  shareSentence,
  soonestSentence,
} from '../../src/studies/drivers/words.ts';
import { type Driver, drivers, type LimitDrivers } from '../../src/studies/drivers.ts';
import { differenceSentence, togetherSentence } from '../../src/studies/odds/words.ts';
import { odds } from '../../src/studies/odds.ts';
import { finish } from '../../src/studies/study.ts';
import { turningSentence, turnSentence } from '../../src/studies/turning/words.ts';
import { turning } from '../../src/studies/turning.ts';
import type { ReadingError } from '../../src/studies/uncertain/reading-error.ts';
import { type PlainPointLimit, plainPoints } from './plain-points.ts';
import { plainLimit } from './plain-words.ts';
import { even } from './published.ts';

const mm = (value: number): string => `${Number(value.toFixed(1))} mm`;

const words: DriverWords = {
  cell: (name) => ({ short: name, figure: mm, bare: (value) => String(Number(value.toFixed(1))) }),
  limit: () => plainLimit('clearance', mm),
  isChoice: (name) => name === 'lean',
  offBy: (name) => (name === 'overhang' ? 3 : 1),
};

const slope = (value: number) => ({ left: value, right: value, kink: false, within: 0 });
const driver = (input: string, perOffBy: number): Driver => ({
  input,
  offBy: input === 'overhang' ? 3 : 1,
  slope: slope(perOffBy),
  perOffBy,
});
const own = (name: string) => ({ name, shared: false, moves: [0] });
const sure = (value: number) => ({ value, low: value, high: value });

const clearance = (over: Partial<LimitDrivers> = {}): LimitDrivers => ({
  limit: 'gap',
  holds: true,
  room: 6,
  drivers: [driver('overhang', -3), driver('lean', 0.5)],
  soonest: { input: 'overhang', at: 6, by: 6, times: 2 },
  shares: [
    { factor: own('overhang'), alone: sure(0.9), total: sure(0.9) },
    { factor: own('lean'), alone: sure(0.1), total: sure(0.1) },
  ],
  again: [{ factor: own('overhang'), now: 7, better: 3 }],
  ...over,
});

describe('drivers in sentences', () => {
  it('name the strongest, the soonest, the parts of the spread', () => {
    expect(moverSentence(clearance(), words)).toBe(
      'The overhang moves the clearance most: 3 mm off changes it by 3 mm; next is the lean with 0.5 mm.',
    );
    expect(soonestSentence(clearance(), words)).toBe(
      'The overhang by itself would break it soonest: at 6 mm more, 2 times what it may be off.',
    );
    expect(shareSentence(clearance(), words)).toBe(
      'Of how far the clearance may be off, 90 % from the overhang and 10 % from the lean.',
    );
  });

  it('say which measurement to take again, and which choice to hold closer', () => {
    expect(againSentence(clearance(), words)).toBe(
      'Measure the overhang again: known to half, it would narrow the clearance by 4 mm, from ±7 mm to ±3 mm.',
    );
    const lean = clearance({ again: [{ factor: own('lean'), now: 7, better: 3 }] });
    expect(againSentence(lean, words)).toMatch(/^Hold the lean to half of 1 mm:/);
    const tape = clearance({
      again: [{ factor: { name: 'tape', shared: true, moves: [0, 1] }, now: 7, better: 3 }],
    });
    expect(againSentence(tape, words)).toMatch(/^Check the tape against a better one:/);
    const little = clearance({ again: [{ factor: own('lean'), now: 7, better: 6.9 }] });
    expect(againSentence(little, words)).toMatch(/^No one reading is worth taking again/);
  });

  it('say so when nothing moves a limit', () => {
    const still = finish(
      drivers(plainPoints([{ name: 'gap', of: () => 5, low: 0 }]), {
        scenario: null,
        inputs: [{ ...even('overhang', 0, 6), whole: false }],
        limits: ['gap'],
        share: 0,
        seed: 1,
      }),
    ).limits[0];
    if (still === undefined) throw new Error('no limit');
    expect(moverSentence(still, words)).toBe('No input that may be off moves the limit on clearance.');
    expect(soonestSentence(still, words)).toMatch(/^No input by itself breaks the limit on clearance/);
    expect(shareSentence(still, words)).toBe('Nothing that may be off moves the clearance.');
  });
});

const turned = (limit: Omit<PlainPointLimit, 'name'>, whole = false) => {
  const all = finish(
    turning(plainPoints([{ name: 'gap', ...limit }]), {
      scenario: null,
      input: 'shims',
      low: 0,
      high: 10,
      whole,
      present: 3,
    }),
  );
  const [only] = all.limits;
  if (only === undefined) throw new Error('no limit');
  return [turnSentence(only, all, words), turningSentence(all, words)] as const;
};

describe('turning values in sentences', () => {
  const shims = ({ shims: x = 0 }: Readonly<Record<string, number>>): number => x;

  it('name each turn', () => {
    const [one, all] = turned({ of: shims, low: 3.5 }, true);
    expect(one).toBe('The limit on clearance is outside at first; from 4 mm it holds.');
    expect(all).toBe(
      'One limit turns between 0 and 10 mm, nearest to 3 the limit on clearance at 4 mm; 11 values looked at.',
    );
  });

  it('say how far a limit that never turns stays inside, or outside', () => {
    expect(turned({ of: (x) => 20 + shims(x), low: 0 })[0]).toBe(
      'None: between 0 and 10 mm, clearance stays inside by at least 20 mm.',
    );
    expect(turned({ of: (x) => -20 - shims(x), low: 0 })[0]).toBe(
      'None: between 0 and 10 mm, clearance stays outside by at least 20 mm.',
    );
    expect(turned({ of: () => 5, low: 0 })[0]).toBe('None: shims does not move clearance.');
    expect(turned({ of: () => null, low: 0 })[0]).toBe('None: between 0 and 10 mm, clearance has no answer.');
  });

  it('own up where they cannot be sure', () => {
    const [rough] = turned({ of: (x) => 1 + Math.abs(Math.sin(1e6 * shims(x))), low: 0 });
    expect(rough).toMatch(/as far as the values looked at show/);
  });
});

const sureness = (limit: Omit<PlainPointLimit, 'name'>, errors: readonly ReadingError[]) =>
  finish(
    odds(plainPoints([{ name: 'gap', ...limit }]), {
      scenario: null,
      errors,
      share: 0,
      seed: 1,
      repeats: 8,
      points: 512,
      certainty: 0.95,
    }),
  );

describe('odds in sentences', () => {
  const x = ({ x: value = 0 }: Readonly<Record<string, number>>): number => value;

  it('say in how many cases every limit holds, how sure that is, and what fails', () => {
    const found = sureness({ of: x, low: 0 }, [even('x', -1, 3)]);
    expect(togetherSentence(found, 0.95, words)).toMatch(
      /^Every limit holds in (about )?75 % .*\(95 % sure\)\. What fails most often is the clearance\.$/,
    );
  });

  it('never say none without how many were tried', () => {
    const found = sureness({ of: x, low: -2 }, [even('x', -1, 3)]);
    expect(togetherSentence(found, 0.95, words)).toMatch(/no failing case in 4,096, so less than/);
  });

  it('say why first order differs: one even error makes most of it', () => {
    const [limit] = sureness({ of: x, low: -0.9 }, [even('x', -1, 3)]).limits;
    expect(limit && differenceSentence(limit, words)).toMatch(
      /the x dominates, and is spread evenly across its ±/,
    );
  });

  it('say why first order differs: a kink, a bend, no answer', () => {
    const errors = ['x', 'y', 'z', 'w'].map((name) => even(name, -1, 1));
    const sum = (at: Readonly<Record<string, number>>): number =>
      ['x', 'y', 'z', 'w'].reduce((all, name) => all + (at[name] ?? 0), 0);
    const [kink] = sureness({ of: (at) => 0.2 - Math.abs(sum(at)), low: 0 }, errors).limits;
    expect(kink && differenceSentence(kink, words)).toMatch(/has a kink/);
    const [bend] = sureness({ of: (at) => 0.5 + sum(at) - 0.5 * sum(at) ** 2, low: 0 }, errors).limits;
    expect(bend && differenceSentence(bend, words)).toMatch(/bends/);
    const [gap] = sureness({ of: (at) => (sum(at) > 0.5 ? null : 5 - sum(at)), low: 0 }, errors).limits;
    expect(gap && differenceSentence(gap, words)).toMatch(/cases without an answer/);
  });

  it('say what the worst case needs', () => {
    const errors = ['x', 'y', 'z', 'w'].map((name) => even(name, -1, 1));
    const limit = (at: Readonly<Record<string, number>>): number =>
      3.2 + ['x', 'y', 'z', 'w'].reduce((all, name) => all + (at[name] ?? 0), 0);
    const [found] = sureness({ of: limit, low: 0 }, errors).limits;
    expect(found && differenceSentence(found, words)).toMatch(
      /needs 4 readings at the end of their ± together/,
    );
  });
});
