import type { Content } from './engine.ts';
import { readFormula } from './formula.ts';

/** Names each formula cell uses. */
export function uses(contents: ReadonlyMap<string, Content>): Map<string, readonly string[]> {
  const graph = new Map<string, readonly string[]>();
  for (const [name, content] of contents) {
    if (typeof content !== 'object' || content === null) continue;
    const read = readFormula(content.formula, (it) => contents.has(it));
    graph.set(name, 'why' in read ? [] : read.names);
  }
  return graph;
}

/** The loop that a cell is part of or leads to, as names in order, each using the next; undefined when there is none. */
export function loopFrom(
  start: string,
  graph: ReadonlyMap<string, readonly string[]>,
): readonly string[] | undefined {
  const path: string[] = [];
  const seen = new Set<string>();
  const walk = (name: string): readonly string[] | undefined => {
    const at = path.indexOf(name);
    if (at >= 0) return path.slice(at);
    if (seen.has(name)) return undefined;
    seen.add(name);
    path.push(name);
    for (const next of graph.get(name) ?? []) {
      const loop = walk(next);
      if (loop !== undefined) return loop;
    }
    path.pop();
    return undefined;
  };
  return walk(start);
}

/** A loop as one sentence with every name in it. */
export const loopSentence = (loop: readonly string[]): string =>
  loop.length === 1
    ? `${loop[0]} uses itself, so it has no answer.`
    : `These cells form a loop, so none has an answer: ${loop.map((name, i) => `${name} uses ${loop[(i + 1) % loop.length]}`).join(', ')}.`;
