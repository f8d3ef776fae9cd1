import { describe, expect, it } from 'vitest';
import { inputNamed } from '../../../src/plan/book.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { Session } from '../../../src/session/session.ts';
import { enterClear } from '../../../src/session/unit-question/enter-clear.ts';
import { questionWords } from '../../../src/session/unit-question/question-words.ts';
import { inUnit, unitDoubt } from '../../../src/session/unit-question/unit-doubt.ts';
import { unitQuestionsOf } from '../../../src/session/unit-question/unit-questions.ts';

const HEIGHT = { key: 'height', label: 'Height', unit: 'mm', usual: [600, 1000] } as const;
const SKIN = { key: 'skin', label: 'Skin', unit: 'mm', usual: [6, 60] } as const;

describe('a length without its unit', () => {
  it.each([
    ['24 1/2', HEIGHT, 'mm', 622.3],
    ['1,5', SKIN, 'mm', 38.1],
    ['800', HEIGHT, 'in', 800],
  ] as const)('is in doubt where only the other unit is usual: %s', (typed, asked, meant, other) => {
    const doubt = unitDoubt(asked, typed, meant);
    expect(doubt?.in[meant === 'mm' ? 'in' : 'mm']).toBeCloseTo(other, 9);
  });

  it.each([
    ['with its unit', '24 1/2 in', HEIGHT, 'mm'],
    ['usual as it is', '820', HEIGHT, 'mm'],
    ['not far from usual', '25', { ...HEIGHT, usual: [30, 800] }, 'mm'],
    ['a little under the least', '5', SKIN, 'mm'],
    ['usual in neither', '3', HEIGHT, 'mm'],
    ['nothing', '', HEIGHT, 'mm'],
    ['no length', 'low', HEIGHT, 'mm'],
    ['zero, the same in both', '0', HEIGHT, 'mm'],
    ['without a usual range', '24 1/2', { ...HEIGHT, usual: undefined }, 'mm'],
    ['no length by its kind', '24', { ...HEIGHT, unit: 'deg' }, 'mm'],
  ] as const)('is not: %s', (_what, typed, asked, meant) => {
    expect(unitDoubt(asked, typed, meant)).toBeUndefined();
  });

  it('takes a unit, and a text that has one does not', () => {
    expect(inUnit(' 24 1/2 ', 'in')).toBe('24 1/2 in');
    expect(inUnit('60 cm', 'in')).toBe('60 cm');
    expect(inUnit('0', 'in')).toBe('0');
    expect(inUnit('=shim_thickness', 'in')).toBe('=shim_thickness');
  });
});

describe('the question about it', () => {
  const asked = (typed: string) => {
    const session = new Session(newPlan('x'));
    expect(enterClear(session, 'upper_bracket_height', typed)).toBe(true);
    const question = unitQuestionsOf(session).now();
    if (question === undefined) throw new Error('nothing is asked');
    return { session, question };
  };

  it('comes before the edit, and the answer is put in as one step', () => {
    const { session, question } = asked('24 1/2');
    expect(session.undoes).toBeUndefined();
    expect(session.value('upper_bracket_height')).toBe(inputNamed('upper_bracket_height')?.value);
    question.answer('in');
    expect(session.value('upper_bracket_height')).toBeCloseTo(622.3, 9);
    expect(session.reading('upper_bracket_height')?.typed).toBe('24 1/2 in');
    expect(unitQuestionsOf(session).now()).toBeUndefined();
    session.undo();
    expect(session.undoes).toBeUndefined();
  });

  it('is asked once: an answer that a length is in the unit it was taken for holds from then on', () => {
    const { session, question } = asked('24 1/2');
    question.answer('mm');
    expect(session.value('upper_bracket_height')).toBe(24.5);
    expect(enterClear(session, 'upper_bracket_height', '25 1/2')).toBe(false);
    expect(session.value('upper_bracket_height')).toBe(25.5);
  });

  it('is not asked of what is refused as it stands: the refusal says what is allowed', () => {
    const session = new Session(newPlan('x'));
    expect(enterClear(session, 'transom_camber_radius', '150')).toBe(false);
    expect(session.draft('transom_camber_radius')?.why).toMatch(/port_foot_y/);
  });

  it('left without an answer keeps the text and changes nothing', () => {
    const { session, question } = asked('24 1/2');
    question.leave();
    expect(session.undoes).toBeUndefined();
    expect(session.draft('upper_bracket_height')).toEqual({
      typed: '24 1/2',
      why: 'It is not clear whether 24 1/2 is in mm or in inches: write 24 1/2 mm or 24 1/2 in.',
    });
  });

  it('names the field, the usual range and what each answer gives', () => {
    const { question } = asked('24 1/2');
    const { says, choices } = questionWords(question);
    expect(says).toMatch(
      /^Height of the upper bracket: 24 1\/2 has no unit\. In mm it lies far outside the usual /,
    );
    expect(choices.map((it) => it.words)).toEqual(['24 1/2 in, which is 622.3 mm', '24 1/2 mm']);
  });
});
