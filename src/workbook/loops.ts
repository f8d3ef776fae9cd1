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

/** Loops found before, by the cells that are part of one or lead to it. */
const found = new WeakMap<ReadonlyMap<string, readonly string[]>, Map<string, readonly string[]>>();

/** The loop that a cell is part of or leads to, as names in order, each using the next; undefined when there is none. */
export function loopFrom(
  start: string,
  graph: ReadonlyMap<string, readonly string[]>,
): readonly string[] | undefined {
  const known = found.get(graph) ?? new Map<string, readonly string[]>();
  found.set(graph, known);
  if (known.has(start)) return known.get(start);
  const seen = new Set([start]);
  // The way here, with a stack of its own: a long chain of cells must not overflow the machine's.
  const path = [start];
  const uses = [graph.get(start)?.values()];
  while (path.length > 0) {
    const next = uses.at(-1)?.next().value;
    if (next === undefined) {
      path.pop();
      uses.pop();
      continue;
    }
    const at = seen.has(next) ? path.indexOf(next) : -1;
    const loop = at < 0 ? known.get(next) : path.slice(at);
    if (loop !== undefined) {
      for (const name of path) known.set(name, loop);
      return loop;
    }
    if (seen.has(next)) continue;
    seen.add(next);
    path.push(next);
    uses.push(graph.get(next)?.values());
  }
  return undefined;
}

/** Cells of a loop that a sentence names. */
const MOST_NAMED = 8;

/** A loop as one sentence with its cells in it, or the first of many. */
export function loopSentence(loop: readonly string[]): string {
  if (loop.length === 1) return `${loop[0]} uses itself, so it has no answer.`;
  const links = loop.map((name, i) => `${name} uses ${loop[(i + 1) % loop.length]}`);
  const told = links.slice(0, MOST_NAMED).join(', ');
  const more = links.length > MOST_NAMED ? `, and ${links.length - MOST_NAMED} more` : '';
  return `These cells form a loop, so none has an answer: ${told}${more}.`;
}
