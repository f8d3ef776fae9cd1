import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';

export interface Check {
  readonly name: string;
  readonly run: () => unknown;
}

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

type Row = unknown;
const spread = (row: Row): readonly unknown[] => (Array.isArray(row) ? row : [row]);

/** What test files import in place of the test runner: their tests are kept, to be run one by one until one fails. */
export function collector(): { readonly checks: Check[]; readonly vitest: object } {
  const checks: Check[] = [];
  const it = (name: string, ...given: readonly unknown[]): void => {
    const run = given.find((part) => typeof part === 'function') as Check['run'];
    checks.push({ name, run });
  };
  const each =
    (make: (name: string, run: Check['run']) => void) =>
    (rows: readonly Row[]) =>
    (name: string, ...given: readonly unknown[]): void => {
      const run = given.find((part) => typeof part === 'function') as (...row: readonly unknown[]) => unknown;
      for (const row of rows) make(`${name} ${JSON.stringify(spread(row)[0])}`, () => run(...spread(row)));
    };
  const describe = (_: string, ...given: readonly unknown[]): void =>
    void (given.find((part) => typeof part === 'function') as () => void)();
  const all = {
    it: Object.assign(it, { each: each(it) }),
    describe: Object.assign(describe, { each: each((name, run) => describe(name, run)) }),
    expect: Object.assign((value: unknown, message?: string) => chai.expect(value, message), chai.expect),
    beforeAll: (run: () => void) => run(),
    afterAll: () => undefined,
  };
  return { checks, vitest: { ...all, test: all.it } };
}
