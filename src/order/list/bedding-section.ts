import { numberOf, numbersOf } from '../ask.ts';
import { feetInUse, type Place } from '../feet.ts';
import { missingSentence } from '../missing.ts';
import { plateOrder } from '../plates.ts';
import type { OrderGiven, OrderSection } from '../section.ts';
import { length } from '../words.ts';

/** Sealant in a cartridge, cm³; common practice, no source. */
const CARTRIDGE = 300;

function bedNotes({ ask, units }: OrderGiven, unanswered: string[]): string[] {
  const notes: string[] = [];
  const bed = numbersOf(ask, 'bed_volume', 'bed_thickness', 'bed_waste');
  if ('missing' in bed) unanswered.push(missingSentence('the epoxy bed', bed.missing));
  else
    notes.push(
      `Epoxy, thickened: ${Math.ceil(bed.got[0])} cm³ for a bed of ${length(bed.got[1], units)} mean under a plate for each bolt, ${Math.round(bed.got[2] * 100)} % of it waste on top. It makes a flat seat inside; wax the plates if they are to come off again.`,
    );
  const bead = numbersOf(ask, 'sealant_length', 'sealant_volume', 'sealant_bead');
  if ('missing' in bead) unanswered.push(missingSentence('the sealant', bead.missing));
  else {
    const cartridges = Math.max(1, Math.ceil(bead.got[1] / CARTRIDGE));
    notes.push(
      `Sealant for below the waterline: ${(bead.got[0] / 1000).toFixed(1)} m of bead, ${length(bead.got[2], units)} thick, ${Math.ceil(bead.got[1])} cm³: ${cartridges} cartridge${cartridges === 1 ? '' : 's'} of ${CARTRIDGE} cm³, and one to spare.`,
      'The bead goes round each flange and round each hole, next to the hull. Check that the sealant agrees with the plastic of the shims.',
    );
  }
  return notes;
}

export function beddingSection(given: OrderGiven): OrderSection {
  const places: readonly Place[] = ['lower', ...feetInUse(given.ask)];
  const unanswered: string[] = [];
  const plates = places.map((place) => plateOrder(given.ask, place));
  for (const it of plates) if (typeof it === 'string') unanswered.push(it);
  const known = plates.filter((it) => typeof it !== 'string');
  const l = (mm: number): string => length(mm, given.units);
  const shared = known.some((it) => it.bolts > 1);
  return {
    title: 'Backing plates, bed and sealant',
    lead: 'Inside, under the washers. Round every corner and edge of a plate.',
    tables: [
      {
        heads: [
          { text: 'Place' },
          { text: 'Plates', figure: true, share: 0.6 },
          { text: 'Size', share: 2.8 },
          { text: 'Bolts in each', figure: true, share: 0.8 },
        ],
        rows: known.map((it) => [
          it.name,
          String(it.count),
          `${l(it.width)} × ${l(it.height)}, ${l(it.thickness)} thick`,
          String(it.bolts),
        ]),
      },
    ],
    notes: [
      ...(shared
        ? ['Where two plates would overlap, one plate takes both bolts and still reaches as far past each.']
        : []),
      ...bedNotes(given, unanswered),
      ...(numberOf(given.ask, 'transom_camber_radius') === 0
        ? []
        : ['On a curved face the bed is thicker at its edges: mix more by that.']),
    ],
    unanswered,
    restsOn: [
      'plate_area',
      'plate_thickness',
      'bed_thickness',
      'bed_waste',
      'sealant_bead',
      'foot_bolt_spacing',
    ],
  };
}
