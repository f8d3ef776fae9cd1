import { keyOf } from '../key.ts';
import type { WorkGiven, WorkStep } from '../step.ts';
import { tighteningOrder } from '../tightening.ts';

const AGAIN = 'again';

/** From bedding to the last look. */
export function closeSteps({ ask }: WorkGiven): readonly WorkStep[] {
  const tightened = tighteningOrder(ask).filter((it) => it.name !== AGAIN);
  return [
    {
      name: 'bed',
      title: 'Take it off, seal the holes, bed it',
      how: `Take everything off. ${ask('transom_build') === 'cored' ? 'Seal the edge of every hole with epoxy where it cuts core. ' : ''}Chamfer the outer edges, clean, dry. Lay the backing plates in their epoxy inside and let it harden. Then sealant round every hole and on the flange, all bolts in, nuts hand tight only.`,
      why: 'The chamfer holds a ring of sealant where water would come in; squeezed dry at once, it holds none.',
      tools: 'Countersink, rags, solvent, epoxy, sealant, gloves',
      hands: 'Two: one inside',
      check: 'Sealant comes out all round every flange.',
      otherwise: 'Take that flange off, clean it, lay more.',
      caution: 'Solvent and epoxy: gloves, air, no flame. Read what stands on the tin.',
    },
    ...tightened.map(
      ({ name, what, why }, i): WorkStep => ({
        name: keyOf(`tighten ${name}`),
        title: `Tighten, ${i + 1} of ${tightened.length}: ${TITLE[name] ?? name}`,
        how: what,
        why,
        tools: 'Torque wrench, spanner, paste against seizing',
        hands: name.startsWith('hull') ? 'Two: one inside' : 'One',
        check: name.startsWith('hull')
          ? 'Plastic and laminate do not give; the flange lies flat.'
          : 'Nothing has moved: the bob reads as before.',
        otherwise: name.startsWith('hull')
          ? 'Stop turning when plastic or laminate begins to give. Put a larger plate, or call the yard.'
          : 'Slacken it, let the part find its place, begin again.',
      }),
    ),
    {
      name: 'final',
      title: 'Last look',
      how: 'Hang the bob. Swing both rudders hard over. Put the drive unit on. Fit the collar or through pin and the line to a strong point. Look inside for drops with water against the transom.',
      why: 'What is found now is found in harbour.',
      tools: 'Plumb bob, tape, hose',
      hands: 'Two',
      check: 'Everything swings free, the line is on, no drop comes in. The handover record is filled in.',
      otherwise:
        'Take the bolt out, dry the hole, bed it again. A leak you cannot find: call the yard before you sail.',
      stop: 'sealed',
    },
  ];
}

const TITLE: Readonly<Record<string, string>> = {
  'hull, lower': 'hull bolts of the lower bracket',
  'hull, feet': 'hull bolts at the feet',
  tubes: 'clamps on the tubes',
  hinges: 'hinges',
  shaft: 'shaft clamps',
};
