import { demoPrints, disagreements, type Print, randomPrints } from '../sheets/truth/random-prints.ts';
import type { SoakLine } from './part.ts';

const PLANS = 200;

async function lineOf(name: string, prints: readonly Print[]): Promise<SoakLine> {
  const found: string[] = [];
  for (const [i, it] of prints.entries())
    for (const words of await disagreements(it))
      found.push(`${i}, ${it.plan.title}, ${it.scenario}, ${it.paper}, ${it.units}: ${words}`);
  const says =
    found.length === 0 ? 'no difference' : `${found.length} differ: ${found.slice(0, 5).join('; ')}`;
  return { name, says: `${prints.length} prints, ${says}`, ok: found.length === 0 };
}

/** One truth on paper: every demo plan on every paper in every unit, and plans drawn at random. */
export async function* soakPaper(): AsyncIterable<SoakLine> {
  yield await lineOf('demo plans: sheets, files, page, message and command line tell the same', demoPrints());
  const seed = Date.now() % 1_000_000;
  yield await lineOf(`random plans, seed ${seed}: the same`, randomPrints(PLANS, seed));
}
