import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import frozen from '../../frozen/plan-1.plan.json?raw';
import { arbitraryPlan } from '../arbitrary-plan.ts';

const REASONS = ['not a plan', 'too new', 'damaged', 'too large', 'step failed'];

const prototypeKeys = () => Reflect.ownKeys(Object.prototype).map(String).sort();
let before: string[];
beforeAll(() => {
  before = prototypeKeys();
});

/** Whatever the text, the answer is a plan that can be written again or one of the named reasons. */
function holdsFor(text: string): void {
  const opened = openPlan(text);
  if (opened.ok) {
    const again = openPlan(writePlan(opened.plan));
    expect(again).toEqual({ ok: true, plan: opened.plan, notes: [] });
  } else {
    expect(REASONS).toContain(opened.reason);
    expect(opened.why).toMatch(/\.$/);
  }
  expect(prototypeKeys()).toEqual(before);
}

/** Any place in a document, by a number that picks one key after the other. */
function swap(document: unknown, picks: readonly number[], value: unknown): unknown {
  const [pick, ...rest] = picks;
  if (pick === undefined || document === null || typeof document !== 'object') return value;
  if (Array.isArray(document)) {
    const at = pick % (document.length + 1);
    return document.map((it, i) => (i === at ? swap(it, rest, value) : it));
  }
  const keys = Object.keys(document);
  const key = keys[pick % (keys.length || 1)] ?? 'extra';
  return { ...document, [key]: swap((document as Record<string, unknown>)[key], rest, value) };
}

const strange = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom(
    -1,
    0,
    1e308,
    '',
    '__proto__',
    'constructor',
    'shim_count',
    '=1',
    '\u202E',
    'x'.repeat(5000),
    [],
    {},
  ),
);

/** More for a long run before a release: `FUZZ_RUNS=100000`. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 300);

describe('opening a mutated file', { timeout: 60_000 + RUNS * 20 }, () => {
  it('with bytes flipped', () => {
    const bytes = new TextEncoder().encode(frozen);
    const flips = fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 })), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(flips, (all) => {
        const copy = bytes.slice();
        for (const [at, by] of all) copy[at] = (copy[at] ?? 0) ^ by;
        holdsFor(new TextDecoder().decode(copy));
      }),
      { numRuns: RUNS },
    );
  });

  it('with types swapped', () => {
    const document: unknown = JSON.parse(frozen);
    fc.assert(
      fc.property(fc.array(fc.nat(200), { minLength: 1, maxLength: 4 }), strange, (picks, value) => {
        holdsFor(JSON.stringify(swap(document, picks, value)));
      }),
      { numRuns: RUNS },
    );
  });

  it('with its tail cut off', () => {
    fc.assert(
      fc.property(fc.nat(frozen.length), (length) => {
        holdsFor(frozen.slice(0, length));
      }),
      { numRuns: RUNS },
    );
  });

  it('with pieces of it moved, doubled and left out', () => {
    const piece = fc.tuple(fc.nat(frozen.length), fc.nat(400), fc.nat(frozen.length));
    fc.assert(
      fc.property(piece, fc.boolean(), ([from, length, to], keep) => {
        const cut = frozen.slice(from, from + length);
        const rest = keep ? frozen : frozen.slice(0, from) + frozen.slice(from + length);
        holdsFor(rest.slice(0, to) + cut + rest.slice(to));
      }),
      { numRuns: RUNS },
    );
  });

  it('with any text at all', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
        holdsFor(text);
        holdsFor(`{"kind":"sternmount-plan",${text}`);
      }),
      { numRuns: RUNS },
    );
  });

  it('made of any plan', () => {
    fc.assert(
      fc.property(
        arbitraryPlan,
        fc.array(fc.nat(200), { minLength: 1, maxLength: 4 }),
        strange,
        (plan, picks, value) => {
          holdsFor(JSON.stringify(swap(JSON.parse(writePlan(plan)), picks, value)));
        },
      ),
      { numRuns: Math.min(RUNS, 2000) },
    );
  });
});
