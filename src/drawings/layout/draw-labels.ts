import type { Label } from '../scene.ts';
import { type Block, block } from './block.ts';
import type { Board } from './board.ts';
import { LINES, TEXT } from './occupancy.ts';
import { pathThrough } from './path.ts';
import { grown, place, type Rect, round, type Transform } from './px.ts';

const lettered = (it: Label, board: Board): Block =>
  block(
    it.lines.map((text) => ({
      runs: [
        {
          text,
          style: 'tick' as const,
          role: it.role === 'reason' ? ('text' as const) : ('text-soft' as const),
        },
      ],
    })),
    board.letterings,
  );

/** A name inside its part, at the first height where nothing is in the way; left out when there is none. */
function drawInside(board: Board, it: Label, t: Transform): void {
  if (it.inside === undefined) return;
  const low = place(t, { x: it.inside.x0, y: it.inside.y0 });
  const high = place(t, { x: it.inside.x1, y: it.inside.y1 });
  const label = lettered(it, board);
  const [width, height] = [high.x - low.x, low.y - high.y];
  if (label.width + 8 > width || label.height + 8 > height) return;
  for (const down of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8]) {
    for (const across of [0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2, 0.9, 0.1]) {
      const rect: Rect = {
        x: low.x + (width - label.width) * across,
        y: high.y + (height - label.height) * down,
        width: label.width,
        height: label.height,
      };
      if (!board.clearOfLines(grown(rect, 2.5))) continue;
      board.letter(`name ${it.lines.join(' ')}`, label, rect.x, rect.y, 'centre');
      return;
    }
  }
}

const FURTHEST = 260;

/** A reason or a point's name beside what it speaks of, with a leader. */
function drawBeside(board: Board, it: Label, t: Transform): void {
  const at = place(t, it.at);
  const label = lettered(it, board);
  const spot = board.nearest(label, at, FURTHEST);
  if (spot === null) {
    board.dropped.push(it.lines.join(' '));
    return;
  }
  const rect = board.letter(`reason ${it.lines.join(' ')}`, label, spot.x, spot.y);
  const end = {
    x: Math.min(Math.max(at.x, rect.x - 3), rect.x + rect.width + 3),
    y: Math.min(Math.max(at.y, rect.y), rect.y + rect.height),
  };
  board.rule('leader', pathThrough([at, end], false), { a: at, b: end });
}

const PEG = 9;

/** A numbered point: the number in a ring at its place. */
function drawNumber(board: Board, it: Label, t: Transform): void {
  const at = place(t, it.at);
  const [text] = it.lines;
  if (text === undefined) return;
  const label = block([{ runs: [{ text, style: 'dimension', role: 'text' }] }], board.letterings);
  const rect = { x: at.x - PEG, y: at.y - PEG, width: 2 * PEG, height: 2 * PEG };
  const more = {
    ...(it.part === undefined ? {} : { part: it.part }),
    ...(it.lit === true ? { lit: true as const } : {}),
  };
  board.drawn.push({ kind: 'circle', role: 'number', cx: round(at.x), cy: round(at.y), r: PEG, ...more });
  board.letter(`number ${text}`, label, at.x - label.width / 2, at.y - label.height / 2);
  board.taken.markRect(rect, LINES | TEXT);
}

/** A name straight beside its part, without a leader; left out when something is in the way. */
function drawNameBeside(board: Board, it: Label, t: Transform): void {
  const at = place(t, it.at);
  const label = lettered(it, board);
  const rect = { x: at.x + 10, y: at.y - label.height / 2, width: label.width, height: label.height };
  if (board.clearOfLines(grown(rect, 2))) board.letter(`name ${it.lines.join(' ')}`, label, rect.x, rect.y);
}

/** A figure that stands by itself, on a ground of its own. */
function drawFigure(board: Board, it: Label, t: Transform): void {
  const at = place(t, it.at);
  const text = it.lines.join(' ');
  const label = block([{ runs: [{ text, style: 'lead', role: 'text' }], box: 'ground' }], board.letterings);
  board.letter(`figure ${text}`, label, at.x - label.width / 2, at.y - label.height / 2);
}

export function drawLabel(board: Board, it: Label, t: Transform): void {
  if (it.role === 'number') drawNumber(board, it, t);
  else if (it.role === 'figure') drawFigure(board, it, t);
  else if (it.inside !== undefined) drawInside(board, it, t);
  else if (it.role === 'name') drawNameBeside(board, it, t);
  else drawBeside(board, it, t);
}
