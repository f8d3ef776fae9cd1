import type { Units, Value } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { OwnBoatState } from './own-boat.ts';
import { readAlone } from './read-step.ts';
import { standInFor } from './stand-in-for.ts';
import { firstInputs } from './steps.ts';

/** What a small picture of one reading is drawn from, before there is a plan. */
export interface PictureAsk {
  readonly name: string;
  /** By input, base units: what was read, the stand-in where a reading was left to it, nothing for the rest. */
  readonly values: ReadonlyMap<string, Value>;
  /** The value of the reading itself is not known: what stands for it gives the picture its shape alone. */
  readonly unread: boolean;
  readonly units: Units;
}

/** The picture of one reading, drawn from all that is known so far; the transom leans as it was said to. */
export function pictureAsk(state: OwnBoatState, cell: InputCell): PictureAsk {
  const values = new Map<string, Value>();
  let unread = true;
  for (const it of firstInputs) {
    const read = state.left.has(it.name) ? undefined : readAlone(state, it);
    const known = read?.ok === true || state.left.has(it.name);
    if (it === cell) unread = !known;
    if (read?.ok) values.set(it.name, read.reading.value);
    else if (known || it.name === 'transom_rake') values.set(it.name, standInFor(it, state.answers).value);
  }
  return { name: cell.name, values, unread, units: state.answers.units ?? 'both' };
}
