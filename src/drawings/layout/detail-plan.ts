import type { Point } from '../point.ts';
import type { Dimension } from '../scene.ts';
import { type Block, block, figureLine, type Line, lineWidth, type Run } from './block.ts';
import type { Board } from './board.ts';
import { detailRatios } from './detail-ratios.ts';

/** A clearance drawn smaller than this is drawn again, enlarged until it is at least that large, px. */
export const TOO_SMALL = 24;
export const LARGE_ENOUGH = 48;

/** An enlarged view before it has a place: what it shows, how large, with what lettering. */
export interface Planned {
  readonly dimension: Dimension;
  readonly from: Point;
  readonly to: Point;
  readonly flat: boolean;
  readonly main: Block;
  readonly rest: Block | null;
  readonly caption: Block;
  readonly scale: number;
  readonly ratio: string;
  readonly r: number;
  readonly gap: number;
  /** How far left of the circle's middle the measured line stands, px. */
  readonly shift: number;
}

/** Chooses the scale and size of a detail; null for what is never enlarged. */
export function planDetail(
  dimension: Dimension,
  board: Board,
  pxPerMm: number,
  least: number,
): Planned | null {
  const { close, figure, state } = dimension;
  if (close === undefined) return null;
  const { from, to } = close;
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  const flat = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  const one = (texts: readonly string[], soft: boolean): Block =>
    block(
      [soft ? figureLine(texts, null, 'tick', 'text-soft') : figureLine(texts, state, 'dimension')],
      board.letterings,
    );
  const main = one([figure.first], false);
  const rest = figure.second === undefined ? null : one([figure.second], true);
  const wide = Math.max(main.width, rest?.width ?? 0);
  const wanted = flat && dimension.off === undefined ? Math.max(LARGE_ENOUGH, wide + 4) : LARGE_ENOUGH;
  // A gap of nothing has no scale at which it shows; real size then shows that the parts touch.
  const found =
    size * pxPerMm * 100 < LARGE_ENOUGH
      ? ([1, '1:1'] as const)
      : (detailRatios.find(([ratio]) => size * ratio * pxPerMm >= wanted) ?? detailRatios.at(-1));
  if (found === undefined) return null;
  const scale = found[0] * pxPerMm;
  const gap = size * scale;
  const r = Math.max(least, gap / 2 + 12, flat ? wide / 2 + 8 : (wide + 12) / 1.5);
  // A figure to the right of an upright line needs more of the circle than what lies to the left of it.
  const shift = flat ? 0 : Math.min(r * 0.6, Math.max(0, wide + 12 - r * 0.93));
  const said = (text: string, role: 'text' | 'text-soft'): Run => ({ text, style: 'tick', role });
  const named = [said(dimension.caption, 'text-soft')];
  const scaled = [said(found[1], 'text')];
  const row: Line = { runs: [...named, ...scaled] };
  const lines: Line[] =
    lineWidth(row, board.letterings) > 2 * r + 4 ? [{ runs: named }, { runs: scaled }] : [row];
  if (dimension.behind !== undefined)
    lines.push({ runs: [said(`behind ${dimension.behind.first}`, 'text-soft')] });
  return {
    dimension,
    from,
    to,
    flat,
    main,
    rest,
    caption: block(lines, board.letterings),
    scale,
    ratio: found[1],
    r,
    gap,
    shift,
  };
}
