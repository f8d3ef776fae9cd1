import { functionNamed, tableFunctions } from '../calc/catalogue.ts';
import { tableNamed } from '../plan/tables.ts';
import type { Token } from './token.ts';

/** A bracket that is open: the function it belongs to, and which of its arguments is being read. */
interface Open {
  readonly id: string | undefined;
  argument: number;
  /** A table is given by a function: nothing else may stand beside it. */
  readonly givesTable: boolean;
}

const isTableFunction = (id: string): boolean => tableFunctions.some((it) => it.id === id);

const takesTable = ({ id, argument }: Open): boolean =>
  id !== undefined &&
  (functionNamed(id) ?? tableFunctions.find((it) => it.id === id))?.arguments[argument]?.type === 'table';

const isSeparator = (text: string | undefined): boolean => text === ';' || text === ',';
const begins = (text: string | undefined): boolean => text === '(' || isSeparator(text);
const ends = (text: string | undefined): boolean => text === ')' || isSeparator(text);

const sentence = (what: string): string =>
  `${what} is a table: it can only stand, by itself, where a function takes a table.`;

/** Why a table stands where it cannot, as one sentence; undefined when every table is a whole argument that is one. */
export function tableRefusal(tokens: readonly Token[]): string | undefined {
  const open: Open[] = [];
  const isArgument = (i: number): boolean => {
    const inside = open.at(-1);
    return inside !== undefined && takesTable(inside) && begins(tokens[i - 1]?.text);
  };
  for (const [i, { kind, text }] of tokens.entries()) {
    const word = text.toUpperCase();
    if (kind === 'call' && isTableFunction(word) && !isArgument(i)) return sentence(word);
    if (kind === 'name' && tableNamed(text.toLowerCase()) !== undefined) {
      if (!isArgument(i) || !ends(tokens[i + 1]?.text)) return sentence(text);
    }
    if (text === '(') {
      const call = tokens[i - 1];
      const id = call?.kind === 'call' ? call.text.toUpperCase() : undefined;
      open.push({ id, argument: 0, givesTable: id !== undefined && isTableFunction(id) });
    } else if (kind === 'sign' && isSeparator(text)) {
      const inside = open.at(-1);
      if (inside !== undefined) inside.argument++;
    } else if (text === ')') {
      const closed = open.pop();
      if (closed?.givesTable && !ends(tokens[i + 1]?.text)) return sentence(closed.id ?? 'This');
    }
  }
  return undefined;
}
