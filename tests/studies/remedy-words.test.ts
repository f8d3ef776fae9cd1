import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studyWords } from '../../src/session/study-words.ts';
import type { LimitSample } from '../../src/studies/evaluator.ts';
import type { Worse, Worsened } from '../../src/studies/harm.ts';
import type { Remedies, Remedy, Trial } from '../../src/studies/remedies.ts';
import {
  costSentences,
  leadSentence,
  mendsSentence,
  remediesSentence,
  remedySentence,
  warningSentences,
} from '../../src/studies/remedy-words.ts';

const words = studyWords({ units: 'mm', ownCells: [], limits: [] });
const inches = studyWords({ units: 'in', ownCells: [], limits: [] });

const limit = (name: string, over: Partial<LimitSample> = {}): LimitSample => ({
  name,
  state: 'inside',
  value: 60,
  low: 50,
  high: null,
  room: 10,
  ratio: 0.2,
  ...over,
});

const gap = limit('rudder_gap', { state: 'outside', value: 44.7, room: -5.3, ratio: -0.106 });

const trial = (over: Partial<Trial> = {}): Trial => ({
  value: 4,
  sets: [{ input: 'shim_count', value: 4 }],
  limit: limit('rudder_gap', { value: 69.1 }),
  worse: [],
  mends: [],
  failing: 0,
  ...over,
});

const remedy = (over: Partial<Remedy> = {}): Remedy => ({
  choice: 'shim_count',
  inputs: ['shim_count'],
  present: 3,
  first: trial(),
  inside: undefined,
  ...over,
});

const found = (over: Partial<Remedies> = {}): Remedies => ({
  limit: gap,
  failing: 1,
  remedies: [remedy()],
  by: 'change',
  ...over,
});

const worse = (how: Worse, before: LimitSample, after: LimitSample, lost = 0.1): Worsened => ({
  how,
  before,
  after,
  lost,
});

const bolts = (value: number, state: LimitSample['state']): LimitSample =>
  limit('bolt_utilisation', { state, value, low: null, high: 1, room: 1 - value, ratio: 1 - value });

describe('what a remedy does', () => {
  it('says what it would give, and whether that is only just enough', () => {
    expect(remedySentence(remedy(), found(), words)).toBe('Four shims would give 69.1 mm.');
    const near = trial({ limit: limit('rudder_gap', { state: 'near', value: 56.9 }) });
    const inside = trial({ value: 5 });
    expect(remedySentence(remedy({ first: near }), found(), words)).toBe(
      'Four shims would give 56.9 mm, only just enough.',
    );
    expect(remedySentence(remedy({ first: near, inside }), found(), words)).toBe(
      'Four shims would give 56.9 mm, only just enough; five would give 69.1 mm.',
    );
  });

  it('never gives a figure that reads like the one it has now', () => {
    const close = trial({ limit: limit('rudder_gap', { state: 'near', value: 50 }) });
    const now = { ...gap, value: 49.98, room: -0.02 };
    const says = remedySentence(remedy({ first: close }), found({ limit: now }), words);
    expect(says).toBe('Four shims would give 50.00 mm, only just enough.');
  });

  it('names parts as things', () => {
    const of = (inputs: readonly string[], value: number, name = 'bolt_utilisation') =>
      remedySentence(
        remedy({
          choice: inputs[0] as string,
          inputs,
          first: trial({ value, limit: { ...bolts(0.69, 'inside'), name } }),
        }),
        found({ limit: bolts(1.08, 'outside') }),
        words,
      );
    expect(of(['bolt_diameter'], 12)).toBe('M12 bolts would give 69 %.');
    expect(of(['shim_sleeve'], 1)).toBe(
      'Rigid sleeves round the lower bolts, or one bonded block, would give 69 %.',
    );
    expect(of(['plate_area'], 16000, 'plate_utilisation')).toBe('Plate area at 16000 mm² would give 69 %.');
    expect(of(['stop_collar', 'lanyard'], 1, 'retained')).toBe(
      'A stop collar or through pin and a line to a strong point of the boat would meet this limit.',
    );
  });

  it('says plainly when only a bound, or that the limit no longer applies, is left', () => {
    const accepted = remedy({
      choice: 'rudder_gap_min',
      inputs: ['rudder_gap_min'],
      first: trial({ value: 40, limit: { ...gap, low: 40 } }),
    });
    expect(leadSentence(found({ remedies: [accepted], by: 'accepting' }), words)).toBe(
      'No single change to the mount or its parts fixes this. If you set rudder gap (least) to 40 mm, 44.7 mm is enough.',
    );
    const one = remedy({ choice: 'strut_count', inputs: ['strut_count'], first: trial({ value: 1 }) });
    expect(leadSentence(found({ remedies: [one], by: 'leaving' }), words)).toBe(
      'No single change to the mount or its parts fixes this. One strut would mean that this limit no longer applies.',
    );
    expect(leadSentence(found({ remedies: [] }), words)).toBe(
      'No single change within the usual range fixes this. See Proposals.',
    );
  });
});

