import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/calc/catalogue.ts';
import { call } from '../../src/calc/record.ts';
import { type Apart, Draw } from './apart/apart.ts';
import { cutting } from './apart/cutting.ts';
import { fasteners } from './apart/fasteners.ts';
import { loads } from './apart/loads.ts';
import { place } from './apart/place.ts';
import { struts } from './apart/struts.ts';
import { surveyed } from './apart/surveyed.ts';

const apart: readonly Apart[] = [...place, ...struts, ...loads, ...fasteners, ...surveyed, ...cutting];

const RUNS = 100;

describe('the library, worked out apart', () => {
  it('leaves no function out', () => {
    const known = new Set(apart.map((it) => it.id));
    expect(catalogue.map((it) => it.id).filter((id) => !known.has(id))).toEqual([]);
  });

  it.each(apart.map((it) => [it.id, it.road, it] as const))(
    '%s: %s',
    (id, _, { draw, answer, within = 1e-9, slack = 0, runs = RUNS }) => {
      const function_ = catalogue.find((it) => it.id === id);
      if (function_ === undefined) throw new Error(`There is no ${id}.`);
      const drawn = new Draw(7);
      let answered = 0;
      for (let i = 0; i < runs; i++) {
        const given = draw(drawn);
        const ours = call(function_, given);
        const theirs = answer(...given);
        if (typeof ours !== 'number' || theirs === null) {
          expect([given, typeof ours === 'number' ? ours : null]).toEqual([given, theirs]);
          continue;
        }
        answered++;
        const off = Math.abs(ours - theirs);
        if (!(off <= slack + within * (1 + Math.abs(theirs)))) expect([given, ours]).toEqual([given, theirs]);
      }
      expect(answered).toBeGreaterThanOrEqual(runs / 5);
    },
  );
});
