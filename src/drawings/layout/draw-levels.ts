import type { Board } from './board.ts';
import { type PlacedLevelItem, POINTER } from './columns.ts';
import { LINES, TEXT } from './occupancy.ts';
import { line, pathThrough } from './path.ts';
import type { Transform } from './px.ts';

const ARROW = 6;

/** A level whose label stands at its very height, so that a line can run on from it. */
export interface StraightLevel {
  readonly y: number;
  readonly from: number;
  readonly tags: { readonly part?: string; readonly lit?: true };
}

/** Heights lettered beside the rule, each with a pointer at its graduation. */
export function drawLevels(
  board: Board,
  items: readonly PlacedLevelItem[],
  t: Transform,
  ruleWidth: number,
): StraightLevel[] {
  const straight: StraightLevel[] = [];
  for (const { level, block, labelY } of items) {
    const more = level.lit === undefined ? {} : { lit: true as const };
    const part = level.part === undefined ? {} : { part: level.part };
    const pointer = (height: number, role: 'pointer' | 'pointer-behind'): number => {
      const y = t.y - height * t.scale;
      const tip = { x: ruleWidth - 1, y };
      const d = pathThrough(
        [tip, { x: tip.x + ARROW, y: y - ARROW / 2 }, { x: tip.x + ARROW, y: y + ARROW / 2 }],
        true,
      );
      board.drawn.push({ kind: 'path', role, d, ...part, ...more });
      return y;
    };
    if (level.behind !== undefined) pointer(level.behind.height, 'pointer-behind');
    const y = pointer(level.height, 'pointer');
    if (labelY === null) {
      board.dropped.push(level.name);
      continue;
    }
    const x = ruleWidth + POINTER;
    const start = { x: ruleWidth + ARROW - 1, y };
    board.drawn.push({
      kind: 'path',
      role: 'level',
      d: line(start, { x: x - 2, y: labelY }),
      ...part,
      ...more,
    });
    const rect = board.letterIfFree(level.name, block, x, labelY - block.height / 2);
    if (rect === null) continue;
    if (Math.abs(labelY - y) <= 1)
      straight.push({ y, from: rect.x + rect.width + 4, tags: { ...part, ...more } });
  }
  return straight;
}

/** The level runs on to the first thing drawn at its height, so that the eye finds the part it belongs to. */
export function drawLevelLines(board: Board, levels: readonly StraightLevel[]): void {
  for (const { y, from, tags } of levels) {
    let end = from;
    while (end < board.width && board.taken.free({ x: end, y: y - 1, width: 4, height: 2 }, LINES | TEXT))
      end += 4;
    if (end - from <= 8 || end >= board.width - 8) continue;
    const [a, b] = [
      { x: from, y },
      { x: end - 2, y },
    ];
    board.drawn.push({ kind: 'path', role: 'level', d: line(a, b), ...tags });
    board.lines.push({ a, b });
    board.taken.markLine(a, b, LINES);
  }
}
