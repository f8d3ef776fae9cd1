import type { Engine } from '../engine.ts';
import { CannotBeLowered, lowerFormula, type Part } from './lower-formula.ts';
import { orderOf } from './order.ts';
import { type Address, ParsedCells } from './parsed.ts';
import { LOOP, type Scalar } from './scalar.ts';
import type { Step, Steps } from './steps.ts';

export type Lowered =
  | { readonly ok: true; readonly steps: Steps }
  | { readonly ok: false; readonly why: string };

interface Cell {
  readonly address: Address;
  readonly name: string | undefined;
  part: Part;
  /** Every cell its formula names, in parts that come to nothing too: the engine finds its loops by them. */
  readonly uses: number[];
}

/** Every cell that the wanted ones follow from, each with its formula's names resolved; varied ones follow from nothing. */
function reached(
  cells: ParsedCells,
  wanted: Iterable<string>,
  varied: ReadonlySet<string>,
): { found: Cell[] } | { why: string } {
  const found: Cell[] = [];
  const numbers = new Map<string, number>();
  const numberOf = (address: Address): number => {
    const key = `${address.sheet} ${address.col} ${address.row}`;
    let number = numbers.get(key);
    if (number === undefined) {
      number = found.length;
      numbers.set(key, number);
      found.push({ address, name: cells.nameAt(address), part: { value: null }, uses: [] });
    }
    return number;
  };
  for (const name of wanted) {
    const address = cells.addressOf(name);
    if (address === undefined) return { why: `There is no cell named ${name}.` };
    numberOf(address);
  }
  for (let i = 0; i < found.length; i++) {
    const cell = found[i] as Cell;
    const called = cell.name ?? 'A cell';
    const parsed = cells.at(cell.address);
    if (cell.name !== undefined && varied.has(cell.name)) {
      cell.part = { value: parsed.at === 'value' ? parsed.value : null };
      continue;
    }
    if (parsed.at === 'list') return { why: `${called} cannot be replayed: its formula gives a list.` };
    if (parsed.at === 'value') {
      cell.part = { value: parsed.value };
      continue;
    }
    try {
      cell.part = lowerFormula(parsed.node, {
        cells,
        address: cell.address,
        isVaried: (name) => varied.has(name),
        numberOf: (address) => {
          const number = numberOf(address);
          cell.uses.push(number);
          return number;
        },
      });
    } catch (error) {
      if (!(error instanceof CannotBeLowered)) throw error;
      return { why: `${called} cannot be replayed: ${error.message}.` };
    }
  }
  return { found };
}

/** Lays cells out as slots and steps: the cells first, in the order found, then constants and parts. */
function laidOut(cells: readonly Cell[]): Steps {
  const given: (readonly [number, Scalar])[] = [];
  const steps: Step[] = [];
  let slots = cells.length;
  const put = (part: Part): number => {
    if ('cell' in part) return part.cell;
    if ('value' in part) {
      given.push([slots, part.value]);
      return slots++;
    }
    const args = part.args.map(put);
    steps.push({ op: part.op, args, out: slots });
    return slots++;
  };
  const putIn = (out: number, part: Part): void => {
    if ('cell' in part) steps.push({ op: 'same', args: [part.cell], out });
    else if ('value' in part) given.push([out, part.value]);
    else {
      const args = part.args.map(put);
      steps.push({ op: part.op, args, out });
    }
  };
  const { sorted, looped } = orderOf(cells.length, (i) => (cells[i] as Cell).uses);
  for (const i of sorted) putIn(i, looped.has(i) ? { value: LOOP } : (cells[i] as Cell).part);
  const named = cells.flatMap((cell, i) => (cell.name === undefined ? [] : [[cell.name, i] as const]));
  return { slots, cells: named, given, steps };
}

/**
 * The engine's own parsed formulas of the wanted cells, and of all they follow from, as plain steps. A varied cell's own
 * formula is left out: its values are put in. Formulas that hold anything but values, names, signs and the functions of
 * the closed list are not lowered; the study then runs on the engine.
 */
export function lower(engine: Engine, wanted: Iterable<string>, varied: Iterable<string> = []): Lowered {
  const cells = reached(new ParsedCells(engine), wanted, new Set(varied));
  return 'why' in cells ? { ok: false, why: cells.why } : { ok: true, steps: laidOut(cells.found) };
}
