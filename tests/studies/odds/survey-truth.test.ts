import { describe, expect, it } from 'vitest';
import { lineFitErrors } from '../../../src/calc/survey/fit-errors.ts';
import { levelledSlope, trimAngle } from '../../../src/calc/survey/lie.ts';
import { plumbedSlope } from '../../../src/calc/survey/plumb.ts';
import { normalQuantile } from '../../../src/calc/uncertainty/normal.ts';
import { seeded } from '../../../src/calc/uncertainty/seeded.ts';
import { widening } from '../../../src/calc/uncertainty/student-pair.ts';
import { failsOf } from '../../../src/studies/odds/words.ts';
import { odds } from '../../../src/studies/odds.ts';
import { finish } from '../../../src/studies/study.ts';
import type { ReadingError } from '../../../src/studies/uncertain/reading-error.ts';
import { readingsOf } from '../../calc/survey/known-boat.ts';
import { plainPoints } from '../plain-points.ts';

const RAKE = -9;
const [TRIM, LIST] = [0.6, 1.1];
const SPAN = 8000;
const HEIGHTS = [120, 350, 600, 830];
const even = (name: string, value: number, offBy: number): ReadingError => ({
  name,
  value,
  offBy,
  law: 'rectangular',
});

/** A survey of a face whose rake is known, read with errors: how likely Odds says that the rake is less than it is. */
function chanceBelow(random: () => number): number {
  const off = (by: number): number => by * (2 * random() - 1);
  const places = HEIGHTS.map((z) => [z * Math.tan((RAKE * Math.PI) / 180), z] as const);
  const rows = readingsOf(places, 620, 0, TRIM, LIST).map(([z = 0, x = 0]) => [
    z,
    x + 2 * normalQuantile(random()),
    3,
  ]);
  const stern = SPAN * Math.tan((TRIM * Math.PI) / 180) + off(10);
  const list = LIST + off(0.2);
  const errors = lineFitErrors(rows);
  if (errors === undefined) throw new Error('no line');
  const { freedom } = errors;
  const readings = errors.rows.map(
    ({ at, middle, by, deviation }): ReadingError => ({
      name: `row ${at}`,
      value: middle,
      offBy: deviation * widening(freedom),
      law: 'normal',
      fit: { of: 'rows', freedom, middle, by },
    }),
  );
  const found = finish(
    odds(
      plainPoints([
        {
          name: 'rake',
          low: RAKE,
          of: (at) => {
            const moved = rows.map(([z = 0], i) => [z, at[`row ${i}`] ?? 0]);
            const seen = plumbedSlope(moved) as number;
            return levelledSlope(seen, trimAngle(at['stern'] ?? 0, 0, SPAN), at['list'] ?? 0);
          },
        },
      ]),
      {
        scenario: null,
        errors: [...readings, even('stern', stern, 10), even('list', list, 0.2)],
        share: 0,
        seed: 1,
        repeats: 4,
        points: 64,
        certainty: 0.95,
      },
    ),
  );
  const [limit] = found.limits;
  if (limit === undefined) throw new Error('no limit');
  return failsOf(limit).value;
}

describe('a survey with known truth through Odds', () => {
  it('has the truth inside its 95 % in as many surveys as that says, with four rows', () => {
    const random = seeded(20);
    const surveys = 100;
    const chances = Array.from({ length: surveys }, () => chanceBelow(random));
    const inside = chances.filter((it) => it > 0.025 && it < 0.975).length;
    // Binomial law: of 100 at 95 %, fewer than 89 or more than 99 come up once in 100. A bell in place of Student's law
    // would hold the truth in 81 of 100.
    expect(inside).toBeGreaterThanOrEqual(89);
    expect(inside).toBeLessThanOrEqual(99);
    // And in half of them inside its middle half.
    const middle = chances.filter((it) => it > 0.25 && it < 0.75).length;
    expect(Math.abs(middle - 50)).toBeLessThan(14);
  });
});
