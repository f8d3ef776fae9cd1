import type { Reading } from '../plan/plan.ts';
import { isBareLength } from './unit-question/unit-doubt.ts';

/** A length's text with its unit, where a bare number would mean another one; `meant` is the unit it has there. */
export function withUnit(text: string, typedIn: string, meant: 'mm' | 'in' | undefined): string {
  return text === '' || typedIn === meant || !isBareLength(text) ? text : `${text} ${typedIn}`;
}

/** The text a person gets back to edit: a formula, or what was typed; undefined where nothing was. */
export function typedText(reading: Reading, unit: string, meant: 'mm' | 'in'): string | undefined {
  const { formula, typed } = reading;
  if (formula !== undefined) return formula;
  if (typed === undefined || unit !== 'mm') return typed;
  return withUnit(typed, reading.unit ?? 'mm', meant);
}
