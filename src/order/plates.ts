import { type Ask, numbersOf } from './ask.ts';
import { flangeOf } from './bolt-pattern.ts';
import { type Place, placeWords } from './feet.ts';
import { missingSentence } from './missing.ts';

/** Backing plates of one place, mm, seen from inside. */
export interface PlateOrder {
  readonly name: string;
  readonly count: number;
  readonly width: number;
  readonly height: number;
  readonly thickness: number;
  /** Bolts through each. */
  readonly bolts: number;
  /** Whether a plate reaches over both columns, and over all rows. */
  readonly wide: boolean;
  readonly tall: boolean;
}

/**
 * The plates behind one place: a square under each bolt, of the area entered; where two squares side by side would overlap, one
 * plate takes the place of both.
 */
export function plateOrder(ask: Ask, place: Place): PlateOrder | string {
  const what = `the backing plates of the ${placeWords[place].toLowerCase()}`;
  const it = numbersOf(
    ask,
    ...(['plate_area', 'plate_thickness'] as const),
    place === 'lower' ? 'lower_bolt_spacing' : 'foot_bolt_spacing',
  );
  const flange = flangeOf(ask, place);
  if ('missing' in it) return missingSentence(what, it.missing);
  if ('missing' in flange) return missingSentence(what, flange.missing);
  const [area, thickness, spacing] = it.got;
  const side = Math.ceil(Math.sqrt(area));
  const step = flange.rows > 1 ? flange.height / flange.rows : Number.POSITIVE_INFINITY;
  const [wide, tall] = [spacing < side, step < side];
  return {
    name: placeWords[place],
    count: (wide ? 1 : 2) * (tall ? 1 : flange.rows),
    width: wide ? Math.ceil(spacing) + side : side,
    height: tall ? Math.ceil(step * (flange.rows - 1)) + side : side,
    thickness,
    bolts: (wide ? 2 : 1) * (tall ? flange.rows : 1),
    wide,
    tall,
  };
}
