import { boltShelf } from '../calc/fasteners/iso-bolts.ts';
import { type InchBolt, nearestUnc } from '../calc/fasteners/unc.ts';
import { type Ask, numberOf } from './ask.ts';

/** What the holes through the transom are drilled with, mm. */
export interface Drill {
  /** The bolt's own diameter. */
  readonly bolt: number;
  /** Common practice, no source. */
  readonly pilot: number;
  /** Close hole of ISO 273; the bolt's own diameter where the tables have none. */
  readonly hole: number;
  /** What is bought where only inch sizes are sold. */
  readonly inch: InchBolt;
}

const PILOT = { mm: 4, inches: '5⁄32' };

export function drillOf(ask: Ask): Drill | undefined {
  const bolt = numberOf(ask, 'bolt_diameter');
  if (bolt === undefined) return undefined;
  return { bolt, pilot: PILOT.mm, hole: boltShelf(bolt)?.hole ?? bolt, inch: nearestUnc(bolt) };
}

/** The hole's size as the drill is sold, whatever unit lengths are in: by the bolt that goes through, the inch size behind. */
export const drillWords = ({ bolt, hole, inch }: Drill): string =>
  `${hole} mm for M${bolt} (${inch.hole} in for ${inch.name})`;

/** What to drill with, whole sentences. */
export function drillNotes(ask: Ask): readonly string[] {
  const drill = drillOf(ask);
  if (drill === undefined) return [];
  return [
    `Drills: a pilot of ${drill.pilot} mm (${PILOT.inches} in; common practice, no source), then ${drillWords(drill)}: close holes of ISO 273 and ASME B18.2.8, from memory.`,
    'Drill the pilot from outside, square to the face, and look inside before you open it up. Break the outer edge so that sealant stays round the bolt.',
  ];
}
