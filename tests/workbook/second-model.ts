/**
 * The model once more, written from its definitions alone in plain arithmetic: one function from inputs to every
 * result and limit. It shares no line with src, so that a slip in either shows as a difference between the two.
 */

import type { Inputs } from './model-case.ts';

export interface SecondLimit {
  readonly name: string;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly state: 'inside' | 'near' | 'outside' | 'no answer' | 'does not apply';
  readonly room: number | null;
  readonly ratio: number | null;
}

export interface SecondModel {
  /** Base units; yes/no results as 1 and 0; null where there is no answer or the result is empty. */
  readonly results: Readonly<Record<string, number | null>>;
  readonly limits: readonly SecondLimit[];
  readonly leastRatio: number | null;
  readonly unanswered: number;
}

type Point = readonly [number, number];

const RADIANS = Math.PI / 180;
const NONE = Number.NaN;

/** ISO 888, lengths without brackets; those above 200 from memory. */
const LENGTHS = [
  2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140,
  150, 160, 180, 200, 220, 240, 260, 280, 300, 320, 340, 360, 380, 400, 420, 440, 460, 480, 500,
];

/** ISO 261, ISO 4032, ISO 7089, ISO 898-1 and the medium series of ISO 273, for M6 to M12. */
const BOLTS: Readonly<
  Record<number, { pitch: number; nut: number; washer: number; washerOd: number; area: number; hole: number }>
> = {
  6: { pitch: 1, nut: 5.2, washer: 1.8, washerOd: 12, area: 20.1, hole: 6.6 },
  8: { pitch: 1.25, nut: 6.8, washer: 1.8, washerOd: 16, area: 36.6, hole: 9 },
  10: { pitch: 1.5, nut: 8.4, washer: 2.2, washerOd: 20, area: 58, hole: 11 },
  12: { pitch: 1.75, nut: 10.8, washer: 2.7, washerOd: 24, area: 84.3, hole: 13.5 },
};

/** Least value of a function that is convex on a stretch, by the golden section. */
function leastOn(from: number, to: number, f: (at: number) => number, steps = 40): number {
  const share = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [p, q] = [b - share * (b - a), a + share * (b - a)];
  let [fp, fq] = [f(p), f(q)];
  let least = Math.min(f(a), f(b), fp, fq);
  for (let step = 0; step < steps; step++) {
    if (fp < fq) {
      [b, q, fq] = [q, p, fp];
      p = b - share * (b - a);
      fp = f(p);
      least = Math.min(least, fp);
    } else {
      [a, p, fp] = [p, q, fq];
      q = a + share * (b - a);
      fq = f(q);
      least = Math.min(least, fq);
    }
  }
  return least;
}

/** What a chord swinging about one end sweeps in plan. */
interface Fan {
  readonly centre: Point;
  readonly heading: number;
  readonly half: number;
  readonly radius: number;
}

const rim = (fan: Fan, angle: number, share: number): Point => [
  fan.centre[0] + fan.radius * share * Math.cos(angle),
  fan.centre[1] + fan.radius * share * Math.sin(angle),
];

function toRadius(fan: Fan, angle: number, dx: number, dy: number): number {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const along = Math.min(fan.radius, Math.max(0, dx * ux + dy * uy));
  return Math.hypot(dx - along * ux, dy - along * uy);
}

function toFan(fan: Fan, p: Point): number {
  const [dx, dy] = [p[0] - fan.centre[0], p[1] - fan.centre[1]];
  const turned = Math.atan2(dy, dx) - fan.heading;
  const off = Math.abs(Math.atan2(Math.sin(turned), Math.cos(turned)));
  if (off <= fan.half) return Math.max(0, Math.hypot(dx, dy) - fan.radius);
  return Math.min(
    toRadius(fan, fan.heading - fan.half, dx, dy),
    toRadius(fan, fan.heading + fan.half, dx, dy),
  );
}

/** Fans whose rims do not face each other come closest on an edge of one of them. */
const edgesToFan = (edges: Fan, fan: Fan): number =>
  Math.min(
    ...[-1, 1].map((side) =>
      leastOn(0, 1, (t) => toFan(fan, rim(edges, edges.heading + side * edges.half, t))),
    ),
  );

const betweenFans = (a: Fan, b: Fan): number => Math.min(edgesToFan(a, b), edgesToFan(b, a));