describe('what a remedy costs', () => {
  it('names the bound and both values', () => {
    const it = trial({
      worse: [
        worse('near', bolts(0.77, 'inside'), bolts(0.96, 'near')),
        worse(
          'less room',
          limit('shim_stack', { value: 36, low: null, high: 75 }),
          limit('shim_stack', { value: 48, low: null, high: 75 }),
        ),
      ],
    });
    expect(costSentences(it, words)).toEqual([
      'Leaves only just enough: lower bolts, from 77 % to 96 % (at most 100 %).',
      'Main cost: shim stack, from 36 mm to 48 mm (at most 75 mm).',
    ]);
    expect(costSentences(trial(), words)).toEqual(['No other limit becomes noticeably tighter.']);
  });

  it('warns before anything else of what it puts outside, and of more limits outside than now', () => {
    const it = trial({ failing: 2, worse: [worse('outside', bolts(0.96, 'near'), bolts(1.004, 'outside'))] });
    expect(warningSentences(it, found(), words)).toEqual([
      'This would leave 2 limits outside or without an answer, where now there is 1.',
      'Puts outside: lower bolts, from 96.0 % to 100.4 % (at most 100.0 %).',
    ]);
    const all = found({ remedies: [remedy({ first: it })] });
    expect(remediesSentence(all)).toMatch(
      /^Every single change that fixes this leaves more limits outside than now\./,
    );
    expect(leadSentence(all, words)).toBe(remediesSentence(all));
  });

  it('tells a limit that begins to apply by what it would be, and a bound that moves by both', () => {
    const cut = (state: LimitSample['state'], value: number, high: number): LimitSample =>
      limit('single_strut_cut', { state, value, low: null, high, room: null, ratio: null });
    const begins = trial({
      worse: [worse('outside', cut('does not apply', -20.3, 450), cut('outside', -20.3, 450))],
    });
    expect(warningSentences(begins, found(), words)).toEqual([
      'Puts outside: single strut cut, −20.3 mm (more than 0 mm).',
    ]);
    const moved = trial({
      worse: [
        worse(
          'outside',
          { ...cut('inside', 420, 450), room: 30 },
          { ...cut('outside', 420, 400), room: -20 },
        ),
      ],
    });
    expect(warningSentences(moved, found(), words)).toEqual([
      'Puts outside: single strut cut, 420 mm (at most 400 mm instead of 450 mm).',
    ]);
  });

  it('shows as many decimals as its sentences need, in inches as well', () => {
    const before = limit('bearing_gap', { value: 51.2, low: 50 });
    const after = limit('bearing_gap', { value: 50.4, low: 50, state: 'near' });
    const it = trial({ worse: [worse('near', before, after)] });
    expect(costSentences(it, inches)[0]).toBe(
      'Leaves only just enough: bearing to clamp, from 2.02 in to 1.98 in (at least 1.97 in).',
    );
  });

  it('never rounds what goes outside back inside, nor two values to one, in either unit', () => {
    // 1.97, −0.5, 2 1⁄16
    const plain = (text: string): number =>
      text
        .replace('−', '-')
        .split(' ')
        .reduce((sum, part) => {
          const [above = '', below = '1'] = part.split('⁄');
          return sum + Number(above) / Number(below);
        }, 0);
    const apart = fc.double({ min: 2e-3, max: 50, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 400, noNaN: true }),
        apart,
        apart,
        fc.boolean(),
        (low, above, below, isInch) => {
          const [before, after] = [low + above, low - below].map((value) =>
            limit('bearing_gap', { value, low }),
          );
          if (before === undefined || after === undefined) return;
          const it = trial({ worse: [worse('outside', before, { ...after, state: 'outside' })] });
          const [says = ''] = warningSentences(it, found(), isInch ? inches : words);
          const told = /from (.+?) (?:mm|in) to (.+?) (?:mm|in) \(at least (.+?) (?:mm|in)\)\.$/.exec(says);
          const [from, to, bound] = (told ?? []).slice(1).map(plain);
          expect(from, says).toBeGreaterThan(bound as number);
          expect(to, says).toBeLessThan(bound as number);
        },
      ),
    );
  });

  it('says what else it fixes', () => {
    expect(mendsSentence(trial({ mends: ['rudder_gap_swung'] }), words)).toBe(
      'Also fixes: rudder gap (swung).',
    );
    expect(mendsSentence(trial(), words)).toBeUndefined();
  });
});
