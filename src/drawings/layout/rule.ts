import { type Block, block, drawBlock, type Letterings } from './block.ts';
import { line } from './path.ts';
import type { Primitive } from './primitive.ts';
import type { Rect } from './px.ts';

/** Length of the longest graduation, px, and where its figure begins. */
const LONG = 9;
const FIGURE_AT = 12;
/** Width the rule takes up with its figures, px. */
export const RULE_WIDTH = 44;

const MM_PER_INCH = 25.4;

interface Graduation {
  /** Steps between figures, between middle and between short graduations, in the rule's unit. */
  readonly figure: number;
  readonly middle: number;
  readonly short: number;
}

/** Graduations a tape would carry, coarsest last. */
const metric: readonly Graduation[] = [
  { figure: 10, middle: 5, short: 1 },
  { figure: 50, middle: 10, short: 5 },
  { figure: 100, middle: 50, short: 10 },
  { figure: 200, middle: 100, short: 20 },
  { figure: 500, middle: 100, short: 50 },
  { figure: 1000, middle: 500, short: 100 },
  { figure: 5000, middle: 1000, short: 500 },
  { figure: 50000, middle: 10000, short: 5000 },
];
const imperial: readonly Graduation[] = [
  { figure: 1, middle: 0.5, short: 0.25 },
  { figure: 2, middle: 1, short: 0.5 },
  { figure: 6, middle: 3, short: 1 },
  { figure: 12, middle: 6, short: 2 },
  { figure: 24, middle: 12, short: 4 },
  { figure: 48, middle: 12, short: 6 },
  { figure: 120, middle: 60, short: 12 },
  { figure: 1200, middle: 240, short: 120 },
];

/** Least distance of two graduations and of two figures, px. */
const GRADUATIONS_APART = 4;
const FIGURES_APART = 44;

/** The finest graduation that can be told apart; past the table it goes on in tens. `per` is px per unit. */
function graduationFor(table: readonly Graduation[], per: number): Graduation {
  const fits = (it: Graduation): boolean =>
    it.short * per >= GRADUATIONS_APART && it.figure * per >= FIGURES_APART;
  let found = table.find(fits) ?? table.at(-1) ?? { figure: 1, middle: 1, short: 1 };
  while (!fits(found))
    found = { figure: found.figure * 10, middle: found.middle * 10, short: found.short * 10 };
  return found;
}

const sign = (value: number): string => (value < 0 ? `−${-value}` : `${value}`);
const isMultiple = (value: number, step: number): boolean =>
  Math.abs(value / step - Math.round(value / step)) < 1e-6;

/** A graduated rule along the left edge of `sheet`; `zero` is the waterline's place, px, `scale` px per mm. */
export function drawRule(
  unit: 'mm' | 'in',
  zero: number,
  scale: number,
  sheet: Rect,
  letterings: Letterings,
): { primitives: Primitive[]; labels: Rect[] } {
  const per = unit === 'mm' ? scale : scale * MM_PER_INCH;
  const table = unit === 'mm' ? metric : imperial;
  const graduation = graduationFor(table, per);
  const primitives: Primitive[] = [];
  const labels: Rect[] = [];
  const bottom = sheet.y + sheet.height;
  const first = Math.ceil((zero - bottom) / per / graduation.short);
  const last = Math.floor((zero - sheet.y) / per / graduation.short);
  let d = line({ x: sheet.x + 0.5, y: sheet.y }, { x: sheet.x + 0.5, y: bottom });
  for (let i = first; i <= last; i++) {
    const value = i * graduation.short;
    const y = zero - value * per;
    const whole = isMultiple(value, graduation.figure);
    const length = whole ? LONG : isMultiple(value, graduation.middle) ? LONG * 0.7 : LONG * 0.4;
    d += line({ x: sheet.x, y }, { x: sheet.x + length, y });
    if (!whole) continue;
    const text: Block = block(
      [{ runs: [{ text: sign(Math.round(value)), style: 'tick', role: 'text-soft' }] }],
      letterings,
    );
    const top = y - text.height / 2;
    if (top < sheet.y + 1 || top + text.height > bottom - 1) continue;
    primitives.push(...drawBlock(text, sheet.x + FIGURE_AT, top, 'left', letterings));
    labels.push({ x: sheet.x + FIGURE_AT, y: top, width: text.width, height: text.height });
  }
  primitives.unshift({ kind: 'path', role: 'rule', d });
  return { primitives, labels };
}
