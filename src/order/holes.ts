import { NoAnswer } from '../calc/answer.ts';
import { holeOnFace } from '../calc/fasteners/hole-on-face.ts';
import type { Profile } from '../calc/transom/profile.ts';
import type { Units } from '../plan/plan.ts';
import { type Ask, numberOf, numbersOf } from './ask.ts';
import { flangeOf } from './bolt-pattern.ts';
import { feetInUse, type Place, placeWords } from './feet.ts';
import { type Marked, marked } from './marked.ts';
import { missingSentence } from './missing.ts';
import { length } from './words.ts';

/** One hole through the transom, as one marks it on the outside. */
export interface Hole {
  /** As every sheet numbers it, from 1. */
  readonly number: number;
  readonly place: Place;
  /** `Port foot, port`, with the row when there are several. */
  readonly name: string;
  readonly column: 'port' | 'starboard';
  readonly row: number;
  /** Which side of the centreline the mark is on; lengths to a side are given without a sign. */
  readonly side: 'to port' | 'to starboard' | 'on the centreline';
  /** From the centreline, straight across and with a tape laid level along the face. */
  readonly across: Marked;
  readonly acrossFace: Marked;
  /** From the waterline mark, plumb and with a tape laid up the face; negative below it. */
  readonly height: Marked;
  readonly upFace: Marked;
}

export interface Holes {
  readonly holes: readonly Hole[];
  /** Why a place has no holes, one sentence each. */
  readonly unanswered: readonly string[];
  /** What the one who marks must know. */
  readonly notes: readonly string[];
}

const sideOf = (y: number): Hole['side'] =>
  y < 0 ? 'to port' : y > 0 ? 'to starboard' : 'on the centreline';

const middleNames = (place: Place) =>
  place === 'lower'
    ? (['shaft_offset', 'lower_bracket_height'] as const)
    : ([`${place}_foot_y`, `${place}_foot_height`] as const);

type Unnumbered = Omit<Hole, 'number'>;

function holesAt(ask: Ask, place: Place, profile: Profile): readonly Unnumbered[] | string {
  const what = `the holes of the ${placeWords[place].toLowerCase()}`;
  const middle = numbersOf(ask, ...middleNames(place), 'transom_rake', 'transom_camber_radius');
  const flange = flangeOf(ask, place);
  if ('missing' in middle) return missingSentence(what, middle.missing);
  if ('missing' in flange) return missingSentence(what, flange.missing);
  const [y, z, rake, radius] = middle.got;
  const found: Unnumbered[] = [];
  for (const { column, row, across, raised } of flange.bolts) {
    const at = holeOnFace({ y, z, rake, radius, profile }, across, raised);
    if (at instanceof NoAnswer) return `No answer for ${what}: ${at.why}`;
    found.push({
      place,
      name: `${placeWords[place]}, ${column}${flange.rows > 1 ? `, row ${row}` : ''}`,
      column,
      row,
      side: sideOf(at.y),
      across: marked(Math.abs(at.y)),
      acrossFace: marked(Math.abs(at.along)),
      height: marked(at.z),
      upFace: marked(at.up),
    });
  }
  return found;
}

function notesOf(ask: Ask, units: Units, places: readonly Place[]): readonly string[] {
  const notes = [
    'Every length is to the middle of a hole. Lay the brackets themselves on the marks before you drill.',
  ];
  const count = numberOf(ask, 'foot_bolt_count');
  if (count !== undefined && count > 2 && places.length > 1) {
    notes.push(
      'The rows of the feet’s bolts are spread evenly here. Measure them on the foot and mark those.',
    );
  }
  const shift = numberOf(ask, 'lower_hole_shift');
  if (shift !== undefined && Math.abs(shift) >= 0.5) {
    notes.push(
      `The lower holes run square to the raked face: behind the packing they lie at the height marked, and at the flange ${length(Math.abs(shift), units)} ${shift > 0 ? 'higher' : 'lower'}. Where the flange’s own holes are level with the clamp’s middle, mark both that much ${shift > 0 ? 'lower' : 'higher'}.`,
    );
  }
  return notes;
}

/**
 * Every hole of the brackets in use. `profile` is the measured profile when the plan follows it.
 */
export function holesOf(ask: Ask, units: Units, profile: Profile = []): Holes {
  const places: readonly Place[] = ['lower', ...feetInUse(ask)];
  const found = places.map((place) => holesAt(ask, place, profile));
  const unanswered = found.filter((it) => typeof it === 'string');
  if (feetInUse(ask).length === 0) unanswered.push(missingSentence('the holes of the feet', ['strut_count']));
  return {
    holes: found
      .flatMap((it) => (typeof it === 'string' ? [] : it))
      .map((it, i) => ({ number: i + 1, ...it })),
    unanswered,
    notes: notesOf(ask, units, places),
  };
}
