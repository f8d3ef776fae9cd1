import type { Units } from '../plan/plan.ts';
import { type Ask, numberOf, numbersOf } from './ask.ts';
import { type FootSide, placeWords } from './feet.ts';
import { missingSentence } from './missing.ts';
import { depth, length } from './words.ts';

/** The sheets under the lower flange, mm and mm². */
export interface ShimOrder {
  readonly count: number;
  readonly thick: number;
  readonly width: number;
  readonly height: number;
  readonly spacing: number;
  readonly stack: number;
  /** Sheet for all of them with the saw's cuts. */
  readonly sheet: number;
  /** How deep the one next to the hull is hollowed; 0 where it is not. */
  readonly hollow: number;
}

export function shimOrder(ask: Ask): ShimOrder | string {
  const it = numbersOf(
    ask,
    ...(['shim_count', 'shim_thickness', 'lower_flange_width', 'lower_flange_height'] as const),
    ...(['lower_bolt_spacing', 'shim_stack', 'shim_sheet_area', 'lower_pad_hollow'] as const),
  );
  if ('missing' in it) return missingSentence('the shims', it.missing);
  const [count, thick, width, height, spacing, stack, sheet, hollow] = it.got;
  const hollowed = ask('lower_pad_needed') === true ? hollow : 0;
  return { count, thick, width, height, spacing, stack, sheet, hollow: hollowed };
}

/** What is done to the sheet that lies on a curved face; empty where it lies flat. */
export const hollowWords = (hollow: number, units: Units): string =>
  hollow === 0
    ? ''
    : `Hollow the sheet next to the hull by ${depth(hollow, units)} across its width, so that it sits on the curved face.`;

/** The wedge under a flange that does not follow the transom. */
export interface WedgeOrder {
  /** Its edges, measured level, mm. */
  readonly thin: number;
  readonly thick: number;
  readonly angle: number;
  readonly isThinAbove: boolean;
}

/** Undefined where the flange is hinged and needs none. */
export function wedgeOrder(ask: Ask): WedgeOrder | string | undefined {
  if (ask('lower_flange_hinged') === true) return undefined;
  const it = numbersOf(
    ask,
    ...(['wedge_edge', 'wedge_thick_edge', 'wedge_angle', 'transom_slope', 'shaft_lean'] as const),
  );
  if ('missing' in it) return missingSentence('the wedge', it.missing);
  const [thin, thick, angle, slope, lean] = it.got;
  return { thin, thick, angle, isThinAbove: slope > lean };
}

export const wedgeWords = ({ thin, thick, angle, isThinAbove }: WedgeOrder, units: Units): string =>
  angle === 0
    ? `flat, ${length(thin, units)} thick`
    : `${length(thin, units)} at one edge, ${length(thick, units)} at the other, measured level; ${angle.toFixed(1)}°; thin edge ${isThinAbove ? 'upwards' : 'downwards'}`;

/** What lies between the transom and one strut foot. */
export interface PadOrder {
  readonly name: string;
  /** The plan's pad, mm; 0: none. */
  readonly thick: number;
  /** How far the flange's edges stand off the curved face, short side across and long side across, mm. */
  readonly upright: number;
  readonly lying: number;
  readonly isUpright: boolean;
  /** Up to this the sealant fills it, mm. */
  readonly sealed: number;
}

export function padOrder(ask: Ask, side: FootSide): PadOrder | string {
  const name = `${placeWords[side]}’s pad`;
  const it = numbersOf(
    ask,
    ...([`${side}_pad_upright`, `${side}_pad_lying`, 'pad_gap_sealed', 'foot_width', 'foot_height'] as const),
  );
  if ('missing' in it) return missingSentence(`the ${name.toLowerCase()}`, it.missing);
  const [upright, lying, sealed, width, height] = it.got;
  const thick = numberOf(ask, 'foot_pad') ?? 0;
  return { name, thick, upright, lying, isUpright: width <= height, sealed };
}

/** Whether a foot, as it is mounted, stands further off the face than sealant fills. */
export const needsPad = ({ upright, lying, isUpright, sealed }: PadOrder): boolean =>
  (isUpright ? upright : lying) > sealed;

/** How many pads a foot takes, as it is mounted. */
export const padCount = (pad: PadOrder): string =>
  pad.thick > 0 ? '1' : needsPad(pad) ? '1, no thickness yet' : 'none';

export function padWords({ thick, upright, lying, isUpright, sealed }: PadOrder, units: Units): string {
  const each = (mm: number): string =>
    mm === 0
      ? 'none'
      : mm <= sealed
        ? `none, the sealant fills ${depth(mm, units)}`
        : `hollowed ${depth(mm, units)}`;
  const size = thick > 0 ? `${length(thick, units)} thick. ` : '';
  return upright === 0 && lying === 0
    ? `${size}The face is flat there, whichever way the flange is mounted.`
    : `${size}Hollow, flange upright: ${each(upright)}. Flange lying: ${each(lying)}. It is mounted ${isUpright ? 'upright' : 'lying'}.`;
}

/** What to do where a foot needs a pad and the plan has none. */
export const NO_PAD =
  'A foot needs a hollowed pad, and the plan’s pad is 0 mm thick. Enter the pad’s thickness on Gear: the bolts get longer by it.';