export function secondModel(inputs: Inputs): SecondModel {
  const n = (name: string): number => {
    const value = inputs[name];
    if (typeof value !== 'number') throw new Error(`${name} is not a number.`);
    return value;
  };
  const yes = (name: string): boolean => inputs[name] === true;

  // Place.
  const rake = n('transom_rake') * RADIANS;
  const [tanR, cosR] = [Math.tan(rake), Math.cos(rake)];
  const lean = n('shaft_lean') * RADIANS;
  const tanLean = Math.tan(lean);
  const tanAside = Math.tan(n('shaft_side_lean') * RADIANS);
  const c = 1 / Math.hypot(1, tanLean, tanAside);
  const radius = n('transom_camber_radius');
  const offset = n('shaft_offset');
  const zL = n('lower_bracket_height');
  const zU = n('upper_bracket_height');
  const footHeight = n('shaft_foot_height');
  const length = n('shaft_length');
  const [bottom, top] = [n('transom_bottom'), n('transom_top')];

  const sag = (y: number): number => (radius === 0 ? 0 : radius - Math.sqrt(radius * radius - y * y));
  const face = (y: number, z: number): number => z * tanR - sag(y);

  const shimStack = n('shim_count') * n('shim_thickness');
  const wedge = yes('lower_flange_hinged')
    ? 0
    : n('wedge_edge') + 0.5 * n('lower_flange_height') * c * Math.abs(tanR - tanLean);
  const standoff = shimStack / cosR + wedge + n('lower_reach');
  const shaftX = face(offset, zL) + standoff;
  const axis = (z: number): number => shaftX + (z - zL) * tanLean;
  const aside = (z: number): number => offset + (z - zL) * tanAside;
  const bearingGap = (zL - footHeight) / c - 0.5 * n('lower_clamp_depth');
  const spacing = (zU - zL) / c;
  const shaftTop = footHeight + length * c;
  const headroom = (shaftTop - zU) / c - 0.5 * n('upper_clamp_depth') - n('drive_overlap');

  const leastOfEnds = (from: number, to: number, f: (z: number) => number): number =>
    from <= to ? Math.min(f(from), f(to)) : NONE;
  // A cambered face falls away from a straight line, so the gap bends one way only.
  const leastOver = (from: number, to: number, f: (z: number) => number): number =>
    from <= to ? leastOn(from, to, f, 60) : NONE;
  const faceGap = leastOver(
    Math.max(bottom, footHeight),
    Math.min(top, shaftTop),
    (z) => axis(z) - (0.5 * n('tube_od')) / Math.cos(lean) - face(aside(z), z),
  );
  const driveFrom = shaftTop - n('drive_overlap') * c;
  const driveGap = leastOver(driveFrom, top, (z) => axis(z) - n('drive_forward') - face(aside(z), z));

  const yaw = radius === 0 ? 0 : Math.abs(Math.asin(offset / radius)) / RADIANS;
  const heel = n('heel_angle') * RADIANS;
  const two = n('strut_count') === 2;
  const feet = two ? ['port', 'starboard'] : ['single'];
  const heeled = (y: number, z: number, apart: number): number =>
    z * Math.cos(heel) - (Math.abs(y) + 0.5 * apart) * Math.sin(heel);
  const belowMiddle = n('foot_bolt_count') > 2 ? 0.5 * n('foot_height') : 0;
  const lowestHole = Math.min(
    heeled(offset, zL, n('lower_bolt_spacing')),
    ...feet.map((it) =>
      heeled(n(`${it}_foot_y`), n(`${it}_foot_height`) - belowMiddle, n('foot_bolt_spacing')),
    ),
  );

  const edge = (y: number, z: number, width: number, height: number, halfBreadth: number): number =>
    Math.min(z - 0.5 * height - bottom, top - z - 0.5 * height, halfBreadth - Math.abs(y) - 0.5 * width);
  const footEdge = (which: string): number =>
    edge(
      n(`${which}_foot_y`),
      n(`${which}_foot_height`),
      n('foot_width'),
      n('foot_height'),
      n('transom_half_breadth'),
    );
  const bracketEdge = edge(
    offset,
    zL,
    n('lower_flange_width'),
    n('lower_flange_height'),
    n('transom_half_breadth_low'),
  );

  const flanges = [
    { y: offset, z: zL, w: n('lower_flange_width'), h: n('lower_flange_height') },
    ...feet.map((it) => ({
      y: n(`${it}_foot_y`),
      z: n(`${it}_foot_height`),
      w: n('foot_width'),
      h: n('foot_height'),
    })),
  ];
  const separations = flanges.flatMap((p, i) =>
    flanges.slice(i + 1).map((q) => {
      const gy = Math.abs(p.y - q.y) - 0.5 * (p.w + q.w);
      const gz = Math.abs(p.z - q.z) - 0.5 * (p.h + q.h);
      return gy <= 0 && gz <= 0 ? Math.max(gy, gz) : Math.hypot(Math.max(0, gy), Math.max(0, gz));
    }),
  );

  // Rudders.
  const chord = n('vane_rudder_chord');
  const span = n('vane_rudder_span');
  const drop = n('vane_rudder_drop');
  const balance = n('vane_rudder_balance');
  const vaneHead = footHeight - drop * c;
  const vaneFoot = vaneHead - span * c;
  const immersion = Math.min(1, Math.max(0, (0 - vaneFoot) / (span * c)));
  const [mainHead, mainFoot] = [n('main_rudder_head'), n('main_rudder_foot')];
  const ahead = n('rudder_stock_ahead');
  const trailing = (z: number): number =>
    n('rudder_overhang') +
    ((mainHead - z) / (mainHead - mainFoot)) * (n('rudder_overhang_foot') - n('rudder_overhang'));
  const mainChord = (z: number): number => trailing(z) + ahead;
  const apart = (z: number): number => Math.hypot(axis(z) + ahead, aside(z));

  const low = Math.max(vaneFoot, mainFoot);
  const high = Math.min(vaneHead, mainHead);
  const share = low <= high;
  const rudderGap = share ? leastOfEnds(low, high, (z) => axis(z) - balance - trailing(z)) : NONE;
  const turned = share
    ? leastOn(low, high, (z) => apart(z) - mainChord(z) - Math.max(balance, chord - balance), 60)
    : NONE;

  const swungGap = (): number => {
    if (!share || mainChord(low) <= 0 || mainChord(high) <= 0) return NONE;
    const mainHalf = n('main_rudder_swing') * RADIANS;
    const vaneHalf = n('vane_rudder_swing') * RADIANS;
    const steep = Math.tan(Math.min(mainHalf, vaneHalf));
    const swept = (z: number, heading: number, reach: number): number =>
      betweenFans(
        { centre: [0, 0], heading: 0, half: mainHalf, radius: mainChord(z) },
        { centre: [axis(z) + ahead, aside(z)], heading, half: vaneHalf, radius: reach },
      );
    const behind = leastOn(low, high, (z) => swept(z, 0, chord - balance));
    // Where the line of centres comes into a swing, or leaves it: on either side of the centreline.
    const turns = [1, -1].flatMap((side) => {
      const rate = steep * tanLean - side * tanAside;
      const at = steep * (shaftX + ahead) - side * offset;
      const z = zL - at / rate;
      return z > low && z < high ? [z] : [];
    });
    const stops = [low, ...turns.sort((p, q) => p - q), high];
    const partsAhead = stops.slice(1).map((to, i) => {
      const from = stops[i] as number;
      const middle = (from + to) / 2;
      const aft = axis(middle) + ahead;
      const faces = aft >= 0 && steep * aft >= Math.abs(aside(middle));
      return faces
        ? leastOn(from, to, (z) => apart(z) - mainChord(z) - balance, 60)
        : leastOn(from, to, (z) => swept(z, Math.PI, balance));
    });
    return Math.min(behind, ...partsAhead);
  };

  const [besideLow, besideHigh] = [Math.max(vaneHead, mainFoot), Math.min(mainHead, shaftTop)];
  const beside = besideLow <= besideHigh;
  const shaftGap = (): number => {
    if (!beside) return NONE;
    const gap = (half: number) => (z: number) => apart(z) - mainChord(z) - half;
    const parts: number[] = [];
    if (besideLow < footHeight) {
      parts.push(leastOn(besideLow, Math.min(besideHigh, footHeight), gap(0.5 * n('stock_diameter')), 60));
    }
    if (besideHigh >= footHeight) {
      parts.push(leastOn(Math.max(besideLow, footHeight), besideHigh, gap(0.5 * n('tube_od')), 60));
    }
    return Math.min(...parts);
  };

  // Struts.
  const clampY = aside(zU);
  const standoffOfFoot = n('foot_standoff');
  const strut = (which: 'port' | 'starboard' | 'single') => {
    const side = which === 'port' ? -1 : which === 'starboard' ? 1 : 0;
    const pin = [axis(zU) - n('pin_forward'), clampY + side * n('pin_half_width'), zU] as const;
    const [y, z] = [n(`${which}_foot_y`), n(`${which}_foot_height`)];
    // Where the face has curved away there is no foot.
    const across = radius === 0 ? 0 : Math.abs(y) < radius ? y / Math.sqrt(radius * radius - y * y) : NONE;
    const size = Math.sqrt(1 + across * across + tanR * tanR);
    const normal = [1 / size, across / size, -tanR / size] as const;
    const foot = [
      face(y, z) + standoffOfFoot * normal[0],
      y + standoffOfFoot * normal[1],
      z + standoffOfFoot * normal[2],
    ] as const;
    const [dx, dy, dz] = [foot[0] - pin[0], foot[1] - pin[1], foot[2] - pin[2]];
    const long = Math.hypot(dx, dy, dz);
    const u = [dx / long, dy / long, dz / long] as const;
    return {
      pin,
      foot,
      centre: [face(y, z), y, z] as const,
      normal,
      u,
      dx,
      dy,
      long,
      cut: long - 2 * n('strut_end_allowance'),
      run: pin[0] - foot[0],
      rise: Math.atan2(Math.abs(dz), Math.hypot(dx, dy)) / RADIANS,
    };
  };
  const [port, starboard, single] = [strut('port'), strut('starboard'), strut('single')];
  const cross = port.dx * starboard.dy - port.dy * starboard.dx;
  const crossUnit = cross / (Math.hypot(port.dx, port.dy) * Math.hypot(starboard.dx, starboard.dy));
  const parallel = Math.abs(crossUnit) < 1e-12;
  const spread = Math.atan2(Math.abs(cross), port.dx * starboard.dx + port.dy * starboard.dy) / RADIANS;
  const armsMeet = (): Point => {
    if (!two) return [0, 0];
    if (parallel) return [NONE, NONE];
    // The pins stand at one x, so only their distance sideways counts.
    const t = ((starboard.pin[1] - port.pin[1]) * -starboard.dx) / cross;
    return [port.pin[0] + t * port.dx - axis(zU), port.pin[1] + t * port.dy - clampY];
  };
  const [meet, meetAside] = armsMeet();

  const supply = n('strut_supply_length');
  const kerf = n('saw_kerf');
  const left = (pieces: readonly number[]): number => {
    const rest = supply - pieces.reduce((sum, it) => sum + it, 0) - kerf * (pieces.length - 1);
    return rest < 0 ? NONE : Math.max(0, rest - kerf);
  };
  const cuts = two ? [port.cut, starboard.cut] : [single.cut];
  const cuttable = cuts.every((cut) => cut > 0 && cut <= supply);
  const fromOne = left(cuts);
  const tubesNeeded = cuttable ? (Number.isNaN(fromOne) ? 2 : 1) : NONE;
  const offcut = cuttable
    ? Number.isNaN(fromOne)
      ? Math.max(...cuts.map((cut) => left([cut])))
      : fromOne
    : NONE;

  // Bolts.
  const d = n('bolt_diameter');
  const size = BOLTS[d];
  if (size === undefined) throw new Error(`There is no bolt of ${d} mm.`);
  const behind = n('flange_thickness') + n('transom_thickness') + n('bed_thickness') + n('plate_thickness');
  const lowerGrip = shimStack + wedge * cosR + behind;
  const boltLength = (grip: number): number =>
    LENGTHS.find((it) => it >= grip + 2 * size.washer + size.nut + 2 * size.pitch - 1e-9) ?? NONE;

  // Loads.
  const speed = (n('boat_speed') * 1852) / 3600;
  const q = 0.5 * n('water_density') * speed * speed * (chord / 1000) * (span / 1000);
  const sideForce = q * n('lift_coefficient') * n('dynamic_factor');
  const steeringForce = q * n('steering_lift');
  const e = drop + 0.5 * span;
  const a = bearingGap + 0.5 * n('lower_clamp_depth');
  const held = spacing > 0 && a >= 0 && zU <= shaftTop;
  const F = held ? sideForce : NONE;
  const lowerReaction = (F * (spacing + e + a)) / spacing;
  const upperReaction = (F * (e + a)) / spacing;
  const bottomBearing = (F * (length + e)) / length;
  const topBearing = (F * e) / length;
  const safety = n('load_safety');
  const dragRatio = n('drag_ratio');
  const oblique = Math.sqrt(1 + dragRatio * dragRatio);

  const stockModulus = (Math.PI * n('stock_diameter') ** 3) / 32;
  const tubeOf = (od: number, wall: number) => {
    const id = od - 2 * wall;
    const area = (Math.PI / 4) * (od * od - id * id);
    const inertia = (Math.PI / 64) * (od ** 4 - id ** 4);
    return { area, modulus: (2 * inertia) / od, gyration: Math.sqrt(inertia / area) };
  };
  const stockUse = (F * oblique * e) / stockModulus / (n('stock_yield') / safety);
  const steeringUse = held ? (steeringForce * e) / stockModulus / n('stock_fatigue') : NONE;
  const tubeUse =
    (oblique * Math.max(bottomBearing * a, topBearing * (length - a - spacing))) /
    tubeOf(n('tube_od'), n('tube_wall')).modulus /
    (n('tube_yield') / safety);

  const fy = n('strut_yield');
  const modulus = n('strut_modulus');
  /** AISC 360 E3 with K = 1. */
  const columnStrength = (tube: { area: number; gyration: number }, long: number): number => {
    const slender = long / tube.gyration;
    const fe = (Math.PI * Math.PI * modulus) / (slender * slender);
    return tube.area * (slender <= 4.71 * Math.sqrt(modulus / fy) ? 0.658 ** (fy / fe) * fy : 0.877 * fe);
  };

  const swing = n('vane_rudder_swing') * RADIANS;
  const cases = [
    { sideways: 1, along: dragRatio },
    { sideways: Math.cos(swing), along: Math.sin(swing) },
  ];
  const bolts = n('foot_bolt_count');
  const acrossArm = 0.5 * bolts * n('foot_bolt_spacing');
  const upArm = (0.5 * bolts * n('foot_height')) / (bolts > 2 ? 1.21 : 1);
  const N = (size.area * n('bolt_strength')) / n('bolt_safety');
  const packing = (t: number): number => (t <= d / 3 ? 1 : Math.min(1, (9 * d) / (8 * d + 3 * t)));
  const boltUse = (tension: number, shear: number, t: number): number =>
    Math.hypot(tension / N, shear / (0.6 * N * packing(t)));

  let [strutUse, lift, footTension, footShear, footUse] = [0, 0, 0, 0, 0];
  let [boltTension, boltShear, lowerUse] = [0, 0, 0];
  const packed = yes('shim_sleeve') ? 0 : shimStack + wedge;
  const pad = n('foot_pad');
  const foot = (tension: number, shear: number): void => {
    footTension = Math.max(footTension, tension);
    footShear = Math.max(footShear, shear);
    footUse = Math.max(footUse, boltUse(tension, shear, pad));
  };
  type Three = readonly [number, number, number];
  const dot = (p: Three, q: Three): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const crossed = (p: Three, q: Three): Three => [
    p[1] * q[2] - p[2] * q[1],
    p[2] * q[0] - p[0] * q[2],
    p[0] * q[1] - p[1] * q[0],
  ];
  const tangents = (normal: Three): { level: Three; up: Three } => {
    const flat = Math.hypot(normal[0], normal[1]);
    const level: Three = [-normal[1] / flat, normal[0] / flat, 0];
    return { level, up: crossed(normal, level) };
  };
  for (const { sideways, along } of cases) {
    if (two) {
      const tube = tubeOf(n('strut_od'), n('strut_wall'));
      for (const sx of [-1, 1]) {
        for (const sy of [-1, 1]) {
          const [px, py] = [sx * along * upperReaction, sy * sideways * upperReaction];
          // Cramer's rule on t1 h1 + t2 h2 = −P, with h the horizontal parts of the two directions.
          const det = port.u[0] * starboard.u[1] - port.u[1] * starboard.u[0];
          const t1 = parallel ? NONE : (-px * starboard.u[1] + py * starboard.u[0]) / det;
          const t2 = parallel ? NONE : (-py * port.u[0] + px * port.u[1]) / det;
          lift = Math.max(lift, Math.abs(t1 * port.u[2] + t2 * starboard.u[2]));
          for (const [t, arm] of [
            [t1, port],
            [t2, starboard],
          ] as const) {
            const strength = t > 0 ? tube.area * fy : columnStrength(tube, arm.long);
            strutUse = Math.max(strutUse, (Math.abs(t) / strength) * safety);
            const { level, up } = tangents(arm.normal);
            const pull = Math.abs(t * dot(arm.u, arm.normal));
            const [aslant, upward] = [Math.abs(t * dot(arm.u, level)), Math.abs(t * dot(arm.u, up))];
            foot(
              pull / bolts + standoffOfFoot * (aslant / acrossArm + upward / upArm),
              Math.hypot(aslant, upward) / bolts,
            );
          }
        }
      }
    } else {
      const tube = tubeOf(n('single_strut_od'), n('single_strut_wall'));
      const lever = Math.abs(single.long + n('pin_forward'));
      const bending = (upperReaction * sideways * lever) / tube.modulus / (fy / safety);
      const pushed = ((upperReaction * along) / columnStrength(tube, single.long)) * safety;
      strutUse = Math.max(strutUse, bending + pushed);
      lift = Math.max(lift, upperReaction * along * Math.tan(single.rise * RADIANS));
      const { level, up } = tangents(single.normal);
      const k = (single.pin[2] - single.foot[2]) / (single.pin[0] - single.foot[0]);
      const from = (p: Three): Three => [
        p[0] - single.centre[0],
        p[1] - single.centre[1],
        p[2] - single.centre[2],
      ];
      const held: readonly (readonly [Three, Three])[] = [
        [from([axis(zU), clampY, zU]), [0, upperReaction * sideways, 0]],
        [from(single.pin), [upperReaction * along, 0, upperReaction * along * k]],
      ];
      const sum = (f: (force: Three, moment: Three) => number): number =>
        held.reduce((all, [at, force]) => all + Math.abs(f(force, crossed(at, force))), 0);
      foot(
        sum((force) => dot(force, single.normal)) / bolts +
          sum((_, moment) => dot(moment, up)) / acrossArm +
          sum((_, moment) => dot(moment, level)) / upArm,
        Math.hypot(
          sum((force) => dot(force, level)) / bolts,
          sum((force) => dot(force, up)) / bolts + sum((_, moment) => dot(moment, single.normal)) / acrossArm,
        ),
      );
    }
  }
  const slip = lift + n('gear_mass') * 9.80665;
  for (const { sideways, along } of cases) {
    const turning =
      sideways *
        Math.max(
          lowerReaction * standoff + upperReaction * Math.max(0, meet),
          -lowerReaction * standoff - upperReaction * meet,
        ) +
      upperReaction * along * Math.abs(meetAside);
    const P = turning / n('lower_bolt_spacing') + 0.5 * lowerReaction * along;
    const tension = P * cosR + (slip * standoff) / n('lower_flange_height');
    const shear = Math.hypot(0.5 * lowerReaction * sideways, P * Math.abs(Math.sin(rake)) + 0.5 * slip);
    boltTension = Math.max(boltTension, tension);
    boltShear = Math.max(boltShear, shear);
    lowerUse = Math.max(lowerUse, boltUse(tension, shear, packed));
  }

  const coreDiameter = d - 1.22687 * size.pitch;
  const shimBending = (boltShear * 0.5 * packed) / ((Math.PI * coreDiameter ** 3) / 32);
  const reach = n('plate_thickness') * Math.sqrt(n('plate_yield') / (3 * n('laminate_strength')));
  const cored = inputs.transom_build === 'cored';
  const skin = cored && !yes('core_removed') ? n('inner_skin') : n('transom_thickness');
  const under = (tension: number, shear: number, apart: number) => {
    const p = Math.min(size.washerOd + 2 * reach, apart);
    const area = Math.min(n('plate_area'), 0.25 * Math.PI * (p * p - d * d));
    const edge = Math.min(p, Math.sqrt((4 * n('plate_area')) / Math.PI + d * d));
    return {
      plate: tension / area / n('laminate_strength'),
      skin: tension / (Math.PI * edge * skin * n('laminate_shear')),
      bearing: shear / (d * skin * n('laminate_bearing')),
    };
  };
  const lowerHull = under(boltTension, boltShear, n('lower_bolt_spacing'));
  const footHull = under(footTension, footShear, n('foot_bolt_spacing'));

  const coreReady = !cored || yes('core_removed');
  const retained = yes('stop_collar') && yes('lanyard');

  const raw: Record<string, number> = {
    shim_stack: shimStack,
    wedge_middle: wedge,
    standoff,
    shaft_x: shaftX,
    shaft_top_height: shaftTop,
    bearing_gap: bearingGap,
    bracket_spacing: spacing,
    drive_headroom: headroom,
    shaft_face_gap: faceGap,
    drive_face_gap: driveGap,
    flange_yaw: yaw,
    lowest_hole: lowestHole,
    lower_bracket_edge: bracketEdge,
    port_foot_edge: footEdge('port'),
    starboard_foot_edge: footEdge('starboard'),
    single_foot_edge: footEdge('single'),
    flanges_apart: Math.min(...separations),
    lower_hole_edge: 0.5 * (n('lower_flange_width') - n('lower_bolt_spacing')),
    foot_hole_edge: 0.5 * (n('foot_width') - n('foot_bolt_spacing')),
    vane_rudder_head: vaneHead,
    rudder_immersion: immersion,
    rudder_gap: rudderGap,
    rudder_gap_swung: swungGap(),
    rudder_gap_turned: turned,
    rudder_gap_vertical: share ? NONE : low - high,
    shaft_gap: shaftGap(),
    port_strut_cut: port.cut,
    starboard_strut_cut: starboard.cut,
    single_strut_cut: single.cut,
    port_strut_run: port.run,
    starboard_strut_run: starboard.run,
    single_strut_run: single.run,
    port_strut_rise: port.rise,
    starboard_strut_rise: starboard.rise,
    single_strut_rise: single.rise,
    strut_spread: spread,
    arms_meet: meet,
    arms_meet_aside: meetAside,
    strut_tubes_needed: tubesNeeded,
    strut_offcut: offcut,
    lower_bolt_grip: lowerGrip,
    lower_bolt_length: boltLength(lowerGrip),
    foot_bolt_length: boltLength(pad + behind),
    side_force: sideForce,
    steering_force: steeringForce,
    lower_reaction: lowerReaction,
    upper_reaction: upperReaction,
    bottom_bearing_force: bottomBearing,
    top_bearing_force: topBearing,
    stock_utilisation: stockUse,
    stock_steering_utilisation: steeringUse,
    tube_utilisation: tubeUse,
    strut_utilisation: strutUse,
    clamp_slip: slip,
    bolt_tension: boltTension,
    bolt_shear: boltShear,
    bolt_utilisation: lowerUse,
    foot_bolt_tension: footTension,
    foot_bolt_shear: footShear,
    foot_bolt_utilisation: footUse,
    shim_bolt_bending: shimBending,
    plate_utilisation: lowerHull.plate,
    skin_utilisation: lowerHull.skin,
    skin_bearing_utilisation: lowerHull.bearing,
    foot_plate_utilisation: footHull.plate,
    foot_skin_utilisation: footHull.skin,
    foot_bearing_utilisation: footHull.bearing,
    core_ready: coreReady ? 1 : 0,
    retained: retained ? 1 : 0,
  };
  const results: Record<string, number | null> = {};
  for (const [name, value] of Object.entries(raw)) results[name] = Number.isFinite(value) ? value : null;

  // Limits.
  const limits: SecondLimit[] = [];
  interface Rule {
    readonly low?: number;
    readonly high?: number;
    readonly near?: number;
    readonly applies?: boolean;
    /** Yes/no: a state alone. */
    readonly alone?: true;
    /** The low bound itself is outside. */
    readonly above?: true;
    /** Past, and without room, when not above 0. */
    readonly exists?: true;
    readonly value?: number | null;
  }
  type Standing = readonly [state: SecondLimit['state'], room: number | null, ratio: number | null];
  const standing = (value: number | null, rule: Rule): Standing => {
    if (rule.applies === false) return ['does not apply', null, null];
    if (value === null) return ['no answer', null, null];
    if (rule.exists && value <= 0) return ['outside', null, null];
    const room = Math.min(
      rule.low === undefined ? Number.POSITIVE_INFINITY : value - rule.low,
      rule.high === undefined ? Number.POSITIVE_INFINITY : rule.high - value,
    );
    const outside = room < 0 || (rule.above === true && room === 0);
    if (rule.alone) return [outside ? 'outside' : 'inside', null, null];
    const span =
      rule.low !== undefined && rule.high !== undefined
        ? rule.high - rule.low
        : Math.abs(rule.low ?? rule.high ?? NONE);
    // Two bounds that meet leave no span; the model is silent, and a bound of 0 shows the way.
    const ratio = room / (span === 0 ? 100 : span);
    return [outside ? 'outside' : room < (rule.near ?? 0) ? 'near' : 'inside', room, ratio];
  };
  const limit = (name: string, rule: Rule): void => {
    const judged = rule.value === undefined ? (results[name] ?? null) : rule.value;
    const [state, room, ratio] = standing(judged, rule);
    const applies = state !== 'does not apply';
    const [value, low, high] = applies ? [judged, rule.low ?? null, rule.high ?? null] : [null, null, null];
    limits.push({ name, value, low, high, state, room, ratio });
  };

  const gapMin = n('rudder_gap_min');
  limit('rudder_gap', { low: gapMin, near: 10, applies: share });
  limit('rudder_gap_swung', { low: gapMin, near: 10, applies: share });
  limit('rudder_gap_vertical', { low: gapMin, near: 10, applies: !share });
  limit('shaft_gap', { low: gapMin, near: 10, applies: beside });
  limit('shaft_face_gap', { low: n('face_gap_min'), near: 10 });
  limit('drive_face_gap', { low: n('face_gap_min'), near: 10, applies: driveFrom <= top });
  limit('bearing_gap', { low: n('bearing_gap_min'), high: n('bearing_gap_max'), near: 10 });
  limit('bracket_spacing', { low: n('spacing_min'), near: 10 });
  limit('drive_headroom', { low: n('drive_gap_min'), near: 5 });
  limit('rudder_immersion', { low: n('immersion_min'), alone: true });
  limit('shaft_lean', { low: -n('lean_max'), high: n('lean_max'), near: 0.2, value: n('shaft_lean') });
  limit('lowest_hole', { low: n('hole_freeboard_min'), near: 10 });
  limit('shim_stack', { high: n('shim_stack_max'), near: 5 });
  limit('flange_yaw', { high: n('flange_yaw_max'), near: 0.3 });
  limit('strut_spread', { low: n('spread_min'), high: n('spread_max'), near: 3, applies: two });
  const inUse = { port: two, starboard: two, single: !two };
  for (const [which, applies] of Object.entries(inUse)) {
    const longest = which === 'single' ? n('single_strut_max') : supply;
    limit(`${which}_strut_cut`, { high: longest, near: 10, exists: true, applies });
    limit(`${which}_strut_run`, { low: 0, near: 10, above: true, applies });
    limit(`${which}_strut_rise`, { high: n('strut_rise_max'), near: 3, applies });
    limit(`${which}_foot_edge`, { low: 0, near: 10, applies });
  }
  limit('strut_tubes_needed', { high: n('strut_supply_count'), alone: true });
  limit('lower_bracket_edge', { low: 0, near: 10 });
  limit('flanges_apart', { low: 0, near: 10 });
  limit('lower_hole_edge', { low: 1.2 * size.hole, near: 2 });
  limit('foot_hole_edge', { low: 1.2 * size.hole, near: 2 });
  for (const what of [
    'stock',
    'stock_steering',
    'tube',
    'strut',
    'bolt',
    'plate',
    'skin',
    'skin_bearing',
    'foot_bolt',
    'foot_plate',
    'foot_skin',
    'foot_bearing',
  ]) {
    limit(`${what}_utilisation`, { high: 1, near: 0.1 });
  }
  limit('core_ready', { low: 1, alone: true });
  limit('retained', { low: 1, alone: true });
  limit('shaft_side_lean', {
    low: -n('lean_max'),
    high: n('lean_max'),
    near: 0.2,
    value: n('shaft_side_lean'),
  });

  let leastRatio: number | null = null;
  for (const { state, ratio } of limits) {
    const counted = ratio ?? (state === 'outside' ? -1 : null);
    if (counted !== null && (leastRatio === null || counted < leastRatio)) leastRatio = counted;
  }
  return {
    results,
    limits,
    leastRatio,
    unanswered: limits.filter((it) => it.state === 'no answer').length,
  };
}
