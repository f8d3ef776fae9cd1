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
  warningSentences,
} from '../../src/studies/remedy-words.ts';
import { finish } from '../../src/studies/study.ts';
import { sweep } from '../../src/studies/sweep.ts';
import { turnsAt, whatHolds } from '../../src/studies/sweep-words.ts';
import { caseEvaluator, casePlan } from './case-evaluator.ts';

type Values = Readonly<Record<string, number | boolean>>;

function mend(values: Values, limit: string, locked: readonly string[] = [], only?: string) {
  const plan = { ...casePlan(values), locked: new Set(locked) };
  const { evaluator, workbook } = caseEvaluator(plan);
  const ask = remedyAsk({
    limit,
    plan,
    uses: workbook.uses(),
    value: (name) => readingOf(plan, name)?.value ?? null,
    stepOf: (cell) => cell.step ?? 1,
  });
  const choices = ask.choices.filter((it) => only === undefined || it.name === only);
  return { ask, words: studyWords(plan), found: finish(remedies(evaluator, { ...ask, choices })) };
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
    expect(leadSentence(found, words)).toMatch(/^Four shims would give 56\.9 mm, only just enough/);
    const [first] = found.remedies;
    expect(first && mendsSentence(first.first, words)).toBe('Also fixes: rudder gap (swung).');
  });

  it('with the upper bracket at 900 and its overlap as the model has it: 890 gives the drive unit 20 mm more', () => {
    const { found, words } = mend({ upper_bracket_height: 900, drive_overlap: 150 }, 'drive_headroom');
    expect(leadSentence(found, words)).toBe(
      'Upper bracket at 895 mm would give 15 mm, only just enough; 890 mm would give 20 mm.',
    );
  });

  it('sleeves let the bolts hold under any number of shims', () => {
    const { found, words } = mend({ shim_count: 6 }, 'bolt_utilisation', [], 'shim_sleeve');
    const [sleeves] = found.remedies;
    expect(sleeves && remedySentence(sleeves, found, words)).toMatch(
      /^Rigid sleeves round the lower bolts, or one bonded block, would give \d+ %\.$/,
    );
    expect(sleeves?.first.sets).toEqual([{ input: 'shim_sleeve', value: true }]);
  });

  it('warns of what turns outside, both values and the bound', () => {
    const { found, words } = mend({ shim_count: 3 }, 'rudder_gap');
    const foot = found.remedies.find((it) => it.choice === 'shaft_foot_height');
    if (foot === undefined) throw new Error('The foot of the shaft should reach the gap.');
    expect(remedySentence(foot, found, words)).toMatch(
      /^Shaft foot at 355 mm would give 50\.\d+ mm, only just enough\.$/,
    );
    const [more, outside, none] = warningSentences(foot.first, found, words);
    expect(more).toMatch(
      /^This would leave \d+ limits outside or without an answer, where now there are 2\.$/,
    );
    expect(outside).toMatch(/^Puts outside: bearing to clamp, from 110 mm to −145 mm \(at least \d+ mm\); /);
    expect(none).toMatch(/^Leaves without an answer: .+; and \d+ more\.$/);
    expect(found.remedies.at(-1)?.first.failing).toBeGreaterThan(2);
  });

  it('never says that a limit no longer applies while a change helps', () => {
    const { found, words } = mend({ strut_supply_length: 100 }, 'port_strut_cut');
    expect(found.remedies.every((it) => it.first.limit.state !== 'does not apply')).toBe(
      found.by === 'change',
    );
    expect(leadSentence(found, words)).not.toMatch(/^One strut/);
  });

  it('fits what is missing together', () => {
    const { found, words } = mend({ stop_collar: false, lanyard: false }, 'retained');
    expect(leadSentence(found, words)).toBe(
      'A stop collar or through pin and a line to a strong point of the boat would meet this limit.',
    );
    const alone = mend({ lanyard: false }, 'retained');
    expect(alone.found.remedies.map((it) => it.inputs)).toEqual([['lanyard']]);
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
      'No single change to the mount or its parts fixes this. If you set rudder gap (least) to 40 mm, 44.7 mm is enough.',
    );
  });

  it('says so when nothing helps', () => {
    const { found, words } = mend({ boat_speed: 25 }, 'stock_utilisation');
    expect(leadSentence(found, words)).toBe(
      'No single change within the usual range fixes this. See Proposals.',
    );
  });
});

describe('what holds', () => {
  it('is one sentence: the gap from 4 shims up, the bolts not from 5', () => {
    const { swept, words } = sweepOf({ shim_count: 3 }, 'shim_count');
    expect(whatHolds(swept, words)).toBe(
      'The limits on rudder gap and rudder gap (swung) hold from 4 shims up; the limit on lower bolts fails from 5 shims up; ' +
        'the limit on shim stack fails from 7 shims up; 1 more limit turns; every limit holds at 4 shims alone.',
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
