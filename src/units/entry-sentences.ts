import type { Dimension, Unit } from './unit-table.ts';

const NOUNS: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  angle: 'an angle',
  speed: 'a speed',
  force: 'a force',
  moment: 'a moment',
  stress: 'a stress',
  mass: 'a mass',
  density: 'a density',
  area: 'an area',
  share: 'a plain number',
};

const EXAMPLES: Readonly<Record<Dimension, string>> = {
  length: '60 mm, 6 cm or 2 3/8 in',
  angle: '12 or 12 deg',
  speed: '7 kn or 3.6 m/s',
  force: '850 N or 0.85 kN',
  moment: '90 N·m',
  stress: '205 MPa or 30000 psi',
  mass: '30 kg or 66 lb',
  density: '1025 kg/m³',
  area: '150 cm² or 15000 mm²',
  share: '0.95 or 95 %',
};

/** "a length", "a speed": what an input of this unit takes. */
export const nounOf = (unit: Unit | undefined): string =>
  unit === undefined ? 'a number' : NOUNS[unit.dimension];

/** Examples of what may be typed for an input of this unit; `symbol` serves a unit the table does not know. */
export const examplesOf = (unit: Unit | undefined, symbol: string): string =>
  unit === undefined
    ? `a number without its unit, in ${symbol}`
    : `${NOUNS[unit.dimension]} such as ${EXAMPLES[unit.dimension]}`;

/** "kn is a unit of speed": why a unit does not belong to an input. */
export const foreignUnit = (unit: Unit): string =>
  unit.dimension === 'share'
    ? `${unit.symbol} has no place in it`
    : `${unit.symbol} is a unit of ${unit.dimension}`;

/** "solid, cored, wood or metal". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words[words.length - 1]}`;
