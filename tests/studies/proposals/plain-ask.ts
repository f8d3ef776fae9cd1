import type { Freed, ProposalsAsk } from '../../../src/studies/proposals/ask.ts';

export const stepsOf = (low: number, high: number, step: number): number[] =>
  Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step);

/** One input freed by itself. */
export const free = (input: string, values: readonly number[], whole = false): Freed => ({
  name: input,
  moves: [{ input, sign: 1 }],
  values,
  whole,
});

export const proposalsAsk = (
  ask: Partial<ProposalsAsk> & Pick<ProposalsAsk, 'freed' | 'present'>,
): ProposalsAsk => ({
  scenario: null,
  scenarios: [],
  shims: { input: 'shims', present: 0 },
  bolts: ['bolts'],
  loosened: [],
  seed: 7,
  evaluations: 20_000,
  ...ask,
});

/** Every mount that the freed choices allow, input by input. */
export const everyMount = (freed: readonly Freed[]): number[][] =>
  freed.reduce<number[][]>(
    (all, { values }) => all.flatMap((it) => values.map((value) => [...it, value])),
    [[]],
  );
