import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { transformSync } from 'esbuild';

type Exports = Record<string, unknown>;
type Body = (require: (to: string) => unknown, module: { exports: Exports }, exports: Exports) => void;

const IMPORT = /(?:^|\n)\s*(?:import|export)\s(?:[^'";]*?\sfrom\s)?['"]([^'"]+)['"]/g;

/** The modules that a module imports: files by their paths, packages by their names; not those for types alone. */
export function importsOf(path: string, source: string): string[] {
  const bare = source.replace(/(^|\n)\s*import type [^;]+;/g, '');
  return [...bare.matchAll(IMPORT)].map((match) => {
    const to = match[1] as string;
    return to.startsWith('.') ? resolve(dirname(path), to) : to;
  });
}

/** Modules held as functions, so that they can be run again and again with one of them changed. */
export class Modules {
  readonly sources = new Map<string, string>();
  readonly #bodies = new Map<string, Body>();
  readonly #packages: ReadonlyMap<string, unknown>;

  constructor(packages: ReadonlyMap<string, unknown>) {
    this.#packages = packages;
  }

  /** Reads a module and all that it imports. Gives back the names of packages among them. */
  read(path: string, packages = new Set<string>()): Set<string> {
    if (this.sources.has(path)) return packages;
    const source = readFileSync(path, 'utf8');
    this.sources.set(path, source);
    for (const to of importsOf(path, source)) {
      if (to.startsWith('/') || /^[A-Z]:/i.test(to)) this.read(to, packages);
      else packages.add(to);
    }
    return packages;
  }

  /** Every file that a file rests on, itself included. */
  reach(path: string, into = new Set<string>()): Set<string> {
    if (into.has(path)) return into;
    into.add(path);
    for (const to of importsOf(path, this.sources.get(path) ?? ''))
      if (this.sources.has(to)) this.reach(to, into);
    return into;
  }

  #bodyOf(source: string): Body {
    const { code } = transformSync(source, { loader: 'ts', format: 'cjs', target: 'es2022' });
    return new Function('require', 'module', 'exports', code) as Body;
  }

  /** Runs a module and all it imports anew, `changed` with other source; modules that stand in `kept` are not run again. */
  run(
    path: string,
    changed?: { path: string; source: string },
    kept?: ReadonlyMap<string, Exports>,
  ): Map<string, Exports> {
    const done = new Map<string, Exports>(kept);
    const load = (at: string): Exports => {
      const known = done.get(at);
      if (known !== undefined) return known;
      const module = { exports: {} as Exports };
      done.set(at, module.exports);
      let body: Body;
      if (at === changed?.path) body = this.#bodyOf(changed.source);
      else {
        const held = this.#bodies.get(at) ?? this.#bodyOf(this.sources.get(at) ?? '');
        this.#bodies.set(at, held);
        body = held;
      }
      body(
        (to) => (to.startsWith('.') ? load(resolve(dirname(at), to)) : this.#packages.get(to)),
        module,
        module.exports,
      );
      done.set(at, module.exports);
      return module.exports;
    };
    load(path);
    return done;
  }
}
