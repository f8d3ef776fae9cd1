import { CAPS } from '../plan/caps.ts';

/** Function that lets a value through unless it is a text that is too long. */
export const WITHIN_TEXT = 'WITHIN_TEXT';

/** A cell's formula, watched over where it joins texts: cells that double one another's would fill the machine. */
export const withinText = (formula: string): string =>
  formula.includes('&') ? `=${WITHIN_TEXT}(${formula.slice(1)})` : formula;

/** Why a text is no answer; undefined when it is short enough. */
export const textRefusal = (text: string): string | undefined =>
  text.length <= CAPS.text
    ? undefined
    : `A cell’s text may have ${CAPS.text} characters at most; this one would have ${text.length}.`;
