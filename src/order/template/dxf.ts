import { extentOf, type Spot, type TemplatePart } from './part.ts';
import { partWords, placing, STOP_HEIGHT, STOP_ROOM } from './placed.ts';

/** Layers by name, with a colour number each: what is cut, what is drilled, what is only marked, what is read. */
const LAYERS = [
  ['OUTLINES', 7],
  ['HOLES', 1],
  ['MARKS', 3],
  ['WORDS', 5],
] as const;

type Layer = (typeof LAYERS)[number][0];

type Pair = readonly [code: number, value: string | number];

const TEXT_HEIGHT = 4;

const figure = (value: number): string => {
  const text = value.toFixed(6).replace(/0+$/, '').replace(/\.$/, '.0');
  return text === '-0.0' ? '0.0' : text;
};

const lines = (pairs: readonly Pair[]): string =>
  pairs
    .map(
      ([code, value]) =>
        `${String(code).padStart(3)}\r\n${typeof value === 'number' && code < 60 ? figure(value) : value}\r\n`,
    )
    .join('');

/** The old format knows no letters past ASCII but by their number. */
const ascii = (text: string): string =>
  [...text]
    .map((letter) => {
      const code = letter.codePointAt(0) ?? 0;
      return code < 127 ? letter : `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
    })
    .join('');

const section = (name: string, pairs: readonly Pair[]): readonly Pair[] => [
  [0, 'SECTION'],
  [2, name],
  ...pairs,
  [0, 'ENDSEC'],
];

const at = ({ x, y }: Spot): readonly Pair[] => [
  [10, x],
  [20, y],
  [30, 0],
];

const closed = (spots: readonly Spot[], layer: Layer): readonly Pair[] => [
  [0, 'POLYLINE'],
  [8, layer],
  [66, 1],
  ...at({ x: 0, y: 0 }),
  [70, 1],
  ...spots.flatMap((spot): readonly Pair[] => [[0, 'VERTEX'], [8, layer], ...at(spot)]),
  [0, 'SEQEND'],
  [8, layer],
];

const circle = (spot: Spot, diameter: number): readonly Pair[] => [
  [0, 'CIRCLE'],
  [8, 'HOLES'],
  ...at(spot),
  [40, diameter / 2],
];

const line = (from: Spot, to: Spot): readonly Pair[] => [
  [0, 'LINE'],
  [8, 'MARKS'],
  ...at(from),
  [11, to.x],
  [21, to.y],
  [31, 0],
];

const words = (spot: Spot, text: string, height = TEXT_HEIGHT): readonly Pair[] => [
  [0, 'TEXT'],
  [8, 'WORDS'],
  ...at(spot),
  [40, height],
  [1, ascii(text)],
];

/** Variables of the header: release 12, metric, millimetres, and what the drawing covers. */
const header = (width: number, height: number): readonly Pair[] => [
  [9, '$ACADVER'],
  [1, 'AC1009'],
  [9, '$MEASUREMENT'],
  [70, 1],
  [9, '$INSUNITS'],
  [70, 4],
  [9, '$EXTMIN'],
  ...at({ x: 0, y: 0 }),
  [9, '$EXTMAX'],
  ...at({ x: width, y: height }),
];

const tables: readonly Pair[] = [
  [0, 'TABLE'],
  [2, 'LAYER'],
  [70, LAYERS.length],
  ...LAYERS.flatMap(([name, colour]): readonly Pair[] => [
    [0, 'LAYER'],
    [2, name],
    [70, 0],
    [62, colour],
    [6, 'CONTINUOUS'],
  ]),
  [0, 'ENDTAB'],
];

/**
 * Templates as a drawing for a shop that cuts sheet: DXF of release 12 in ASCII, millimetres, closed outlines and
 * circles on layers of their own. `about` heads it as a comment and stands in it as text; `stop`, where the plan cannot be
 * built, stands before it and, large, over everything.
 */
export function dxfOf(parts: readonly TemplatePart[], about: string, stop?: string): string {
  const { placed, width, height: high } = placing(parts);
  const height = stop === undefined ? high : high + STOP_ROOM;
  const comment = stop === undefined ? about : `${stop} ${about}`;
  const entities = placed.flatMap(({ part, dx, dy }): readonly Pair[] => {
    const moved = ({ x, y }: Spot): Spot => ({ x: x + dx, y: y + dy });
    const { x0, y0 } = extentOf(part);
    return [
      ...part.outlines.flatMap((spots) => closed(spots.map(moved), 'OUTLINES')),
      ...part.holes.flatMap((it) => circle(moved(it), it.diameter)),
      ...part.lines.flatMap(([from, to]) => line(moved(from), moved(to))),
      ...part.words.flatMap((it) => words(moved(it), it.text)),
      ...words(moved({ x: x0, y: y0 - 2 * TEXT_HEIGHT }), partWords(part)),
    ];
  });
  return lines([
    [999, ascii(comment.replace(/\s+/g, ' '))],
    ...section('HEADER', header(width, height)),
    ...section('TABLES', tables),
    ...section('ENTITIES', [
      ...(stop === undefined ? [] : words({ x: 30, y: high }, stop, STOP_HEIGHT)),
      ...entities,
      ...words({ x: 30, y: 8 }, about.replace(/\s+/g, ' ')),
    ]),
    [0, 'EOF'],
  ]);
}
