/** A cutting question with its published answer. */
export interface KnownOptimum {
  readonly name: string;
  readonly tube: number;
  readonly pieces: readonly number[];
  readonly tubes: number;
  readonly source: string;
}

const listed = (text: string): number[] => text.trim().split(/\s+/).map(Number);

const repeated = (kinds: readonly (readonly [size: number, count: number])[]): number[] =>
  kinds.flatMap(([size, count]) => Array<number>(count).fill(size));

const falkenauer = (file: string): string =>
  `Falkenauer 1996, A hybrid grouping genetic algorithm for bin packing, J. Heuristics 2; data of OR-Library, ${file}`;

/** Few lengths, many pieces. */
export const fewLengths: readonly KnownOptimum[] = [
  {
    name: '1,313 pieces of four lengths',
    tube: 100,
    pieces: repeated([
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ]),
    tubes: 453,
    source:
      'Chvátal 1983, Linear Programming, chapter 13 (from memory); data in public copies; optimum also by a mixed-integer solver',
  },
  {
    name: '1,458 pieces of four lengths',
    tube: 20,
    pieces: repeated([
      [9, 511],
      [8, 301],
      [7, 263],
      [6, 383],
    ]),
    tubes: 601,
    source:
      'worked example of column generation, data in public copies; optimum also by a mixed-integer solver',
  },
  {
    name: '219 pieces of thirteen lengths',
    tube: 5600,
    pieces: repeated([
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ]),
    tubes: 73,
    source:
      'paper-mill example of encyclopedias, data in public copies; optimum also by a mixed-integer solver',
  },
];

/** Threes that fill each tube without waste. */
export const triplets: KnownOptimum = {
  name: '60 pieces in threes without waste',
  tube: 1000,
  pieces: listed(`
    495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366 366 366 363 361 357 355 351 350 350 347 320 315
    307 303 299 298 298 292 288 287 283 275 275 274 273 273 272 272 271 269 269 268 263 262 261 259 258 255 254 252 252
    252 251`),
  tubes: 20,
  source: falkenauer('t60_00, whose sizes and tube are printed there in tenths'),
};

const uniform = (name: string, tubes: number, text: string): KnownOptimum => ({
  name: `120 pieces of many lengths, ${name}`,
  tube: 150,
  pieces: listed(text),
  tubes,
  source: falkenauer(`binpack1, ${name}`),
});

/** Lengths from 20 to 100, evenly spread. */
export const manyLengths: readonly KnownOptimum[] = [
  uniform(
    'u120_00',
    48,
    `42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 42 28 46 30 64
    29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 58 98 91 96 73 84 37 93 91 43
    73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24
    98 60 42 43 43 39`,
  ),
  uniform(
    'u120_01',
    49,
    `97 57 81 62 75 81 23 43 50 38 60 58 70 88 36 90 37 45 45 39 44 53 70 24 82 81 47 97 35 65 74 68 49 55 52 94 95 29
    99 20 22 25 49 46 98 59 98 60 23 72 33 98 80 95 78 57 67 53 47 53 36 38 92 30 80 32 97 39 80 72 55 41 60 67 53 65
    95 20 66 78 98 47 100 85 53 53 67 27 22 61 43 52 76 64 61 29 30 46 79 66 27 79 98 90 22 75 57 67 36 70 99 48 43 45
    71 100 88 48 27 39`,
  ),
  uniform(
    'u120_02',
    46,
    `38 100 60 42 20 69 24 23 92 32 84 36 65 84 34 68 64 33 69 27 47 21 85 88 59 61 50 53 37 75 64 84 74 57 83 28 31 97
    61 36 46 37 96 80 53 51 68 90 64 81 66 67 80 37 92 67 64 31 94 45 80 28 76 29 64 38 48 40 29 44 81 35 51 48 67 24
    46 38 76 22 30 67 45 41 29 41 79 21 25 90 62 34 73 50 79 66 59 42 90 79 70 66 80 35 62 98 97 37 32 75 91 91 48 26
    23 32 100 46 29 26`,
  ),
  uniform(
    'u120_03',
    49,
    `29 26 83 82 92 95 87 63 57 100 63 65 81 46 42 95 90 80 53 27 84 40 22 97 20 73 63 95 46 42 47 40 26 88 49 24 92 87
    68 95 34 82 84 43 54 73 66 32 62 48 99 90 86 28 25 25 89 67 96 35 33 70 40 59 32 94 34 86 35 45 25 76 80 42 91 44
    91 97 60 29 45 37 61 54 78 56 74 74 45 21 96 37 75 100 58 84 85 56 54 71 52 79 43 35 27 70 31 47 35 26 30 97 90 80
    58 60 73 46 71 39`,
  ),
  uniform(
    'u120_04',
    50,
    `42 98 27 21 71 71 78 76 57 24 91 84 35 25 77 96 97 89 30 86 81 39 75 66 85 36 60 56 50 75 75 37 87 95 21 99 42 57
    31 37 42 40 69 91 45 97 84 90 52 43 68 53 37 65 79 73 92 87 20 20 73 42 52 20 24 76 71 72 21 21 82 92 78 87 50 41
    31 73 89 59 88 40 71 69 45 57 49 68 84 32 69 77 92 98 57 39 32 23 99 91 48 21 70 43 73 69 65 57 67 28 84 42 61 92
    82 34 74 55 60 69`,
  ),
];
