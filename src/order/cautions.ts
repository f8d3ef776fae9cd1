/** What whoever drills reads first: why the plan cannot be built, what else is outside, and which stand-ins lie under a hole. */
export interface Cautions {
  readonly unbuildable: readonly string[];
  readonly outside: readonly string[];
  readonly standIns: readonly string[];
}

export const NO_CAUTIONS: Cautions = { unbuildable: [], outside: [], standIns: [] };

/** How many reasons stand across a head, and how many limits or stand-ins in a line. */
const [MOST_REASONS, MOST_NAMED] = [2, 6];

function listed(all: readonly string[], most: number): string {
  const rest = all.length - most;
  return all.length <= most ? all.join('; ') : `${all.slice(0, most).join('; ')}; and ${rest} more`;
}

/** What stands across the head of a thing whose plan cannot be built; undefined when it can be. */
export const stopWords = ({ unbuildable }: Cautions, thing: 'sheet' | 'file' | 'list'): string | undefined =>
  unbuildable.length === 0
    ? undefined
    : `Do not drill from this ${thing}: ${listed(unbuildable, MOST_REASONS)}.`;

/** What stands with the holes besides. */
export const holeCautions = ({ outside, standIns }: Cautions): readonly string[] => [
  ...(outside.length === 0 ? [] : [`Outside their limits: ${listed(outside, MOST_NAMED)}.`]),
  ...(standIns.length === 0
    ? []
    : [
        `Stand-ins under these holes: ${listed(standIns, MOST_NAMED)}. Measure ${standIns.length === 1 ? 'it' : 'them'} before you drill.`,
      ]),
];
