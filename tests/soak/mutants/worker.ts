import { basename, resolve } from 'node:path';
import fc from 'fast-check';
import { type Check, collector } from './checks.ts';
import { Modules } from './modules.ts';

/** A module to be changed, and what stands in it then; without a change every check must hold. */
export interface Question {
  readonly path: string;
  readonly source?: string;
}

/** The check that caught a change; none, where it survived. */
export interface Reply {
  readonly caught: string | null;
}

const ROOT = resolve(import.meta.dirname, '../../..');
const at = (path: string): string => resolve(ROOT, path);

// Shrinking a failure would tell no more.
fc.configureGlobal({ endOnFailure: true });

const files: readonly string[] = JSON.parse(process.env.STERNMOUNT_CHECKS ?? '[]') as string[];

const packages = new Map<string, unknown>();
const modules = new Modules(packages);
const wanted = new Set<string>();
for (const file of files) modules.read(at(file), wanted);
let kept = collector();
for (const name of wanted) {
  const module: unknown = name === 'vitest' ? undefined : await import(name);
  packages.set(name, module);
}
// Each run has tests of its own to keep.
const useNew = (): ReturnType<typeof collector> => {
  kept = collector();
  packages.set('vitest', kept.vitest);
  return kept;
};

const reaches = new Map(files.map((file) => [file, modules.reach(at(file))]));
const once = new Map(
  files.map((file) => {
    useNew();
    return [file, modules.run(at(file))] as const;
  }),
);

/** The library's functions that rest on a file, by the capital names in the files that do. */
function functionsOn(path: string): Set<string> {
  const names = new Set<string>();
  for (const [file, source] of modules.sources) {
    if (!file.includes('/src/calc/') || basename(file) === 'catalogue.ts' || !modules.reach(file).has(path))
      continue;
    for (const [, name] of source.matchAll(/'([A-Z][A-Z0-9_]{3,})'/g)) names.add(name as string);
  }
  return names;
}

const APART = 'apart.test.ts';

interface Timed {
  readonly file: string;
  readonly check: Check;
  readonly took: number;
}

/** How long each check took when nothing was changed, by its file and name. */
const took = new Map<string, number>();
const keyOf = (file: string, { name }: Check): string => `${file} ${name}`;

/**
 * Runs what rests on a file until a check fails, the quickest first. Of the checks made apart only those of functions
 * that rest on it.
 */
async function answer({ path, source }: Question): Promise<Reply> {
  const changed = source === undefined ? undefined : { path: at(path), source };
  const functions = functionsOn(at(path));
  const due: Timed[] = [];
  for (const file of files) {
    if (!reaches.get(file)?.has(at(path))) continue;
    const { checks } = useNew();
    const before = once.get(file) ?? new Map();
    const still = new Map([...before].filter(([other]) => !modules.reach(other).has(at(path))));
    try {
      modules.run(at(file), changed, still);
    } catch (error) {
      if (source === undefined) throw error;
      return { caught: file };
    }
    for (const check of checks) {
      const [id = ''] = /[A-Z][A-Z0-9_]{3,}/.exec(check.name) ?? [];
      if (basename(file) === APART && !functions.has(id)) continue;
      due.push({ file, check, took: took.get(keyOf(file, check)) ?? 0 });
    }
  }
  for (const { file, check } of due.sort((a, b) => a.took - b.took)) {
    const before = performance.now();
    try {
      await check.run();
    } catch (error) {
      if (source === undefined) throw new Error(`${file}, ${check.name}: ${String(error)}`);
      return { caught: file };
    }
    if (source === undefined) took.set(keyOf(file, check), performance.now() - before);
  }
  return { caught: null };
}

process.on('message', (question: Question) => {
  answer(question).then(
    (reply) => process.send?.(reply),
    (error) => process.send?.({ caught: null, failed: String(error) }),
  );
});
process.send?.('ready');
