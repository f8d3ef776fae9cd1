import { type Answer, type Content, Engine } from '../../../src/workbook/engine.ts';
import { readFormula } from '../../../src/workbook/formula.ts';
import { type Column, Replay } from '../../../src/workbook/replay/replay.ts';
import { replayOf } from '../../../src/workbook/replay/replay-of.ts';
import type { TableContents } from '../../../src/workbook/table-sheet.ts';
import { isSame, unroundedIn } from './unrounded.ts';

/** The engine's sheets end at 40,000 rows. */
const MOST = 30_000;

type Cells = Readonly<Record<string, Content>>;

/** How many formulas were tried, and where the two ways differ or hand on what is no answer. */
export interface Compared {
  readonly tried: number;
  readonly wrong: readonly string[];
}

/** Works formulas over cells out by the engine and by the replay, over as many engines as it takes. */
export function bothWays(cells: Cells, tables: TableContents, formulas: Iterable<string>): Compared {
  const all = [...formulas];
  const wrong: string[] = [];
  for (let i = 0; i < all.length; i += MOST)
    wrong.push(...differencesOf(cells, tables, all.slice(i, i + MOST)));
  return { tried: all.length, wrong };
}

/** A value that is a finite number, a yes or no or a text; or none, with a sentence why. */
function isWhole({ value, why }: Answer): boolean {
  if (value === null) return why !== undefined && /^\S.*\.$/.test(why);
  return typeof value !== 'number' || (Number.isFinite(value) && !Object.is(value, -0));
}

/** Puts formulas into an engine over the cells and compares each with its replay, all cells varied, both ways linked. */
function differencesOf(cells: Cells, tables: TableContents, formulas: readonly string[]): string[] {
  const contents = new Map<string, Content>(Object.entries(cells));
  const texts = new Map<string, string>();
  for (const text of formulas) {
    const read = readFormula(text, (name) => name in cells);
    if ('why' in read) throw new Error(`${text}: ${read.why}`);
    const name = `cell_${texts.size}`;
    texts.set(name, text);
    contents.set(name, { formula: read.text });
  }
  const engine = new Engine(contents, (name) => name, tables);
  const varied = Object.keys(cells).filter((name) => typeof cells[name] !== 'object');
  const columns = varied.map((name) => [cells[name], cells[name]] as unknown as Column);
  const asked = { results: [...texts.keys()], limits: [] };
  const wrong: string[] = [];
  for (const [how, names, given] of [
    ['worked out beforehand', [], []],
    ['replayed', varied, columns],
  ] as const) {
    const replayed = replayOf(engine, names, asked);
    if (!replayed.ok) throw new Error(replayed.why);
    const byRule = new Replay(replayed.replay.program, asked, 4, true);
    for (const [link, replay] of [
      ['fast', replayed.replay],
      ['by rule', byRule],
    ] as const) {
      replay.evaluateMany(given, 2);
      for (const [name, text] of texts) {
        const there = unroundedIn(engine, name);
        const here = replay.unrounded(name, 1);
        const answers = [engine.answer(name), replay.answer(name, 1)] as const;
        if (
          isSame(there, here) &&
          isWhole(answers[0]) &&
          answers[0].why === answers[1].why &&
          Object.is(answers[0].value, answers[1].value)
        ) {
          continue;
        }
        wrong.push(`${text} ${how}, ${link}: ${JSON.stringify(there)} and ${JSON.stringify(here)}`);
      }
    }
  }
  engine.destroy();
  return wrong;
}
