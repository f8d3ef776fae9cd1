/** The colour tokens a drawing uses. */
export type Token = 'sheet' | 'film' | 'water' | 'mark-wash' | 'ink' | 'soft' | 'edge' | 'mark';

/** A colour for every token, as the page or the paper has it. */
export type Palette = Readonly<Record<Token, string>>;

/** Black only; water and washes stay white, form and line tell them apart. */
export const paperPalette: Palette = {
  sheet: '#ffffff',
  film: '#ffffff',
  water: '#ffffff',
  'mark-wash': '#ffffff',
  ink: '#000000',
  soft: '#000000',
  edge: '#000000',
  mark: '#000000',
};
