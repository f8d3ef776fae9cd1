import type { LimitName } from '../../../src/plan/names.ts';
import { Draw } from '../apart/apart.ts';

export type Mount = Readonly<Record<string, number | boolean>>;

/** A mount drawn at random about the middle of what is usual: rakes of both signs, curved faces, leans, one strut and two. */
export function mountOf(seed: number): Mount {
  const it = new Draw(seed * 7919 + 13);
  // The first figures of seeds in a row are much alike.
  for (let i = 0; i < 5; i++) it.share();
  const two = it.share() < 0.5;
  const height = it.between(600, 900);
  const spacing = it.between(90, 200);
  const feet = it.between(40, 110);
  const offset = it.between(-60, 60);
  const spread = it.between(100, 420);
  return {
    transom_rake: it.between(-35, 35),
    transom_camber_radius: it.share() < 0.4 ? 0 : it.between(1800, 6000),
    transom_top: 1400,
    transom_bottom: -200,
    transom_half_breadth: 900,
    transom_half_breadth_low: 700,
    drag_ratio: it.between(0.15, 0.6),
    vane_rudder_swing: it.between(20, 90),
    boat_speed: it.between(6, 12),
    lower_flange_hinged: it.share() < 0.6,
    lower_reach: it.between(90, 260),
    lower_flange_height: it.between(80, 220),
    lower_bolt_spacing: spacing,
    lower_flange_width: spacing + it.between(33, 90),
    foot_bolt_spacing: feet,
    foot_width: feet + it.between(33, 80),
    foot_height: it.between(50, 160),
    foot_bolt_count: it.one([2, 2, 4, 6]),
    foot_standoff: it.between(20, 80),
    pin_forward: it.between(-90, 90),
    pin_half_width: it.between(20, 90),
    gear_mass: it.between(15, 60),
    shim_count: it.whole(0, 6),
    shaft_offset: offset,
    shaft_lean: it.between(-4, 4),
    shaft_side_lean: it.between(-2, 2),
    lower_bracket_height: it.between(180, 320),
    upper_bracket_height: height,
    shaft_foot_height: 100,
    shaft_length: 1000,
    strut_count: two ? 2 : 1,
    port_foot_y: offset - spread,
    starboard_foot_y: offset + spread + it.between(-60, 60),
    port_foot_height: height + it.between(-60, 60),
    starboard_foot_height: height + it.between(-60, 60),
    single_foot_y: offset + it.between(-30, 30),
    single_foot_height: height + it.between(-60, 60),
    strut_supply_length: 1200,
    single_strut_max: 900,
  };
}

/** Limits that say whether struts and holes can be as they are drawn. */
export const FITS: readonly LimitName[] = [
  'flange_yaw',
  'lower_bracket_edge',
  'flanges_apart',
  'lower_hole_edge',
  'foot_hole_edge',
  'strut_spread',
  ...(['port', 'starboard', 'single'] as const).flatMap((it): LimitName[] => [
    `${it}_strut_cut`,
    `${it}_strut_run`,
    `${it}_strut_rise`,
    `${it}_foot_edge`,
  ]),
];
