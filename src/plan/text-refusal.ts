import { CAPS } from './caps.ts';

/** Characters that turn the direction of a text round, so that it reads as something else than it says. */
const TURNING = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u;

const CONTROL_IN_LINE = /[\p{Cc}\u2028\u2029]/u;
const CONTROL_IN_LINES = /[^\P{Cc}\n\t]/u;

/** Half of a character: it can be neither shown nor sent. */
const HALF = /\p{Cs}/u;

const codeOf = (sign: string): string =>
  `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;

/** What a text may not hold, as the end of a sentence ("holds …"); undefined when it may stand. */
function held(text: string, control: RegExp): string | undefined {
  const turning = TURNING.exec(text);
  if (turning !== null) return `${codeOf(turning[0])}, which turns the direction of the text round`;
  const half = HALF.exec(text);
  if (half !== null) return `${codeOf(half[0])}, which is half of a character`;
  const found = control.exec(text);
  return found === null ? undefined : `${codeOf(found[0])}, which cannot be shown`;
}

/** Why a text of one line cannot stand in a plan, as what it holds; undefined when it can. */
export const lineHolds = (text: string): string | undefined => held(text, CONTROL_IN_LINE);

/** The same for a text that may have line breaks and tabs. */
export const linesHold = (text: string): string | undefined => held(text, CONTROL_IN_LINES);

const refusal = (
  what: string,
  text: string | undefined,
  longest: number,
  holds: (text: string) => string | undefined,
): string | undefined => {
  if (text === undefined) return undefined;
  if (text.length > longest) {
    return `${what} is ${text.length} characters long; at most ${longest} are allowed.`;
  }
  const found = holds(text);
  return found === undefined ? undefined : `${what} holds ${found}.`;
};

/** Why a text of several lines cannot be kept, as a sentence about `what`; undefined when it can. */
export const linesRefusal = (what: string, text: string | undefined): string | undefined =>
  refusal(what, text, CAPS.text, linesHold);

/** The same for a text of one line; `longest` is in characters. */
export const lineRefusal = (
  what: string,
  text: string | undefined,
  longest: number = CAPS.text,
): string | undefined => refusal(what, text, longest, lineHolds);
