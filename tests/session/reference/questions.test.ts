import { describe, expect, it } from 'vitest';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { questionsFound } from '../../../src/session/reference/questions.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const workbook = new Workbook(newPlan('Questions'));
const titles = (search: string): readonly string[] =>
  questionsFound(search, (name) => workbook.answer(name).value).map((it) => it.title);

describe('questions of the work', () => {
  it.each([
    ['what is not judged: bearings', 'Bearings, clamps, bracket arms, hinge pins'],
    ['loaded or light waterline', 'Loaded or light'],
    ['can the nuts be reached?', 'Can the nuts be reached'],
    ['tools, hands and hours', 'Hands and hours'],
    ['how long', 'Hands and hours'],
    ['when to stop', 'When to stop'],
    ['the manual and the workbook disagree', 'Manual and workbook disagree'],
    ['is 0.9 bad', 'Is 0.9 bad'],
    ['what if the boat touches bottom', 'If the boat touches bottom'],
    ['run aground', 'If the boat touches bottom'],
  ])('“%s” finds its answer', (typed, title) => {
    expect(titles(typed)).toContain(title);
  });

  it('finds nothing for no search, plain words, or a word that stands nowhere', () => {
    expect(titles('')).toEqual([]);
    expect(titles('is it the')).toEqual([]);
    expect(titles('galley')).toEqual([]);
  });
});
