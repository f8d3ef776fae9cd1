import { letteringFor } from '../../drawings/layout/lettering.ts';
import type { Clip, Primitive } from '../../drawings/layout/primitive.ts';
import { penFor } from '../../drawings/svg/pens.ts';
import type { Token } from '../../drawings/svg/tokens.ts';
import type { Face } from '../lettering/styles.ts';
import { MM_PER_POINT } from '../lettering/styles.ts';
import type { Paint } from '../marks/mark.ts';
import { circle, type Outline, rectangle } from '../marks/outline.ts';
import { moved, outlineOfPath } from '../marks/outline-of-path.ts';
import type { Sheet } from './sheet.ts';

/** Where px of a placed drawing come to lie on the sheet. */
export interface Setting {
  /** mm of the drawing's top left corner. */
  readonly x: number;
  readonly y: number;
  /** mm for a px. */
  readonly scale: number;
  /** Line widths are scaled with the drawing, as in a mark; else they are the paper's own, whatever the scale. */
  readonly linesToo?: true;
}

export const MM_PER_PX = 25.4 / 96;

const paintOf = (token: Token): Paint =>
  token === 'ink' || token === 'soft' || token === 'edge' || token === 'mark' ? 'black' : 'white';

type Shaped = Exclude<Primitive, { kind: 'text' }>;

const outlineOf = (it: Shaped | Clip): Outline =>
  it.kind === 'path'
    ? outlineOfPath(it.d)
    : it.kind === 'circle'
      ? circle(it.cx, it.cy, it.r)
      : rectangle(it.x, it.y, it.width, it.height);

const faceOf = (weight: number, stretch: number): Face =>
  stretch < 95 ? (weight < 450 ? 'narrow' : 'figure') : weight < 500 ? 'text' : 'strong';

/** Puts primitives of a drawing on the sheet, black and white, as vectors. */
export function putPrimitives(
  sheet: Sheet,
  primitives: readonly Primitive[],
  clips: readonly Clip[],
  { x, y, scale, linesToo }: Setting,
): void {
  const set = (outline: Outline): Outline => moved(outline, scale, x, y);
  const clipped = new Map(clips.map((clip) => [clip.name, set(outlineOf(clip))]));
  const letterings = letteringFor('paper');
  for (const it of primitives) {
    const clip = it.clip === undefined ? undefined : clipped.get(it.clip);
    if (it.kind === 'text') {
      const { size, weight, stretch } = letterings[it.style];
      sheet.put({
        kind: 'text',
        x: x + it.x * scale,
        y: y + it.y * scale,
        text: it.text,
        style: { face: faceOf(weight, stretch), size: (size * scale) / MM_PER_POINT },
        width: it.width * scale,
        paint: it.role === 'text-plate' ? 'white' : 'black',
        ...(clip === undefined ? {} : { clip }),
      });
      continue;
    }
    const { stroke, fill, width, dash } = penFor(it.role, linesToo ? 'screen' : 'paper');
    const unit = linesToo ? scale : MM_PER_PX;
    sheet.outline(
      set(outlineOf(it)),
      {
        line: stroke === null ? 0 : width * unit,
        ...(dash === undefined ? {} : { dash: dash.split(' ').map((part) => Number(part) * unit) }),
        ...(fill === null ? {} : { fill: paintOf(fill) }),
      },
      clip,
    );
  }
}
