import { describe, expect, it } from 'vitest';
import { inputNamed } from '../../src/plan/book.ts';
import { readingOf } from '../../src/plan/plan.ts';
import { remedyAsk } from '../../src/session/remedy-ask.ts';
import { studyWords } from '../../src/session/study-words.ts';
import { remedies } from '../../src/studies/remedies.ts';
import {
  leadSentence,
  mendsSentence,
  remedySentence,
  worseSentences,
} from '../../src/studies/remedy-words.ts';
import { finish } from '../../src/studies/study.ts';
import { sweep } from '../../src/studies/sweep.ts';
import { turnsAt, whatHolds } from '../../src/studies/sweep-words.ts';
import { caseEvaluator, casePlan } from './case-evaluator.ts';

type Values = Readonly<Record<string, number | boolean>>;

function mend(values: Values, limit: string, locked: readonly string[] = []) {
  const plan = { ...casePlan(values), locked: new Set(locked) };
  const { evaluator, workbook } = caseEvaluator(plan);
  const ask = remedyAsk({
    limit,
    plan,
    uses: workbook.uses(),
    value: (name) => readingOf(plan, name)?.value ?? null,
    stepOf: (cell) => cell.step ?? 1,
  });
  return { ask, words: studyWords(plan), found: finish(remedies(evaluator, ask)) };
}

function sweepOf(values: Values, input: string) {
  const plan = casePlan(values);
  const cell = inputNamed(input);
  const present = readingOf(plan, input)?.value;
  if (cell?.usual === undefined || typeof present !== 'number') throw new Error(`${input} cannot be swept.`);
  const [low, high] = cell.usual;
  const swept = finish(
    sweep(caseEvaluator(plan).evaluator, {
      input,
      low,
      high,
      present,
      whole: cell.type === 'whole',
      points: 41,
      results: [],
    }),
  );
  return { swept, words: studyWords(plan) };
}

// The figures are those of the model's case, worked out apart from this program.
describe('what would mend the case to start from', () => {
  it('with three shims: four give 56.9 mm, which is said first', () => {
    const { found, words } = mend({ shim_count: 3 }, 'rudder_gap');
    expect(leadSentence(found, words)).toBe('Four shims give 56.9 mm, still near; five give 69.1 mm.');
    const [first] = found.remedies;
    expect(first === undefined ? [] : worseSentences(first.first, words)).toEqual([
      'Loses most room: shim stack, from 36 mm to 48 mm (at most 75 mm); lower bolts, from 0.77 to 0.86 (at most 1).',
    ]);
    expect(first && mendsSentence(first.first, words)).toBe('It also mends: rudder gap (swung).');
  });

  it('with six shims: five let the bolts hold', () => {
    const { found, words } = mend({ shim_count: 6 }, 'bolt_utilisation');
    expect(leadSentence(found, words)).toBe('Five shims give 0.96, still near; four give 0.86.');
  });

  it('with the upper bracket at 900: 890 gives the drive unit 20 mm', () => {
    const { found, words } = mend({ upper_bracket_height: 900 }, 'drive_headroom');
    expect(leadSentence(found, words)).toBe(
      'Upper bracket at 895 mm gives 15 mm, still near; 890 mm gives 20 mm.',
    );
  });

  it('says what turns outside', () => {
    const { found, words } = mend({ shim_count: 3 }, 'rudder_gap');
    const foot = found.remedies.find((it) => it.choice === 'shaft_foot_height');
    if (foot === undefined) throw new Error('The foot of the shaft should reach the gap.');
    expect(remedySentence(foot, false, words)).toBe('Shaft foot at 355 mm gives 50.0 mm.');
    const [outside, none] = worseSentences(foot.first, words);
    expect(outside).toBe(
      'Turns outside: bearing to clamp, from 110 mm to −145 mm (at least 50 mm); under water, from 1 to 0.77 (at least 0.95).',
    );
    expect(none).toMatch(/^Loses its answer: .+; and \d more\.$/);
  });

  it('counts one thing as one', () => {
    const { found, words } = mend({ strut_supply_length: 100 }, 'port_strut_cut');
    expect(leadSentence(found, words)).toBe('One strut: this limit then no longer applies.');
  });

  it('leaves out what is drilled, what follows a formula and what does not reach the limit', () => {
    const { ask } = mend({ shim_count: 3 }, 'rudder_gap', ['shim_count', 'lower_bracket_height']);
    const names = ask.choices.map((it) => it.name);
    expect(names).toContain('shim_thickness');
    expect(names).not.toContain('shim_count');
    expect(names).not.toContain('lower_bracket_height');
    expect(names).not.toContain('port_foot_y');
    expect(names).not.toContain('rudder_gap_min');
    expect(ask.accepted.map((it) => it.name)).toEqual(['rudder_gap_min']);
  });

  it('turns to what the owner accepts when all else is drilled', () => {
    const drilled = [
      'shim_count',
      'shim_thickness',
      'wedge_edge',
      'shaft_offset',
      'shaft_lean',
      'shaft_foot_height',
      'lower_bracket_height',
      'upper_bracket_height',
    ];
    const { found, words } = mend({ shim_count: 3 }, 'rudder_gap', drilled);
    expect(leadSentence(found, words)).toBe(
      'No choice of the mount mends it by itself. With 40 mm accepted for rudder gap (least), 44.7 mm holds.',
    );
  });

  it('says so when nothing helps', () => {
    const { found, words } = mend({ boat_speed: 25 }, 'stock_utilisation');
    expect(leadSentence(found, words)).toBe('No single choice mends it inside its usual range.');
  });
});

describe('what holds', () => {
  it('is one sentence: the gap from 4 shims up, the bolts not from 6', () => {
    const { swept, words } = sweepOf({ shim_count: 3 }, 'shim_count');
    expect(whatHolds(swept, words)).toBe(
      'The limits on rudder gap and rudder gap (swung) hold from 4 shims up; the limit on lower bolts fails from 6 shims up; ' +
        'the limit on shim stack fails from 7 shims up; every limit holds from 4 to 5 shims.',
    );
    expect(
      swept.turnings
        .filter((it) => it.limit === 'rudder_gap')
        .map((it) => turnsAt(it, words.cell('shim_count'))),
    ).toEqual(['turns at 4']);
  });

  it('of a measure names the last value that holds', () => {
    const { swept, words } = sweepOf({}, 'rudder_gap_min');
    expect(whatHolds(swept, words)).toBe(
      'The limits on rudder gap and rudder gap (swung) fail above 56.9 mm; every limit holds from 10 to 56.9 mm.',
    );
  });

  it('tells what fails throughout and counts what it leaves out', () => {
    const { swept, words } = sweepOf({ shim_count: 3 }, 'upper_bracket_height');
    expect(whatHolds(swept, words)).toMatch(
      /the limits on rudder gap and rudder gap \(swung\) fail throughout; \d+ more limits turn; no value lets every limit hold\.$/,
    );
  });

  it('says so when everything holds', () => {
    const { swept, words } = sweepOf({}, 'saw_kerf');
    expect(whatHolds(swept, words)).toBe('Every limit holds throughout.');
  });
});
