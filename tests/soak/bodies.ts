import { newPlan } from '../../src/plan/new-plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { type Bolts, boltsOf } from '../calc/bodies/bolts-of.ts';
import { type Mount, mountOf } from '../calc/bodies/mounts.ts';
import type { SoakLine } from './part.ts';

const MOUNTS = 1000;

/** What the sums of a balance are off in their last digits. */
const HAIR = 1e-6;

interface Group {
  count: number;
  unsafe: number;
  most: number;
  worst: Mount;
}

/** Lower and foot bolts of random mounts that can be built, held to free bodies in three dimensions. */
export function* soakBodies(): Iterable<SoakLine> {
  const plan = newPlan('Free bodies');
  const book = new Workbook(plan, null);
  const groups = new Map<string, Group>();
  const note = (name: string, share: number, mount: Mount): void => {
    const group = groups.get(name) ?? { count: 0, unsafe: 0, most: 0, worst: mount };
    group.count++;
    if (share > 1 + HAIR) group.unsafe++;
    if (share > group.most) Object.assign(group, { most: share, worst: mount });
    groups.set(name, group);
  };
  let built = 0;
  for (let seed = 1; built < MOUNTS; seed++) {
    const mount = mountOf(seed);
    const bolts: Bolts | null = boltsOf(book, plan, mount);
    if (bolts === null) continue;
    built++;
    const face = mount.transom_camber_radius === 0 ? 'a flat face' : 'a curved face';
    const foot = `the feet of ${mount.strut_count === 1 ? 'one strut' : 'two struts'}, ${mount.foot_bolt_count} bolts`;
    note(`pull on the lower bolts, ${face}`, bolts.lower.tension, mount);
    note(`shear on the lower bolts, ${face}`, bolts.lower.shear, mount);
    note(`pull on ${foot}`, bolts.foot.tension, mount);
    note(`shear on ${foot}`, bolts.foot.shear, mount);
  }
  book.destroy();
  for (const [name, { count, unsafe, most, worst }] of [...groups].sort(([a], [b]) => a.localeCompare(b))) {
    const told = unsafe === 0 ? '' : `; most with ${JSON.stringify(worst)}`;
    yield {
      name,
      says: `free bodies come to ${most.toFixed(4)} of the library’s at most, above it ${unsafe} times of ${count}${told}`,
      ok: unsafe === 0,
    };
  }
}
