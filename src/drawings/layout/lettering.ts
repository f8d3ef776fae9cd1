/** Styles of lettering on a drawing. */
export type TextStyle = 'dimension' | 'tick' | 'lead';

export interface Lettering {
  /** Size and line height, px. */
  readonly size: number;
  readonly line: number;
  readonly weight: number;
  /** Width of the letters, %. */
  readonly stretch: number;
  /** Width against the measured style, see text-width. */
  readonly factor: number;
}

export type Medium = 'screen' | 'paper';

const screen: Readonly<Record<TextStyle, Lettering>> = {
  dimension: { size: 13, line: 17, weight: 500, stretch: 85, factor: 1 },
  tick: { size: 11.5, line: 14, weight: 400, stretch: 85, factor: 0.98 },
  lead: { size: 18, line: 24, weight: 600, stretch: 100, factor: 1.12 },
};

/** On paper values are at least 10 pt, everything else at least 8 pt. */
const paper: Readonly<Record<TextStyle, Lettering>> = {
  dimension: { ...screen.dimension, size: 13.4 },
  tick: screen.tick,
  lead: screen.lead,
};

export const letteringFor = (medium: Medium): Readonly<Record<TextStyle, Lettering>> =>
  medium === 'paper' ? paper : screen;
