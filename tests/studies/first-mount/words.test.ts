import { describe, expect, it } from 'vitest';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { studyWords } from '../../../src/session/study-words.ts';
import { type Conflict, type FirstMount, MADE } from '../../../src/studies/first-mount/ask.ts';
import {
  conflictSentence,
  freeingWords,
  mountSentence,
  standingSentence,
} from '../../../src/studies/first-mount/words.ts';

const words = studyWords({ ...newPlan('Any boat'), units: 'mm' });

const valuesWith = (over: Partial<Record<(typeof MADE)[number], number>>): readonly number[] =>
  MADE.map((name) => over[name] ?? 0);

const found = (failing: readonly string[], conflicts: readonly Conflict[] = []): FirstMount => ({
  mount: { values: valuesWith({}), failing },
  conflicts,
  looked: 1,
  road: { by: 'replay' },
});

const together = (limits: readonly string[], isSmallest = true): Conflict => ({
  limits,
  how: 'together',
  isSmallest,
  frees: [],
});

describe('what a first mount is made up of', () => {
  const brackets = { lower_bracket_height: 250, upper_bracket_height: 800, shaft_foot_height: 100 };

  it.each([
    [0, 'no shims'],
    [1, '1 shim of 10 mm'],
    [2, '2 shims of 10 mm'],
  ])('%i shims', (shim_count, said) => {
    const values = valuesWith({
      ...brackets,
      shim_count,
      shim_thickness: 10,
      strut_count: 1,
      single_foot_height: 790,
    });
    expect(mountSentence({ values, failing: [] }, words)).toBe(
      `A mount for this boat: ${said}, the lower bracket at 250 mm, the upper bracket at 800 mm, the shaft’s foot at 100 mm and one strut with its foot at 790 mm.`,
    );
  });

  it('names the wedge and both feet', () => {
    const values = valuesWith({
      ...brackets,
      ...{ shim_count: 3, shim_thickness: 12, wedge_edge: 5, strut_count: 2 },
      ...{ starboard_foot_height: 790, starboard_foot_y: 170 },
    });
    const said = mountSentence({ values, failing: [] }, words);
    expect(said).toContain('a wedge under the lower flange');
    expect(said).toContain('two struts with their feet at 790 mm, 170 mm from the centreline.');
  });
});

describe('how a first mount stands to the limits', () => {
  it('is said with what fails', () => {
    expect(standingSentence(found([]), words)).toBe('It meets every limit.');
    expect(standingSentence(found(['rudder_gap']), words)).toMatch(/^Outside with it: rudder gap\. No mount/);
    expect(standingSentence({ ...found(['rudder_gap']), unfinished: true }, words)).toContain('was stopped');
    const anyway: Conflict = { ...together(['retained']), how: 'no choice' };
    expect(standingSentence(found(['retained'], [anyway]), words)).toContain(
      'This one meets every other limit.',
    );
  });
});

describe('a conflict', () => {
  it('names what fails first, and no more than a few', () => {
    const few = together(['bracket_spacing', 'rudder_gap']);
    expect(conflictSentence(few, found(['rudder_gap']), words)).toMatch(
      /^No mount meets the limits on rudder gap and .+ together\. Without any one of them the others can be met\./,
    );
    const many = together(
      ['shaft_face_gap', 'bearing_gap', 'bracket_spacing', 'rudder_immersion', 'shim_stack', 'rudder_gap'],
      false,
    );
    const said = conflictSentence(many, found(['rudder_gap']), words);
    expect(said).toMatch(
      /^No mount meets the limits on rudder gap, .+ and 3 more together\. Every shim count/,
    );
    expect(said).not.toContain('Without any one');
  });

  it('of one limit is no conflict with others', () => {
    expect(conflictSentence(together(['rudder_gap']), found(['rudder_gap']), words)).toMatch(
      /^No mount meets the limit on rudder gap\. Every/,
    );
  });

  it('that no mount can change says what would', () => {
    const anyway: Conflict = { ...together(['retained']), how: 'no choice' };
    expect(conflictSentence(anyway, found(['retained']), words)).toMatch(
      /^No choice of mount .*fit the stop collar/,
    );
  });

  it('tells a change with both values', () => {
    expect(freeingWords({ name: 'shim_stack_max', from: 75, to: 105 }, words)).toMatch(
      /: 105 mm instead of 75 mm$/,
    );
  });
});
