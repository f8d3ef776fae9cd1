/** Things in an order in which each comes after all it uses, and those that use themselves, directly or in a loop. */
export interface Order {
  readonly sorted: readonly number[];
  readonly looped: ReadonlySet<number>;
}

interface Visit {
  readonly at: number;
  readonly uses: readonly number[];
  next: number;
}

/**
 * Orders `0 … count − 1` by what each uses: Tarjan's strongly connected components, with a stack of its own so that a
 * long chain of cells cannot overflow the machine's.
 */
export function orderOf(count: number, usesOf: (at: number) => readonly number[]): Order {
  const sorted: number[] = [];
  const looped = new Set<number>();
  const found = new Array<number>(count).fill(-1);
  const low = new Array<number>(count).fill(0);
  const open = new Array<boolean>(count).fill(false);
  const component: number[] = [];
  const visits: Visit[] = [];
  let seen = 0;

  const enter = (at: number): void => {
    found[at] = seen;
    low[at] = seen;
    seen++;
    open[at] = true;
    component.push(at);
    visits.push({ at, uses: usesOf(at), next: 0 });
  };
  const lower = (at: number, to: number): void => {
    low[at] = Math.min(low[at] as number, to);
  };
  const leave = ({ at, uses }: Visit): void => {
    visits.pop();
    const below = visits.at(-1);
    if (below !== undefined) lower(below.at, low[at] as number);
    if (low[at] !== found[at]) return;
    const alone = component.at(-1) === at && !uses.includes(at);
    for (;;) {
      const member = component.pop() as number;
      open[member] = false;
      sorted.push(member);
      if (!alone) looped.add(member);
      if (member === at) return;
    }
  };

  for (let start = 0; start < count; start++) {
    if (found[start] !== -1) continue;
    enter(start);
    for (let visit = visits.at(-1); visit !== undefined; visit = visits.at(-1)) {
      const use = visit.uses[visit.next++];
      if (use === undefined) leave(visit);
      else if (found[use] === -1) enter(use);
      else if (open[use]) lower(visit.at, found[use] as number);
    }
  }
  return { sorted, looped };
}
