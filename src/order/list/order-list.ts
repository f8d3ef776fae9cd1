import { type Cautions, NO_CAUTIONS } from '../cautions.ts';
import { labelsOf } from '../labels.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { beddingSection } from './bedding-section.ts';
import { boltsSection } from './bolts-section.ts';
import { holesSection } from './holes-section.ts';
import { packingSection } from './packing-section.ts';
import { stackSection } from './stack-section.ts';
import { strutsSection } from './struts-section.ts';
import { torqueSection } from './torque-section.ts';

/** A section with what it says of the stand-ins it rests on. */
export interface ListedSection extends OrderSection {
  /** One sentence, or undefined when it rests on none. */
  readonly standsOn?: string;
}

const MOST_NAMED = 4;

function standInSentence(names: readonly string[]): string | undefined {
  if (names.length === 0) return undefined;
  const labels = labelsOf(names);
  const shown = labels.slice(0, MOST_NAMED).map((label) => `“${label}”`);
  const rest = labels.length - shown.length;
  const list = rest > 0 ? `${shown.join(', ')} and ${rest} more` : shown.join(', ');
  return `Rests on ${names.length === 1 ? 'a stand-in' : `${names.length} stand-ins`}: ${list}. Measure before you order.`;
}

/** The whole order, in the order a mount is worked: what to drill, bolt, pack, cut, bed and tighten. */
export function orderList(
  given: OrderGiven,
  standIns: readonly string[],
  cautions: Cautions = NO_CAUTIONS,
): readonly ListedSection[] {
  const held = new Set(standIns);
  return [
    boltsSection(given),
    stackSection(given),
    packingSection(given),
    strutsSection(given),
    beddingSection(given),
    torqueSection(given),
    holesSection(given, cautions),
  ].map((section) => {
    const standsOn = standInSentence(section.restsOn.filter((name) => held.has(name)));
    return { ...section, ...(standsOn === undefined ? {} : { standsOn }) };
  });
}
