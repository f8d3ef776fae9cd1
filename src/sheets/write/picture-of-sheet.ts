import { faceFiles, MM_PER_POINT } from '../lettering/styles.ts';
import type { Mark } from '../marks/mark.ts';
import type { Outline } from '../marks/outline.ts';
import type { Sheet } from '../page/sheet.ts';
import { figure } from './figures.ts';

/** A mark as SVG has it: path text and lengths in mm. */
export type Shape =
  | {
      readonly kind: 'path';
      readonly d: string;
      readonly fill: 'black' | 'white' | 'none';
      readonly line: number;
      readonly dash?: string;
      readonly clip?: string;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly weight: number;
      readonly stretch: number;
      readonly width: number;
      readonly fill: 'black' | 'white';
      readonly clip?: string;
    };

/** A printed page to look at: what is drawn, and its headings as a list of what is on it. */
export interface SheetPicture {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly headings: readonly string[];
}

const pathOf = (outline: Outline): string =>
  outline.map(([command, ...numbers]) => `${command}${numbers.map(figure).join(' ')}`).join('');

function shapeOf(it: Mark): Shape {
  const clip = it.clip === undefined ? {} : { clip: pathOf(it.clip) };
  if (it.kind === 'outline')
    return {
      kind: 'path',
      d: pathOf(it.outline),
      fill: it.fill ?? 'none',
      line: it.line,
      ...(it.dash === undefined ? {} : { dash: it.dash.map(figure).join(' ') }),
      ...clip,
    };
  const { weight, stretch } = faceFiles[it.style.face];
  const { x, y, text, width, paint } = it;
  return {
    kind: 'text',
    x,
    y,
    text,
    size: it.style.size * MM_PER_POINT,
    weight,
    stretch,
    width,
    fill: paint,
    ...clip,
  };
}

export const pictureOfSheet = ({ paper, marks }: Sheet): SheetPicture => ({
  width: paper.width,
  height: paper.height,
  shapes: marks.filter((it) => it.kind === 'outline' || it.text !== '').map(shapeOf),
  headings: marks.flatMap((it) => (it.kind === 'text' && it.style.face === 'title' ? [it.text] : [])),
});
