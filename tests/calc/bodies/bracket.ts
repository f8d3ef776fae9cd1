import { cross, normal, rad, solve, sub, times, unit, type V } from '../apart/geometry.ts';
import { type Flange, gathered, type Load, pulls, shears } from './flange.ts';

/** What a plan comes to by name, in base units. */
export type Ask = (name: string) => number;

/** Most pull and most shear of one bolt over every load and sign, N. */
export interface Worst {
  readonly tension: number;
  readonly shear: number;
}

const worstOf = (loads: readonly (readonly [Flange, Load])[]): Worst => ({
  tension: Math.max(...loads.flatMap(([flange, load]) => pulls(flange, load))),
  shear: Math.max(...loads.flatMap(([flange, load]) => shears(flange, load))),
});

/** Parts of a force aft and to starboard, at stall and hard over, in every sign. */
const everySign = (n: Ask): (readonly [aft: number, side: number])[] =>
  [
    [n('drag_ratio'), 1],
    [Math.sin(rad(n('vane_rudder_swing'))), Math.cos(rad(n('vane_rudder_swing')))],
  ].flatMap(([aft = 0, side = 0]) =>
    [-1, 1].flatMap((a) => [-1, 1].map((b) => [a * aft, b * side] as const)),
  );

/** A flange on the face at a place, its directions from the face there. */
function flangeAt(
  n: Ask,
  y: number,
  z: number,
  width: number,
  height: number,
  bolts: Flange['bolts'],
): Flange {
  const out = normal(y, z, n('transom_rake'), n('transom_camber_radius'));
  const level = unit(cross([0, 0, 1], out));
  return { out, level, up: cross(out, level), width, height, bolts };
}

const footPin = (n: Ask, which: string): V => [
  n(`${which}_foot_pin_x`),
  n(`${which}_foot_pin_y`),
  n(`${which}_foot_pin_z`),
];

/** Both struts: where they hold the clamp, and which way they run from there to their feet. */
function strutsOf(n: Ask): readonly { readonly which: string; readonly pin: V; readonly way: V }[] {
  const z = n('upper_bracket_height');
  return ['port', 'starboard'].map((which) => {
    const pin: V = [n('pin_x'), n(`${which}_pin_y`), z];
    return { which, pin, way: unit(sub(footPin(n, which), pin)) };
  });
}

/** What two struts push along themselves, from clamp to foot, under a level force that the shaft puts on the clamp. */
function pushes(n: Ask, aft: number, side: number): number[] {
  const ways = strutsOf(n).map((it) => it.way);
  return solve(
    [0, 1].map((i) => ways.map((way) => way[i] as number)),
    [aft, side],
  );
}

/**
 * The lower bracket: the shaft puts the lower reaction on it at the axis; the struts, which hold the shaft at their pins and
 * not at the axis, leave a turn about the vertical that the lower clamp alone can hold; and the shaft slides along itself.
 */
export function lowerBolts(n: Ask): Worst {
  const half = n('lower_bolt_spacing') / 2;
  const flange = flangeAt(
    n,
    n('shaft_offset'),
    n('lower_bracket_height'),
    n('lower_flange_width'),
    n('lower_flange_height'),
    [
      [-half, 0],
      [half, 0],
    ],
  );
  const axis: V = [n('standoff'), 0, 0];
  const upper: V = [n('upper_axis_x'), n('upper_clamp_offset'), n('upper_bracket_height')];
  const [reaction, back] = [n('lower_reaction'), n('upper_reaction')];
  return worstOf(
    everySign(n).flatMap(([aft, side]) => {
      let turn = 0;
      if (n('strut_count') === 2) {
        // The shaft presses on the upper clamp against what it presses on the lower one; the struts push back at their pins.
        const pushed = pushes(n, -back * aft, -back * side);
        strutsOf(n).forEach(({ pin, way }, i) => {
          turn += cross(sub(pin, upper), times(way, -(pushed[i] as number)))[2];
        });
      }
      return [-1, 1].map((up) => {
        const force: V = [reaction * aft, reaction * side, up * n('clamp_slip')];
        return [flange, gathered([[axis, force]], [0, 0, turn])] as const;
      });
    }),
  );
}

/** A foot's bolts: two columns, their rows in the middle of equal strips of the flange, as the hole table marks them. */
function boltsOfFoot(n: Ask): Flange['bolts'] {
  const rows = n('foot_bolt_count') / 2;
  return Array.from({ length: rows }, (_, i) => (i + 0.5) / rows - 0.5).flatMap((share) =>
    [-0.5, 0.5].map((side) => [side * n('foot_bolt_spacing'), share * n('foot_height')] as const),
  );
}

/** The feet in use: a hinged strut pushes at its pin; a single strut clamped rigid hands on what holds the shaft where it is. */
export function footBolts(n: Ask): Worst {
  const back = n('upper_reaction');
  const footAt = (which: string) => {
    const [y, z] = [n(`${which}_foot_y`), n(`${which}_foot_height`)];
    const flange = flangeAt(n, y, z, n('foot_width'), n('foot_height'), boltsOfFoot(n));
    return { flange, middle: sub(footPin(n, which), times(flange.out, n('foot_standoff'))) };
  };
  if (n('strut_count') === 2) {
    const feet = strutsOf(n).map((it) => ({ ...it, ...footAt(it.which) }));
    return worstOf(
      everySign(n).flatMap(([aft, side]) => {
        const pushed = pushes(n, back * aft, back * side);
        return feet.map(({ flange, middle, which, way }, i) => {
          const at = sub(footPin(n, which), middle);
          return [flange, gathered([[at, times(way, pushed[i] as number)]])] as const;
        });
      }),
    );
  }
  const { flange, middle } = footAt('single');
  const axis: V = [n('upper_axis_x'), n('upper_clamp_offset'), n('upper_bracket_height')];
  const pin: V = [n('pin_x'), n('upper_clamp_offset'), n('upper_bracket_height')];
  const strut = sub(pin, footPin(n, 'single'));
  return worstOf(
    everySign(n).map(([aft, side]) => {
      // Fore and aft the force runs along the strut, whose rise leaves the clamp to hold the rest.
      const lengthwise: V = times([strut[0], 0, strut[2]], (back * aft) / strut[0]);
      return [
        flange,
        gathered([
          [sub(axis, middle), [0, back * side, 0]],
          [sub(pin, middle), lengthwise],
        ]),
      ] as const;
    }),
  );
}
