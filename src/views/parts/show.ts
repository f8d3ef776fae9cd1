import { cellNamed } from '../../plan/book.ts';
import type { Plan, Units, Value } from '../../plan/plan.ts';
import { surveyWords } from '../../session/survey/survey-words.ts';
import { formatValue, valuePieces } from '../../units/format-value.ts';
import type { Piece } from '../../units/piece.ts';

/** Unit of any cell, the owner's own among them. */
export const unitOf = (name: string, plan: Plan): string =>
  cellNamed(name)?.unit ?? plan.ownCells.find((cell) => cell.name === name)?.unit ?? '–';

/** What a cell is called on screen. */
export const labelOf = (name: string, plan: Plan): string =>
  cellNamed(name)?.label ??
  plan.ownCells.find((cell) => cell.name === name)?.label ??
  surveyWords(name)?.label ??
  name;

/** What a cell is called where there is little room. */
export const shortOf = (name: string, plan: Plan): string => cellNamed(name)?.short ?? labelOf(name, plan);

/** A value as one line, in the units shown. */
export const shown = (value: Value, unit: string, units: Units): string =>
  formatValue(value, unit, { unit: units });

/** A value as figure and unit, the second piece being inches when both are shown. */
export const piecesOf = (value: Value, unit: string, units: Units): readonly Piece[] =>
  valuePieces(value, unit, { unit: units });
