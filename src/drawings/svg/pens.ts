import type { Medium } from '../layout/lettering.ts';
import type { PageRole, TextRole } from '../layout/primitive.ts';
import type { Role } from '../scene.ts';
import type { Token } from './tokens.ts';

/** How a line or surface is drawn; widths and dashes in px. */
export interface Pen {
  readonly stroke: Token | null;
  readonly fill: Token | null;
  readonly width: number;
  readonly dash?: string;
}

const pen = (stroke: Token | null, width: number, fill: Token | null = null, dash?: string): Pen => ({
  stroke,
  width,
  fill,
  ...(dash === undefined ? {} : { dash }),
});

const DASH_DOT = '12 3 2 3';

/** Outline and cut 2, dimensions 1, axes 0.75 dash-dot; the overprint is heavier than the ink it touches. */
export const pens: Readonly<Record<Role | PageRole, Pen>> = {
  outline: pen('ink', 2, 'sheet'),
  cut: pen('ink', 2, 'sheet'),
  hatch: pen('soft', 0.75),
  soft: pen('soft', 1.5),
  'soft-fill': pen(null, 0, 'film'),
  choice: pen('mark', 2.5, 'sheet'),
  shim: pen('mark', 1, 'mark-wash'),
  fastener: pen('ink', 1, 'sheet'),
  hidden: pen('soft', 0.75, null, '4 2'),
  axis: pen('ink', 0.75, null, DASH_DOT),
  break: pen('soft', 1),
  water: pen(null, 0, 'water'),
  waterline: pen('ink', 1),
  heeled: pen('ink', 1, null, '8 3'),
  sector: pen('ink', 1, null, '4 3'),
  'sector-soft': pen('soft', 1, null, '4 3'),
  dashed: pen('soft', 1.5, null, '7 4'),
  ghost: pen('soft', 1, null, '6 3'),
  lost: pen('soft', 1.5, null, '1.5 3.5'),
  dimension: pen('ink', 1),
  stroke: pen('ink', 1.5),
  extension: pen('soft', 0.75),
  leader: pen('soft', 0.75),
  ring: pen('ink', 1),
  detail: pen(null, 0, 'sheet'),
  'detail-edge': pen('ink', 1),
  plate: pen('ink', 1, 'ink'),
  frame: pen('ink', 1.5, 'sheet'),
  ground: pen(null, 0, 'sheet'),
  rule: pen('ink', 1),
  pointer: pen(null, 0, 'mark'),
  'pointer-behind': pen('soft', 1, 'sheet'),
  level: pen('mark', 0.75),
  number: pen('ink', 1.5, 'sheet'),
  window: pen('edge', 1),
  slot: pen('ink', 2),
  jaw: pen('ink', 2.5),
  peg: pen('ink', 2, 'sheet'),
  'peg-half': pen(null, 0, 'ink'),
  'peg-outside': pen(null, 0, 'ink'),
  'slot-dashed': pen('ink', 2, null, '3 3'),
  'jaw-dashed': pen('ink', 2.5, null, '3 3'),
};

const PX_PER_MM = 96 / 25.4;

/** Line widths on paper, mm: outline 0.5, thin 0.25, axis 0.18. */
function onPaper(width: number): number {
  if (width === 0) return 0;
  return (width >= 2 ? 0.5 : width >= 1 ? 0.25 : 0.18) * PX_PER_MM;
}

/** What of a part shows that it is pointed at; its axes and hidden lines stay as they are. */
const lightable = new Set<Role | PageRole>([
  'outline',
  'cut',
  'choice',
  'shim',
  'soft',
  'pointer',
  'level',
  'number',
]);

/** A pointed-at part is drawn this much heavier, px. */
const LIT = 1;

export function penFor(role: Role | PageRole, medium: Medium = 'screen', lit = false): Pen {
  const found = pens[role];
  const width = medium === 'paper' ? onPaper(found.width) : found.width;
  if (!lit || !lightable.has(role)) return { ...found, width };
  return {
    ...found,
    width: width > 0 ? width + LIT : width,
    fill: found.fill === 'sheet' ? 'mark-wash' : found.fill,
  };
}

export const textTokens: Readonly<Record<TextRole, Token>> = {
  text: 'ink',
  'text-soft': 'soft',
  'text-choice': 'mark',
  'text-plate': 'sheet',
};
