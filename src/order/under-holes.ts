import type { InputName } from '../plan/names.ts';
import type { Ask } from './ask.ts';
import { feetInUse, type Place } from './feet.ts';

/** What any hole is marked, sized and drilled through by. */
const ANY: readonly InputName[] = [
  ...([
    'transom_rake',
    'transom_camber_radius',
    'transom_thickness',
    'transom_build',
    'bolt_diameter',
  ] as const),
];

const PATTERN: Readonly<Record<'lower' | 'foot', readonly InputName[]>> = {
  lower: ['lower_bolt_spacing', 'lower_flange_width', 'lower_flange_height'],
  foot: ['foot_bolt_spacing', 'foot_bolt_count', 'foot_width', 'foot_height'],
};

/** Inputs under the holes of one place: a stand-in among them puts or makes a hole wrongly. */
export const underHolesOf = (place: Place): readonly InputName[] => [
  ...ANY,
  ...(place === 'lower'
    ? ([...PATTERN.lower, 'lower_bracket_height', 'shaft_offset'] as const)
    : ([...PATTERN.foot, `${place}_foot_y`, `${place}_foot_height`] as const)),
];

/** What a face that follows its survey rests on besides. */
const SURVEY: readonly InputName[] = [
  ...(['tape_zero_height', 'list_reading'] as const),
  ...(['trim_mark_stern', 'trim_mark_forward', 'trim_mark_span'] as const),
];

/** Inputs under the holes of all places in use, each once. */
export const underHoles = (ask: Ask): readonly InputName[] => [
  ...new Set([
    ...(['lower', ...feetInUse(ask)] as const).flatMap(underHolesOf),
    ...(ask('face_followed') === true ? SURVEY : []),
  ]),
];
