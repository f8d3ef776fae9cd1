import type { Angle } from '../scene.ts';
import { arcPath, onCircle } from './arc-path.ts';
import { block, figureLine } from './block.ts';
import type { Board } from './board.ts';
import { line } from './path.ts';
import { type Px, place, type Transform } from './px.ts';

const HALF = 4.5;

/** Legs of the angle run this much past its arc, px. */
const PAST = 6;

/** An angle: its arc with oblique strokes, thin legs, and the figure outside the arc where there is room. */
export function drawAngle(board: Board, it: Angle, t: Transform): void {
  const at = place(t, it.at);
  const r = Math.max(26, it.radius * t.scale);
  const [a, b] = [onCircle(at, r, it.from), onCircle(at, r, it.to)];
  const stroke = (p: Px): string => line({ x: p.x - HALF, y: p.y + HALF }, { x: p.x + HALF, y: p.y - HALF });
  const label = block(
    [figureLine([it.figure.first], it.state, it.lead === true ? 'lead' : 'dimension')],
    board.letterings,
  );
  board.rule(
    'extension',
    line(at, onCircle(at, r + PAST, it.from)) + line(at, onCircle(at, r + PAST, it.to)),
  );
  board.rule('dimension', arcPath(at, r, it.from, it.to, false), { a, b });
  board.rule('stroke', stroke(a) + stroke(b));
  const middle = (it.from + it.to) / 2;
  for (const [distance, turn] of [
    [4, 0],
    [10, 0],
    [4, 12],
    [4, -12],
    [18, 0],
    [18, 25],
    [18, -25],
    [34, 0],
    [34, 40],
    [34, -40],
  ] as const) {
    const half = Math.max(label.width, label.height) / 2;
    const p = onCircle(at, r + distance + half, middle + turn);
    const rect = {
      x: p.x - label.width / 2,
      y: p.y - label.height / 2,
      width: label.width,
      height: label.height,
    };
    if (!board.clearOfLines(rect)) continue;
    board.letter(it.name, label, rect.x, rect.y);
    return;
  }
  const spot = board.nearest(label, onCircle(at, r, middle), 150);
  if (spot === null) board.dropped.push(it.name);
  else board.letter(it.name, label, spot.x, spot.y);
}
