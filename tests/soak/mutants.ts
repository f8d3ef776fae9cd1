import { type ChildProcess, fork } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import { importsOf } from './mutants/modules.ts';
import { mutated, mutationsOf } from './mutants/mutations.ts';
import { SAME_ANSWERS } from './mutants/same-answers.ts';
import type { Question, Reply } from './mutants/worker.ts';
import type { SoakLine } from './part.ts';

const ROOT = resolve(import.meta.dirname, '../..');

/** What is to be caught of all changes. */
const SHARE = 0.98;

/** A change after which the checks take so many times as long as without it, and so long, does not end: it is caught. */
const LONGER = 10;
const LONG_ENOUGH = 20_000;

/** Files of the library that the catalogue reaches. */
function reached(path: string, into = new Set<string>()): Set<string> {
  if (into.has(path)) return into;
  into.add(path);
  for (const to of importsOf(resolve(ROOT, path), readFileSync(resolve(ROOT, path), 'utf8'))) {
    reached(
      to
        .slice(ROOT.length + 1)
        .split(sep)
        .join('/'),
      into,
    );
  }
  return into;
}

/** Searches for more pieces than a library function is ever given, which its records do not reach. */
const isSearch = (path: string): boolean =>
  path.startsWith('src/calc/cutting/') && !['cut.ts', 'sheet-area.ts'].some((it) => path.endsWith(it));

const library = [...reached('src/calc/catalogue.ts')].filter(
  (path) => !isSearch(path) && !path.endsWith('catalogue.ts') && !path.endsWith('record.ts'),
);

/** Checks from outside or written apart; the worked examples of our own are none. The quickest come first. */
const checks = [
  'tests/calc/apart.test.ts',
  ...readdirSync(join(ROOT, 'tests/calc'), { recursive: true, encoding: 'utf8' })
    .map((it) => `tests/calc/${it.split(sep).join('/')}`)
    .filter(
      (it) =>
        it.endsWith('.test.ts') &&
        !/\/(apart|catalogue)\.test\.ts$|\/cutting\/(?!cut)|\/uncertainty\/|\/bodies\//.test(it),
    ),
];

/** A process that makes changes, so that one whose sums do not end can be ended. */
const start = (): Promise<ChildProcess> =>
  new Promise((done, fail) => {
    const child = fork(join(import.meta.dirname, 'mutants/worker.ts'), {
      env: { ...process.env, STERNMOUNT_CHECKS: JSON.stringify(checks) },
    });
    child.once('message', () => done(child));
    child.once('error', fail);
    child.once('exit', (code) => fail(new Error(`The process that makes changes ended with ${code}.`)));
  });

/** Changes one sign, factor or term of the library at a time and looks whether a check notices. */
export async function* soakMutants(only: string): AsyncIterable<SoakLine> {
  let worker = await start();
  const ask = async (question: Question, longest?: number): Promise<Reply & { readonly failed?: string }> => {
    let timer: NodeJS.Timeout | undefined;
    const reply = new Promise<Reply>((done) => worker.once('message', done));
    const late = new Promise<Reply>((done) => {
      if (longest !== undefined) timer = setTimeout(() => done({ caught: 'it does not end' }), longest);
    });
    worker.send(question);
    const said = await Promise.race([reply, late]);
    clearTimeout(timer);
    if (said.caught === 'it does not end') {
      worker.kill('SIGKILL');
      worker = await start();
    }
    return said;
  };
  let [all, caught, alike] = [0, 0, 0];
  for (const path of library.filter((it) => it.includes(only))) {
    const source = readFileSync(resolve(ROOT, path), 'utf8');
    const mutations = mutationsOf(source);
    if (mutations.length === 0) continue;
    const before = performance.now();
    const sound = await ask({ path });
    const longest = LONG_ENOUGH + LONGER * (performance.now() - before);
    if (sound.failed !== undefined) throw new Error(`Unchanged, a check fails: ${sound.failed}`);
    const lines = source.split('\n');
    const survivors: string[] = [];
    const same: string[] = [];
    for (const mutation of mutations) {
      const line = lines[mutation.line - 1] as string;
      const says = `line ${mutation.line}: ${mutation.says}`;
      const known = SAME_ANSWERS.find(
        ([file, on, changes]) => path.endsWith(file) && line.includes(on) && changes.includes(mutation.says),
      );
      if (known !== undefined) {
        same.push(`${says} (${known[3]})`);
        continue;
      }
      const { caught: by } = await ask({ path, source: mutated(source, mutation) }, longest);
      if (by === null) survivors.push(says);
    }
    const here = mutations.length - same.length;
    all += here;
    caught += here - survivors.length;
    alike += same.length;
    yield {
      name: path,
      says: [
        `${here - survivors.length} of ${here} changes caught`,
        ...survivors.map((it) => `not caught, ${it}`),
        ...same.map((it) => `the same answers, ${it}`),
      ].join('\n         '),
      ok: survivors.length === 0,
    };
  }
  worker.kill('SIGKILL');
  yield {
    name: 'changes of one sign, factor or term',
    says: `${caught} of ${all} caught, ${((100 * caught) / all).toFixed(1)} % (98 % asked for); ${alike} more leave every answer as it is`,
    ok: caught >= SHARE * all,
  };
}
