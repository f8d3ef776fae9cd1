import { edgesInRows, levelLinesInRows } from '../../studies/map/edges.ts';
import type { Mapped } from '../../studies/map/map.ts';
import { ALLOWED, type Raster, REFUSED, rasterInRows } from '../../studies/map/raster.ts';
import { type Cell, cellsOf } from './cells.ts';
import { hatched, type Ink } from './hatch.ts';
import { figureOn, type LineFigure } from './line-figures.ts';
import type { MapBox } from './map-box.ts';
import { meet, type RegionLetter, regionLetters, type Taken } from './region-letters.ts';

/** What a picture is painted with. */
export interface Paint {
  readonly film: string;
  readonly ink: string;
  readonly soft: string;
  /** Added to every line, px. */
  readonly more: number;
  readonly family: string;
  /** Size of the lettering, px. */
  readonly letter: number;
}

export interface Level {
  readonly value: number;
  readonly text: string;
}

/** The lines along which a result has one value. */
interface LevelLines {
  readonly text: string;
  readonly lines: readonly (readonly Px[])[];
}

/** All that stands on the ground, worked out once for a map and a size. */
export interface Ground {
  readonly raster: Raster;
  readonly scale: number;
  readonly edges: readonly (readonly Px[])[];
  readonly lines: readonly LevelLines[];
  /** In place of lines where both sides go by whole numbers. */
  readonly cells: readonly Cell[];
}

interface Px {
  readonly x: number;
  readonly y: number;
}

/** Works out the ground and the lines of a map for a box, in pieces; `scale` picture elements make one px. */
export function* groundOf(
  mapped: Mapped,
  box: MapBox,
  levels: readonly Level[],
  scale: number,
): Generator<void, Ground, void> {
  const cells = cellsOf(mapped, box);
  const place = (line: readonly Px[]): readonly Px[] =>
    line.map(({ x, y }) => ({ x: box.x(x), y: box.y(y) }));
  const raster = yield* rasterInRows(
    mapped,
    Math.round((box.right - box.left) * scale),
    Math.round((box.bottom - box.top) * scale),
  );
  const edges = (yield* edgesInRows(mapped)).map(place);
  const lines: LevelLines[] = [];
  // Between two whole numbers no line runs.
  for (const { value, text } of cells.length > 0 ? [] : levels) {
    lines.push({ text, lines: (yield* levelLinesInRows(mapped, 0, value)).map(place) });
  }
  return { raster, scale, edges, lines, cells };
}

/** The hatching as a picture of its own, which is laid under everything else. */
export function* hatchPicture(
  { raster, scale }: Ground,
  ink: Ink,
  more: number,
): Generator<void, HTMLCanvasElement, void> {
  const picture = document.createElement('canvas');
  picture.width = raster.width;
  picture.height = raster.height;
  const image = new ImageData(yield* hatched(raster, ink, scale, more), raster.width, raster.height);
  picture.getContext('2d')?.putImageData(image, 0, 0);
  return picture;
}

