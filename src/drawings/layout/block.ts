import type { Figure } from '../figure.ts';
import type { LimitState } from '../limits.ts';
import type { Lettering, TextStyle } from './lettering.ts';
import type { Primitive, TextRole } from './primitive.ts';
import { type Rect, round } from './px.ts';
import { textWidth } from './text-width.ts';

export interface Run {
  readonly text: string;
  readonly style: TextStyle;
  readonly role: TextRole;
}

export interface Line {
  readonly runs: readonly Run[];
  /** A past figure stands on a plate, a near one in a frame; `ground` only keeps what is under it away. */
  readonly box?: 'plate' | 'frame' | 'ground';
}

/** Lines of lettering that stay together. */
export interface Block {
  readonly lines: readonly Line[];
  readonly width: number;
  readonly height: number;
}

export type Letterings = Readonly<Record<TextStyle, Lettering>>;

/** Between two figures of a line, px, and inside a plate or frame at each side. */
const SPACE = 6;
const INSET = 5;

const runWidth = (run: Run, letterings: Letterings): number => textWidth(run.text, letterings[run.style]);

export function lineWidth(line: Line, letterings: Letterings): number {
  const runs = line.runs.reduce((sum, run) => sum + runWidth(run, letterings), 0);
  return runs + SPACE * (line.runs.length - 1) + (line.box === undefined ? 0 : 2 * INSET);
}

const lineHeight = (line: Line, letterings: Letterings): number =>
  Math.max(...line.runs.map((run) => letterings[run.style].line)) + (line.box === undefined ? 0 : 3);

export function block(lines: readonly Line[], letterings: Letterings): Block {
  return {
    lines,
    width: Math.max(0, ...lines.map((line) => lineWidth(line, letterings))),
    height: lines.reduce((sum, line) => sum + lineHeight(line, letterings), 0),
  };
}

/** What a figure's line looks like in a state. */
export function figureLine(
  figure: readonly string[],
  state: LimitState | null,
  style: TextStyle,
  role: TextRole = 'text',
): Line {
  const box = state === 'outside' ? 'plate' : state === 'near' ? 'frame' : undefined;
  const runs = figure.map((text, i): Run => {
    if (box === 'plate') return { text, style, role: 'text-plate' };
    if (i === 0) return { text, style, role };
    return { text, style: style === 'lead' ? 'dimension' : style, role: 'text-soft' };
  });
  return box === undefined ? { runs } : { runs, box };
}

export type Density = 'wide' | 'stacked' | 'bare';

const said = (text: string): Line => ({ runs: [{ text, style: 'tick', role: 'text-soft' }] });

/** Caption over figure, as wide as there is room for. */
export function captioned(
  caption: string,
  figure: Figure,
  behind: Figure | undefined,
  state: LimitState | null,
  density: Density,
  letterings: Letterings,
  role: TextRole = 'text',
): Block {
  const { first, second } = figure;
  const both = second === undefined ? [first] : [first, second];
  const lines: Line[] = density === 'bare' ? [] : [said(caption)];
  if (density === 'wide') lines.push(figureLine(both, state, 'dimension', role));
  else {
    lines.push(figureLine([first], state, 'dimension', role));
    if (second !== undefined) lines.push(said(second));
  }
  if (behind !== undefined) lines.push(said(`behind ${behind.first}`));
  return block(lines, letterings);
}

export type Align = 'left' | 'centre';

/** The block's lettering with its top left corner at (x, y). */
export function drawBlock(
  it: Block,
  x: number,
  y: number,
  align: Align,
  letterings: Letterings,
): Primitive[] {
  const drawn: Primitive[] = [];
  let top = y;
  for (const line of it.lines) {
    const height = lineHeight(line, letterings);
    const width = lineWidth(line, letterings);
    let left = align === 'left' ? x : x + (it.width - width) / 2;
    if (line.box !== undefined) {
      drawn.push({
        kind: 'rect',
        role: line.box,
        x: round(left),
        y: round(top + 0.5),
        width: round(width),
        height: height - 1,
      });
      left += INSET;
    }
    for (const run of line.runs) {
      const { size } = letterings[run.style];
      const width = runWidth(run, letterings);
      drawn.push({
        kind: 'text',
        role: run.role,
        style: run.style,
        x: round(left),
        y: round(top + height / 2 + size * 0.36),
        text: run.text,
        width: round(width),
      });
      left += width + SPACE;
    }
    top += height;
  }
  return drawn;
}

export const blockRect = (it: Block, x: number, y: number): Rect => ({
  x,
  y,
  width: it.width,
  height: it.height,
});
