import { tableNamed } from '../plan/tables.ts';
import { countRefusal } from './count-refusal.ts';
import { formulaWords } from './formula-words.ts';
import { tableRefusal } from './table-places.ts';
import type { Token } from './token.ts';

/** Caps that keep a formula from costing more than a workbook should. */
const LONGEST = 2000;
const DEEPEST = 32;
const MOST_TERMS = 300;

export interface Formula {
  /** As the engine reads it: one argument separator, lower-case exponents. */
  readonly text: string;
  /** Cells it uses, each once. */
  readonly names: readonly string[];
}

export interface Refused {
  readonly why: string;
}

const PATTERNS: readonly (readonly [Token['kind'], RegExp])[] = [
  ['number', /^(?:\d+\.?\d*|\.\d+)(?:[eE][+\-−]?\d+)?/],
  ['text', /^"(?:[^"]|"")*"/],
  ['call', /^[A-Za-z_][A-Za-z0-9_.]*(?=\s*\()/],
  ['name', /^[A-Za-z_][A-Za-z0-9_.]*/],
  ['sign', /^(?:<=|>=|<>|[-−+*/^%&=<>();,])/],
];

function tokensOf(text: string): Token[] | Refused {
  const tokens: Token[] = [];
  let rest = text.slice(1).trimStart();
  while (rest !== '') {
    let found: Token | undefined;
    for (const [kind, pattern] of PATTERNS) {
      const match = pattern.exec(rest);
      if (match !== null) {
        found = { kind, text: match[0] };
        break;
      }
    }
    if (found === undefined) {
      return {
        why: `A formula cannot hold “${rest.slice(0, 1)}” here: …${rest.slice(0, 16)}. It is made of names, numbers, + − * / ^ % &, comparisons and functions.`,
      };
    }
    tokens.push(found);
    rest = rest.slice(found.text.length).trimStart();
  }
  return tokens;
}

function tooMuch(tokens: readonly Token[]): string | undefined {
  if (tokens.length > MOST_TERMS)
    return `A formula may have ${MOST_TERMS} parts at most; this one has ${tokens.length}.`;
  let depth = 0;
  let deepest = 0;
  for (const { text } of tokens) {
    if (text === '(') depth++;
    if (text === ')') depth--;
    deepest = Math.max(deepest, depth);
    if (depth < 0) return 'A bracket closes that was never opened.';
  }
  if (depth > 0) return `${depth === 1 ? 'A bracket is' : `${depth} brackets are`} opened and never closed.`;
  if (deepest > DEEPEST)
    return `Brackets may stand ${DEEPEST} deep at most; here they stand ${deepest} deep.`;
  return undefined;
}

/** A true minus sign, as a person's keyboard or a sheet may give it. */
const MINUS = '−';

const written = ({ kind, text }: Token): string => {
  if (kind === 'number') return text.toLowerCase().replace(MINUS, '-');
  if (kind === 'call') return text.toUpperCase();
  if (kind === 'name') return text.toLowerCase();
  if (kind === 'sign' && text === MINUS) return '-';
  return text === ';' ? ',' : text;
};

const LIKE_A_CELL = /^[A-Za-z]{1,3}\d+$/;

/**
 * Reads a formula before the engine does: only known names and functions, within the caps. Arguments are set apart by
 * semicolons, as OpenFormula has it; commas are understood.
 */
export function readFormula(text: string, isName: (name: string) => boolean): Formula | Refused {
  if (!text.startsWith('=')) return { why: 'A formula starts with =.' };
  if (text.length > LONGEST)
    return { why: `A formula may have ${LONGEST} characters at most; this one has ${text.length}.` };
  const tokens = tokensOf(text);
  if ('why' in tokens) return tokens;
  if (tokens.length === 0) return { why: 'The formula is empty after its =.' };
  const over = tooMuch(tokens);
  if (over !== undefined) return { why: over };
  const names = new Set<string>();
  for (const { kind, text: word } of tokens) {
    if (kind === 'call' && !formulaWords.has(word.toUpperCase())) {
      return { why: `${word} is not a function of this workbook.` };
    }
    if (kind !== 'name') continue;
    const name = word.toLowerCase();
    if (name === 'true' || name === 'false' || tableNamed(name) !== undefined) continue;
    if (!isName(name)) {
      const hint = LIKE_A_CELL.test(word)
        ? ' Cells are called by their names here, not by letters and numbers.'
        : '';
      return { why: `There is no cell named ${word}.${hint}` };
    }
    names.add(name);
  }
  const miscounted = countRefusal(tokens);
  if (miscounted !== undefined) return { why: miscounted };
  const misplaced = tableRefusal(tokens);
  if (misplaced !== undefined) return { why: misplaced };
  // The engine takes a word for a function only when its bracket follows at once.
  const body = tokens
    .map((token) => (token.kind === 'call' ? written(token) : `${written(token)} `))
    .join('');
  return { text: `=${body.trimEnd()}`, names: [...names] };
}
