import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { plain } from '../../src/cli/study/plain.ts';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { oddsAsk } from '../../src/session/studies/asks.ts';
import { benchOf } from '../../src/session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../src/session/studies/evaluators.ts';
import { start } from '../../src/session/studies/registry.ts';
import { finish } from '../../src/studies/study.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { command } from '../support/command.ts';

const FILE = 'demo-data/start.plan.json';

interface Printed {
  readonly study: string;
  readonly says: readonly string[];
  readonly answer: Record<string, unknown>;
}

async function asked(...args: string[]): Promise<Printed> {
  const { code, out, err } = await command('study', [...args, '--plan', FILE, '--json']);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out) as Printed;
}

describe('study', { timeout: 300_000 }, () => {
  it('sweeps an input and says what holds', async () => {
    const { says, answer } = await asked('sweep', '--input', 'shim_count', '--scenario', 'Three shims');
    expect(says[0]).toContain('from 4 shims');
    expect(answer.turnings).toContainEqual(expect.objectContaining({ limit: 'rudder_gap', at: 4 }));
    expect(answer.turnings).toContainEqual(expect.objectContaining({ limit: 'bolt_utilisation', at: 5 }));
  });

  // The free shaft is 910 mm less the bracket's height here, and 12 mm of it must be left.
  it('finds where a limit turns', async () => {
    const { answer } = await asked(
      'turning',
      '--input',
      'upper_bracket_height',
      '--limit',
      'drive_headroom',
      '--low',
      '80 cm',
    );
    const [limit] = answer.limits as { turns: { below: number; above: number }[] }[];
    expect(limit?.turns).toHaveLength(1);
    expect(limit?.turns[0]?.below).toBeCloseTo(868, 3);
    expect(limit?.turns[0]?.above).toBeCloseTo(868, 3);
    expect(answer.road).toEqual({ by: 'replay' });
  });

  it('maps two inputs, columns as lists', async () => {
    const { says, answer } = await asked(
      'map',
      ...['--across', 'shim_count', '--up', 'upper_bracket_height', '--fineness', '9'],
      ...['--result', 'rudder_gap'],
    );
    expect(says[0]).toContain('% of this picture');
    expect(answer.ys).toHaveLength(9);
    const [gap] = answer.results as number[][];
    expect(gap).toHaveLength((answer.xs as number[]).length * 9);
    expect(gap?.[3]).toBeCloseTo(44.7009, 4);
    expect(gap?.[4]).toBeCloseTo(56.886, 4);
  });

  it('gives the same odds as anywhere else, to the last digit', async () => {
    const opened = openPlan(readFileSync(resolve(import.meta.dirname, '../..', FILE), 'utf8'));
    if (!opened.ok) throw new Error(opened.why);
    const { plan } = opened;
    const workbook = new Workbook(plan, null);
    const here = finish(
      start(benchOf(workbook, new ReplayEvaluators(workbook), plan), {
        study: 'odds',
        ask: oddsAsk(plan, null, {}),
      }),
    );
    const { answer, says } = await asked('odds');
    expect(answer).toEqual(JSON.parse(JSON.stringify(here, plain)));
    expect(says[0]).toMatch(/of all cases/);
  });

  it('tells drivers and proposals in sentences', async () => {
    const [drivers, proposals] = await Promise.all([
      command('study', ['drivers', '--plan', FILE, '--limit', 'rudder_gap']),
      command('study', ['proposals', '--plan', FILE, '--free', 'shim_count']),
    ]);
    expect(drivers.code).toBe(0);
    expect(drivers.out).toContain('moves the rudder gap most');
    expect(proposals.code).toBe(0);
    expect(proposals.out).toContain('of the mounts tried that meet every limit');
    expect(proposals.out).toContain('The gear maker’s manual comes first');
  });

  it('works a first mount out', async () => {
    const { says, answer } = await asked('mount');
    expect(says[0]).toMatch(/^A mount for this boat: /);
    expect(says[1]).toBe('It meets every limit.');
    expect(answer.conflicts).toEqual([]);
  });

  it.each([
    ['no study', [], /name of a study is missing.*sweep/],
    ['another study', ['guess'], /no study “guess”/],
    ['no input', ['sweep'], /--input is missing/],
    ['an unknown input', ['turning', '--input', 'mast'], /no input named mast/],
    ['an input without a range', ['sweep', '--input', 'transom_build'], /transom_build has no range/],
    ['swapped ends', ['sweep', '--input', 'shim_count', '--low', '6', '--high', '2'], /from 6 to 2/],
    ['an end that cannot be', ['sweep', '--input', 'shim_count', '--low', '-1'], /--low: /],
    ['one input twice', ['map', '--across', 'shim_count', '--up', 'shim_count'], /two inputs/],
    ['an unknown limit', ['drivers', '--limit', 'mast'], /no limit named mast/],
    ['an unknown result', ['sweep', '--input', 'shim_count', '--result', 'mast'], /no cell named mast/],
    ['a share over 1', ['odds', '--share', '2'], /from 0 to 1/],
    ['an unknown choice', ['proposals', '--free', 'mast'], /--free cannot be “mast”/],
    ['an option of another study', ['odds', '--input', 'shim_count'], /--input/],
  ])('refuses %s with one sentence and nothing on standard output', async (_, args, sentence) => {
    const { code, out, err } = await command('study', args);
    expect(err).toMatch(sentence);
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(code).toBe(2);
    expect(out).toBe('');
  });
});
