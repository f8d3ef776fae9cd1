const ROUNDS = 15;

/** Each round's least time, ms: a task shorter than this says little. */
const ROUND_MS = 40;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/** A task that does so many evaluations each time it is run. */
export interface Task {
  readonly evaluations: number;
  run(): void;
}

function timeOnce({ evaluations, run }: Task): number {
  const start = performance.now();
  let done = 0;
  let taken = 0;
  while (taken < ROUND_MS) {
    run();
    done += evaluations;
    taken = performance.now() - start;
  }
  return (taken / done) * 1000;
}

/**
 * Microseconds an evaluation of each task, medians over rounds in which all take their turn, so that whatever else the
 * machine does falls on all alike.
 */
export function interleaved<Name extends string>(tasks: Readonly<Record<Name, Task>>): Record<Name, number> {
  const entries = Object.entries(tasks) as [Name, Task][];
  const times = new Map<Name, number[]>(entries.map(([name]) => [name, []]));
  for (const [, task] of entries) timeOnce(task);
  for (let round = 0; round < ROUNDS; round++) {
    for (const [name, task] of entries) times.get(name)?.push(timeOnce(task));
  }
  return Object.fromEntries([...times].map(([name, values]) => [name, median(values)])) as Record<
    Name,
    number
  >;
}
