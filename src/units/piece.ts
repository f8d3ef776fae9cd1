/** A figure and its unit apart, so that a view can align figures and set units in their own column. */
export type Piece = { readonly figure: string; readonly unit: string };

/** What stands in the place of a number that is not one. */
export const NO_ANSWER: Piece = { figure: 'no answer', unit: '' };

/** One line of text: a space before the unit, none before a degree sign. */
export const joinPiece = ({ figure, unit }: Piece): string =>
  unit === '' || unit === '°' ? `${figure}${unit}` : `${figure} ${unit}`;

/** The same for a value in two units: the second in brackets. */
export const joinPieces = (pieces: readonly Piece[]): string => {
  const [first = '', second] = pieces.map(joinPiece);
  return second === undefined ? first : `${first} (${second})`;
};
