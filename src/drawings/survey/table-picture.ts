import { benchFor } from '../reading/bench.ts';
import { withTypical } from '../reading/typical.ts';
import type { Scene } from '../scene.ts';
import { keepOuts } from './keep-outs.ts';
import { obstacles } from './obstacles.ts';
import { plumbLine } from './plumb-line.ts';
import { straightedge } from './straightedge.ts';

/** How a row of one of the survey's tables is read, on a boat of no particular size; null for a table it does not know. */
export function tablePicture(table: string): Scene | null {
  const bench = benchFor(withTypical({ number: () => null, flag: () => null }));
  if (bench === null) return null;
  switch (table) {
    case 'transom_readings':
    case 'rudder_readings':
      return plumbLine(bench);
    case 'camber_readings':
      return straightedge();
    case 'keep_outs_outside':
    case 'keep_outs_inside':
      return keepOuts(bench);
    case 'obstacles':
      return obstacles(bench);
    default:
      return null;
  }
}
