import { describe, expect, it } from 'vitest';
import { normalAbove } from '../../../src/calc/uncertainty/normal.ts';
import { Meter } from '../../../src/studies/meter.ts';
import { designPoints } from '../../../src/studies/odds/design-points.ts';
import { rare } from '../../../src/studies/odds/rare.ts';
import { ScoredRoom } from '../../../src/studies/odds/rooms-at.ts';
import { finish } from '../../../src/studies/study.ts';
import { errorModel } from '../../../src/studies/uncertain/error-model.ts';
import { plainPoints } from '../plain-points.ts';
import {
  axialBar,
  type Case,
  cantileverStress,
  endLoad,
  fourBranches,
  lessLoad,
  twoPoints,
} from '../published.ts';

function found(of: Case, seed = 1) {
  const model = errorModel(of.errors, 0);
  const evaluator = plainPoints([of.limit]).at({ inputs: of.errors.map((it) => it.name), results: [] });
  const factors = of.errors.map((_, i) => i);
  const room = new ScoredRoom(evaluator, model, 0, factors, new Meter());
  const points = finish(designPoints(room, seed));
  const chance = finish(
    rare(
      evaluator,
      model,
      points.map((it) => it.scores),
      { repeats: 16, points: 1024, seed, certainty: 0.99 },
      new Meter(),
    ),
  ).fails;
  const at = (n: number): number[] =>
    of.errors.map((it, i) => it.value + it.offBy * (points[n]?.scores[i] ?? Number.NaN));
  return { points, chance, distances: points.map((it) => it.distance), at, evaluations: room.evaluations };
}

const inside = ({ low, high }: { low: number; high: number }, truth: number): boolean =>
  low <= truth && truth <= high;

describe('design points', () => {
  it('of an end load: 1.009255 at E 49.969, F 1.8419, L 10.445, I 4.6678', () => {
    // OpenTURNS, t_FORM_std: chance by the distance 0.156426, shares .00095 .69592 .19476 .10837.
    const { distances, at, points } = found(endLoad);
    expect(Math.abs((distances[0] ?? 0) - 1.009255)).toBeLessThan(1e-6);
    expect(Math.abs(normalAbove(distances[0] ?? 0) - 0.156426)).toBeLessThan(1e-6);
    for (const [i, truth] of [49.969, 1.8419, 10.445, 4.6678].entries()) {
      expect(Math.abs((at(0)[i] ?? 0) - truth)).toBeLessThan(5 * 10 ** (truth > 5 ? -4 : -5));
    }
    const shares = points[0]?.scores.map((it) => (it / (distances[0] ?? 1)) ** 2) ?? [];
    for (const [i, truth] of [0.00095, 0.69592, 0.19476, 0.10837].entries()) {
      expect(Math.abs((shares[i] ?? 0) - truth)).toBeLessThan(1e-5);
    }
  });

  it.each([
    [7, 3.5355339059, 2.03476e-4],
    [4, Math.SQRT2, 0.0786496],
  ])('of resistance %f less load 2: distance %f, chance %f', (mean, distance, truth) => {
    const { distances, chance } = found(lessLoad(mean));
    expect(distances).toHaveLength(1);
    expect(Math.abs((distances[0] ?? 0) - distance)).toBeLessThan(1e-9);
    expect(Math.abs(normalAbove(distances[0] ?? 0) / truth - 1)).toBeLessThan(5e-6);
    expect(inside(chance, truth)).toBe(true);
  });

  it('of four branches are four: 3, 3, 3.5, 3.5, and the chance of all is 0.00222279507', () => {
    const { distances, chance } = found(fourBranches);
    expect(distances.map((it) => it.toFixed(6))).toEqual(['3.000000', '3.000000', '3.500000', '3.500000']);
    expect(inside(chance, 0.00222279507)).toBe(true);
    // One of them alone would say 1.35e-3.
    expect(chance.low).toBeGreaterThan(0.002);
  });

  it('of a parabola are two: 2.9057 and 3.0943, and the chance of both is 0.0030163', () => {
    const { distances, chance } = found(twoPoints);
    expect(distances.map((it) => it.toFixed(4))).toEqual(['2.9057', '3.0943']);
    expect(inside(chance, 0.0030163)).toBe(true);
  });

  it('of an axial bar: chance 0.0291981946', () => {
    expect(inside(found(axialBar).chance, 0.0291981946)).toBe(true);
  });

  it('of the Dakota manual’s beam are exact where its bound is linear in normals: 0.0529495', () => {
    // P(stress/R − 1 at most 0.2): the room is 0.2 − (stress/R − 1) turned round.
    const of: Case = {
      ...cantileverStress,
      limit: {
        name: 'room',
        of: (x) => (cantileverStress.limit.of(x) ?? 0) * -1 - 0.2,
        low: 0,
      },
    };
    const { distances, chance } = found(of);
    expect(Math.abs(normalAbove(distances[0] ?? 0) - 0.0529495)).toBeLessThan(5e-8);
    expect(inside(chance, 0.0529495)).toBe(true);
  });

  it('are the same for the same seed', () => {
    const [a, b] = [found(twoPoints, 3), found(twoPoints, 3)];
    expect(a.points).toEqual(b.points);
    expect(a.chance).toEqual(b.chance);
  });
});