function stroke(pen: CanvasRenderingContext2D, line: readonly Px[]): void {
  pen.beginPath();
  line.forEach(({ x, y }, i) => {
    if (i === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
  pen.stroke();
}

/** Letters with a rim of ground, so that they stand apart from hatching and lines. */
function letter(pen: CanvasRenderingContext2D, text: string, x: number, y: number, paint: Paint): void {
  pen.strokeStyle = paint.film;
  pen.lineWidth = 5;
  pen.strokeText(text, x, y);
  pen.fillStyle = paint.ink;
  pen.fillText(text, x, y);
}

function setFont(pen: CanvasRenderingContext2D, paint: Paint, weight: number): void {
  pen.font = `${weight} ${paint.letter}px ${paint.family}`;
  pen.fontStretch = 'semi-condensed';
}

interface Painted {
  readonly names: readonly RegionLetter[];
  /** Regions too small for their name. */
  readonly nameless: readonly number[];
}

/** What stands on the ground, in words. */
export interface GroundWords {
  /** What a region is called, in one line or two. */
  readonly nameOf: (ground: number) => string;
  /** A result's figure in a cell. */
  readonly figureOf: (value: number) => string;
}

/** Paints a map's ground, contours or cells, and lettering. */
export function paintGround(
  pen: CanvasRenderingContext2D,
  ground: Ground,
  hatching: CanvasImageSource,
  box: MapBox,
  { nameOf, figureOf }: GroundWords,
  marks: readonly Taken[],
  paint: Paint,
): Painted {
  pen.drawImage(hatching, box.left, box.top, box.right - box.left, box.bottom - box.top);
  pen.lineJoin = 'round';
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';

  setFont(pen, paint, 600);
  const line = paint.letter * 1.2;
  const broken = (text: string): readonly string[] => wrapped(text, (it) => pen.measureText(it).width);
  const inPlot = marks.map((it) => ({ ...it, x: it.x - box.left, y: it.y - box.top }));
  const names = regionLetters(
    ground.raster,
    ground.scale,
    (it) => {
      const lines = broken(nameOf(it));
      const width = Math.max(...lines.map((text) => pen.measureText(text).width));
      return { width, height: lines.length * line };
    },
    inPlot,
  ).map((it) => ({ ...it, x: it.x + box.left, y: it.y + box.top }));
  const present = new Set(ground.raster.ground);
  const nameless = [...present].filter((it) => it !== ALLOWED && !names.some((name) => name.ground === it));

  pen.save();
  pen.beginPath();
  pen.rect(box.left, box.top, box.right - box.left, box.bottom - box.top);
  pen.clip();
  pen.strokeStyle = paint.ink;
  pen.lineWidth = 1 + paint.more;
  pen.strokeStyle = paint.soft;
  for (const it of ground.cells) pen.strokeRect(it.left, it.top, it.width, it.height);
  pen.strokeStyle = paint.ink;
  for (const { lines } of ground.lines) for (const it of lines) stroke(pen, it);
  pen.lineWidth = 2.5 + paint.more;
  for (const edge of ground.edges) stroke(pen, edge);
  pen.restore();

  setFont(pen, paint, 500);
  for (const { text, x, y, angle } of figures(pen, ground, box, [...marks, ...names], paint)) {
    pen.save();
    pen.translate(x, y);
    pen.rotate(angle);
    letter(pen, text, 0, 0.5, paint);
    pen.restore();
  }
  for (const { text, x, y } of cellFigures(pen, ground, figureOf, [...marks, ...names], paint))
    letter(pen, text, x, y, paint);
  setFont(pen, paint, 600);
  for (const it of names) {
    const lines = broken(nameOf(it.ground));
    lines.forEach((text, n) => {
      letter(pen, text, it.x, it.y + (n - (lines.length - 1) / 2) * line, paint);
    });
  }
  return { names, nameless };
}

/** Longest name in one line, px. */
const LONGEST = 110;

function wrapped(text: string, widthOf: (text: string) => number): readonly string[] {
  const words = text.split(' ');
  if (widthOf(text) <= LONGEST || words.length === 1) return [text];
  const halves = words
    .slice(1)
    .map((_, i) => [words.slice(0, i + 1).join(' '), words.slice(i + 1).join(' ')] as const);
  const width = (pair: readonly [string, string]): number => Math.max(widthOf(pair[0]), widthOf(pair[1]));
  return halves.reduce((best, it) => (width(it) < width(best) ? it : best));
}

/** Lines of one level that get a figure, the longest first. */
const MOST_PER_LEVEL = 2;

function figures(
  pen: CanvasRenderingContext2D,
  { lines }: Ground,
  box: MapBox,
  taken: readonly Taken[],
  paint: Paint,
): LineFigure[] {
  const found: LineFigure[] = [];
  const inside = ({ x, y, width, height }: Taken): boolean =>
    x - width / 2 > box.left + 2 &&
    x + width / 2 < box.right - 2 &&
    y - height / 2 > box.top + 2 &&
    y + height / 2 < box.bottom - 2;
  for (const { text, lines: all } of lines) {
    const size = { width: pen.measureText(text).width, height: paint.letter };
    const longest = [...all].sort((a, b) => b.length - a.length).slice(0, MOST_PER_LEVEL);
    for (const line of longest) {
      const figure = figureOn(line, text, size, inside, [...taken, ...found]);
      if (figure !== undefined) found.push(figure);
    }
  }
  return found;
}

/** Where a figure may stand in its cell, from the top: the middle, unless something else stands there. */
const HEIGHTS = [0.5, 0.8, 0.2];

/** Figures in the cells that have room for them. */
function cellFigures(
  pen: CanvasRenderingContext2D,
  { cells }: Ground,
  figureOf: (value: number) => string,
  taken: readonly Taken[],
  paint: Paint,
): readonly { readonly text: string; readonly x: number; readonly y: number }[] {
  return cells.flatMap(({ left, top, width, height, value }) => {
    if (Number.isNaN(value)) return [];
    const text = figureOf(value);
    const size = { width: pen.measureText(text).width, height: paint.letter };
    if (size.width + 8 > width || size.height + 6 > height) return [];
    const places = HEIGHTS.map((it) => ({ text, x: left + width / 2, y: top + it * height, ...size }));
    return places.filter((it) => !taken.some((other) => meet(it, other))).slice(0, 1);
  });
}

export const isRefused = (ground: number): boolean => ground === REFUSED;
