import { radians } from '../../src/calc/angle.ts';
import { type Answer, NoAnswer } from '../../src/calc/answer.ts';
import { offcut as offcutOf, tubesNeeded as tubesNeededOf } from '../../src/calc/cutting/cut.ts';
import { boltLength as boltLengthOf } from '../../src/calc/fasteners/bolt-length.ts';
import {
  oneFootBoltShareRecord,
  oneFootBoltShearRecord,
  oneFootBoltTensionRecord,
  twoFootBoltShareRecord,
  twoFootBoltShearRecord,
  twoFootBoltTensionRecord,
} from '../../src/calc/fasteners/foot-bolts.ts';
import {
  lowerBoltShare as lowerBoltShareOf,
  lowerBoltShear as lowerBoltShearOf,
  lowerBoltTension as lowerBoltTensionOf,
} from '../../src/calc/fasteners/lower-bolts.ts';
import { plateShare as plateShareOf, skinShare as skinShareOf } from '../../src/calc/fasteners/plate.ts';
import { shimBoltBending as shimBoltBendingOf } from '../../src/calc/fasteners/shim-bolt-bending.ts';
import { judge, type Verdict } from '../../src/calc/limits/judge.ts';
import { heldForce as heldForceOf } from '../../src/calc/loads/held-force.ts';
import {
  bottomBearingForce as bottomBearingForceOf,
  lowerReaction as lowerReactionOf,
  topBearingForce as topBearingForceOf,
  upperReaction as upperReactionOf,
} from '../../src/calc/loads/reactions.ts';
import { waterForce as waterForceOf } from '../../src/calc/loads/water-force.ts';
import { rudderGap as rudderGapOf } from '../../src/calc/rudders/gap.ts';
import { rudderGapSwung as rudderGapSwungOf } from '../../src/calc/rudders/gap-swung.ts';
import { rudderGapTurned as rudderGapTurnedOf } from '../../src/calc/rudders/gap-turned.ts';
import { immersion as immersionOf } from '../../src/calc/rudders/immersion.ts';
import {
  shaftBesideRudder as shaftBesideRudderOf,
  shaftGap as shaftGapOf,
} from '../../src/calc/rudders/shaft-gap.ts';
import {
  rudderGapVertical as rudderGapVerticalOf,
  ruddersShareHeight as ruddersShareHeightOf,
} from '../../src/calc/rudders/shared-height.ts';
import {
  roundBendingShare as roundBendingShareOf,
  tubeBendingShare as tubeBendingShareOf,
} from '../../src/calc/section/bending-share.ts';
import { alongShaft as alongShaftOf } from '../../src/calc/shaft/along-shaft.ts';
import { axisX as axisXOf } from '../../src/calc/shaft/axis-x.ts';
import { faceGap as faceGapOf } from '../../src/calc/shaft/face-gap.ts';
import { lowestHole as lowestHoleOf } from '../../src/calc/shaft/lowest-hole.ts';
import { standoff as standoffOf } from '../../src/calc/shaft/standoff.ts';
import { upright as uprightOf } from '../../src/calc/shaft/upright.ts';
import { wedgeMiddle as wedgeMiddleOf } from '../../src/calc/shaft/wedge-middle.ts';
import { armsMeet as armsMeetOf, strutSpread as strutSpreadOf } from '../../src/calc/struts/arms.ts';
import {
  oneStrutLift as oneStrutLiftOf,
  twoStrutLift as twoStrutLiftOf,
} from '../../src/calc/struts/clamp-lift.ts';
import { footPin } from '../../src/calc/struts/foot-pin.ts';
import { pinToPin as pinToPinOf } from '../../src/calc/struts/pin-to-pin.ts';
import { strutRise as strutRiseOf } from '../../src/calc/struts/rise.ts';
import {
  oneStrutShare as oneStrutShareOf,
  twoStrutShare as twoStrutShareOf,
} from '../../src/calc/struts/share.ts';
import { edgeDistance as edgeDistanceOf } from '../../src/calc/transom/edge-distance.ts';
import { faceSlope as faceSlopeOf } from '../../src/calc/transom/face-slope.ts';
import { faceX as faceXOf } from '../../src/calc/transom/face-x.ts';
import { flangeYaw as flangeYawOf } from '../../src/calc/transom/flange-yaw.ts';

/** What the plan is worked out from, base units. */
export interface PlainInputs {
  transom_rake: number;
  transom_top: number;
  transom_bottom: number;
  transom_half_breadth: number;
  transom_half_breadth_low: number;
  transom_camber_radius: number;
  transom_thickness: number;
  transom_build: string;
  inner_skin: number;
  core_removed: boolean;
  main_rudder_head: number;
  main_rudder_foot: number;
  rudder_overhang: number;
  rudder_overhang_foot: number;
  rudder_stock_ahead: number;
  main_rudder_swing: number;
  boat_speed: number;
  dynamic_factor: number;
  water_density: number;
  heel_angle: number;
  shaft_length: number;
  tube_od: number;
  tube_wall: number;
  tube_yield: number;
  stock_diameter: number;
  stock_yield: number;
  stock_fatigue: number;
  bearing_gap_min: number;
  bearing_gap_max: number;
  spacing_min: number;
  lower_clamp_depth: number;
  upper_clamp_depth: number;
  drive_overlap: number;
  drive_forward: number;
  drive_gap_min: number;
  face_gap_min: number;
  lower_reach: number;
  lower_flange_height: number;
  lower_flange_width: number;
  lower_flange_hinged: boolean;
  flange_yaw_max: number;
  lower_bolt_spacing: number;
  flange_thickness: number;
  shim_stack_max: number;
  shim_sleeve: boolean;
  pin_forward: number;
  pin_half_width: number;
  foot_standoff: number;
  foot_width: number;
  foot_height: number;
  foot_bolt_count: number;
  foot_bolt_spacing: number;
  foot_pad: number;
  strut_end_allowance: number;
  spread_min: number;
  spread_max: number;
  strut_rise_max: number;
  strut_od: number;
  strut_wall: number;
  single_strut_od: number;
  single_strut_wall: number;
  strut_yield: number;
  strut_modulus: number;
  strut_supply_length: number;
  strut_supply_count: number;
  single_strut_max: number;
  saw_kerf: number;
  bolt_diameter: number;
  bolt_strength: number;
  bolt_safety: number;
  plate_area: number;
  plate_thickness: number;
  plate_yield: number;
  laminate_strength: number;
  laminate_shear: number;
  bed_thickness: number;
  vane_rudder_span: number;
  vane_rudder_drop: number;
  vane_rudder_chord: number;
  vane_rudder_balance: number;
  vane_rudder_swing: number;
  lift_coefficient: number;
  steering_lift: number;
  drag_ratio: number;
  load_safety: number;
  gear_mass: number;
  stop_collar: boolean;
  lanyard: boolean;
  upper_bracket_height: number;
  strut_count: number;
  port_foot_y: number;
  port_foot_height: number;
  starboard_foot_y: number;
  starboard_foot_height: number;
  single_foot_y: number;
  single_foot_height: number;
  lower_bracket_height: number;
  shaft_offset: number;
  shaft_lean: number;
  shaft_side_lean: number;
  shaft_foot_height: number;
  shim_count: number;
  shim_thickness: number;
  wedge_edge: number;
  rudder_gap_min: number;
  immersion_min: number;
  lean_max: number;
  hole_freeboard_min: number;
}

/** What it comes to: every result in the workbook's order, and every limit, NaN where there is none. */
export interface PlainAnswers {
  readonly results: Float64Array;
  readonly states: string[];
  readonly rooms: Float64Array;
  readonly ratios: Float64Array;
}

const known = (answer: Answer): number => (answer instanceof NoAnswer ? Number.NaN : answer);

const valueAt = (value: number): number | undefined => (Number.isNaN(value) ? undefined : value);

const NOWHERE = { x: Number.NaN, y: Number.NaN, z: Number.NaN };

function pinOf(y: number, z: number, it: PlainInputs) {
  const pin = footPin(y, z, it.foot_standoff, it.transom_rake, it.transom_camber_radius);
  return pin instanceof NoAnswer ? NOWHERE : pin;
}

function put(to: PlainAnswers, i: number, verdict: Verdict): void {
  to.states[i] = verdict.state;
  to.rooms[i] = verdict.room ?? Number.NaN;
  to.ratios[i] = verdict.ratio ?? Number.NaN;
}

/**
 * The workbook's own plan as somebody would write it by hand, with the same library and no formula engine: what the
 * replay's speed is measured against. It keeps none of the engine's rounding, checks no bounds and tells no reasons.
 */
export function plainPlan(it: PlainInputs, to: PlainAnswers): void {
  const shimStack = it.shim_count * it.shim_thickness;
  const transomSlope = faceSlopeOf(it.lower_bracket_height, it.transom_rake);
  const wedgeMiddle = wedgeMiddleOf(
    it.lower_flange_hinged,
    it.wedge_edge,
    it.lower_flange_height,
    it.shaft_lean,
    transomSlope,
  );
  const standoff = standoffOf(shimStack, transomSlope, wedgeMiddle, it.lower_reach);
  const shaftX =
    known(faceXOf(it.shaft_offset, it.lower_bracket_height, it.transom_rake, it.transom_camber_radius)) +
    standoff;
  const shaftTopHeight = it.shaft_foot_height + uprightOf(it.shaft_length, it.shaft_lean);
  const bearingGap =
    alongShaftOf(it.shaft_foot_height, it.lower_bracket_height, it.shaft_lean) - it.lower_clamp_depth / 2;
  const bracketSpacing = alongShaftOf(it.lower_bracket_height, it.upper_bracket_height, it.shaft_lean);
  const driveHeadroom =
    alongShaftOf(it.upper_bracket_height, shaftTopHeight, it.shaft_lean) -
    it.upper_clamp_depth / 2 -
    it.drive_overlap;
  const upperClampOffset =
    it.shaft_offset +
    (it.upper_bracket_height - it.lower_bracket_height) * Math.tan((it.shaft_side_lean * Math.PI) / 180);
  const shaftFaceGap = known(
    faceGapOf(
      it.tube_od / 2 / Math.cos(radians(it.shaft_lean)),
      Math.max(it.transom_bottom, it.shaft_foot_height),
      Math.min(it.transom_top, shaftTopHeight),
      it.shaft_offset,
      shaftX,
      it.lower_bracket_height,
      it.shaft_lean,
      it.transom_rake,
      it.transom_camber_radius,
    ),
  );
  const driveInReach = shaftTopHeight - it.drive_overlap * Math.cos(radians(it.shaft_lean)) <= it.transom_top;
  const driveFaceGap = known(
    faceGapOf(
      it.drive_forward,
      shaftTopHeight - it.drive_overlap * Math.cos(radians(it.shaft_lean)),
      it.transom_top,
      it.shaft_offset,
      shaftX,
      it.lower_bracket_height,
      it.shaft_lean,
      it.transom_rake,
      it.transom_camber_radius,
    ),
  );
  const flangeYaw = known(flangeYawOf(it.shaft_offset, it.transom_camber_radius));
  const lowestHole = lowestHoleOf(
    it.lower_bracket_height,
    it.heel_angle,
    it.shaft_offset,
    it.lower_bolt_spacing,
  );
  const vaneRudderHead = it.shaft_foot_height - uprightOf(it.vane_rudder_drop, it.shaft_lean);
  const vaneRudderFoot = vaneRudderHead - uprightOf(it.vane_rudder_span, it.shaft_lean);
  const rudderImmersion = immersionOf(vaneRudderHead, vaneRudderFoot);
  const ruddersShareHeight = ruddersShareHeightOf(
    vaneRudderHead,
    vaneRudderFoot,
    it.main_rudder_head,
    it.main_rudder_foot,
  );
  const rudderGap = known(
    rudderGapOf(
      it.vane_rudder_balance,
      vaneRudderHead,
      vaneRudderFoot,
      it.main_rudder_head,
      it.main_rudder_foot,
      it.rudder_overhang,
      it.rudder_overhang_foot,
      it.rudder_stock_ahead,
      shaftX,
      it.lower_bracket_height,
      it.shaft_lean,
      it.shaft_offset,
    ),
  );
  const rudderGapSwung = known(
    rudderGapSwungOf(
      it.main_rudder_swing,
      it.vane_rudder_swing,
      it.vane_rudder_chord,
      it.vane_rudder_balance,
      vaneRudderHead,
      vaneRudderFoot,
      it.main_rudder_head,
      it.main_rudder_foot,
      it.rudder_overhang,
      it.rudder_overhang_foot,
      it.rudder_stock_ahead,
      shaftX,
      it.lower_bracket_height,
      it.shaft_lean,
      it.shaft_offset,
    ),
  );
  const rudderGapTurned = known(
    rudderGapTurnedOf(
      it.vane_rudder_chord,
      it.vane_rudder_balance,
      vaneRudderHead,
      vaneRudderFoot,
      it.main_rudder_head,
      it.main_rudder_foot,
      it.rudder_overhang,
      it.rudder_overhang_foot,
      it.rudder_stock_ahead,
      shaftX,
      it.lower_bracket_height,
      it.shaft_lean,
      it.shaft_offset,
    ),
  );
  const rudderGapVertical = known(
    rudderGapVerticalOf(vaneRudderHead, vaneRudderFoot, it.main_rudder_head, it.main_rudder_foot),
  );
  const shaftBesideRudder = shaftBesideRudderOf(
    vaneRudderHead,
    it.main_rudder_head,
    it.main_rudder_foot,
    shaftTopHeight,
  );
  const shaftGap = known(
    shaftGapOf(
      it.tube_od,
      it.stock_diameter,
      it.shaft_foot_height,
      shaftTopHeight,
      vaneRudderHead,
      vaneRudderFoot,
      it.main_rudder_head,
      it.main_rudder_foot,
      it.rudder_overhang,
      it.rudder_overhang_foot,
      it.rudder_stock_ahead,
      shaftX,
      it.lower_bracket_height,
      it.shaft_lean,
      it.shaft_offset,
    ),
  );
  const lowerBracketEdge = edgeDistanceOf(
    it.shaft_offset,
    it.lower_bracket_height,
    it.lower_flange_height,
    it.lower_flange_width,
    it.transom_bottom,
    it.transom_top,
    it.transom_half_breadth_low,
  );
  const portFootEdge = edgeDistanceOf(
    it.port_foot_y,
    it.port_foot_height,
    it.foot_height,
    it.foot_width,
    it.transom_bottom,
    it.transom_top,
    it.transom_half_breadth,
  );
  const starboardFootEdge = edgeDistanceOf(
    it.starboard_foot_y,
    it.starboard_foot_height,
    it.foot_height,
    it.foot_width,
    it.transom_bottom,
    it.transom_top,
    it.transom_half_breadth,
  );
  const singleFootEdge = edgeDistanceOf(
    it.single_foot_y,
    it.single_foot_height,
    it.foot_height,
    it.foot_width,
    it.transom_bottom,
    it.transom_top,
    it.transom_half_breadth,
  );
  const coreReady = it.transom_build !== 'cored' || it.core_removed;
  const retained = it.stop_collar && it.lanyard;
  const sideForce =
    waterForceOf(
      it.water_density,
      it.boat_speed,
      it.vane_rudder_chord,
      it.vane_rudder_span,
      it.lift_coefficient,
    ) * it.dynamic_factor;
  const steeringForce = waterForceOf(
    it.water_density,
    it.boat_speed,
    it.vane_rudder_chord,
    it.vane_rudder_span,
    it.steering_lift,
  );
  const rudderArm = it.vane_rudder_drop + it.vane_rudder_span / 2;
  const lowerClampArm = bearingGap + it.lower_clamp_depth / 2;
  const heldForce = known(heldForceOf(sideForce, lowerClampArm, bracketSpacing, it.shaft_length));
  const heldSteeringForce = known(heldForceOf(steeringForce, lowerClampArm, bracketSpacing, it.shaft_length));
  const lowerReaction = lowerReactionOf(heldForce, rudderArm, lowerClampArm, bracketSpacing);
  const upperReaction = upperReactionOf(heldForce, rudderArm, lowerClampArm, bracketSpacing);
  const bottomBearingForce = bottomBearingForceOf(heldForce, rudderArm, it.shaft_length);
  const topBearingForce = topBearingForceOf(heldForce, rudderArm, it.shaft_length);
  const oneStrut = it.strut_count === 1;
  const singlePin = pinOf(it.single_foot_y, it.single_foot_height, it);
  const singleFootPinX = singlePin.x;
  const singleFootPinY = singlePin.y;
  const singleFootPinZ = singlePin.z;
  const upperAxisX = axisXOf(it.upper_bracket_height, shaftX, it.lower_bracket_height, it.shaft_lean);
  const pinX = upperAxisX - it.pin_forward;
  const singleStrutRise = known(
    strutRiseOf(
      singleFootPinX,
      singleFootPinY,
      singleFootPinZ,
      pinX,
      upperClampOffset,
      it.upper_bracket_height,
    ),
  );
  const portPinY = upperClampOffset - it.pin_half_width;
  const starboardPinY = upperClampOffset + it.pin_half_width;
  const portPin = pinOf(it.port_foot_y, it.port_foot_height, it);
  const portFootPinX = portPin.x;
  const portFootPinY = portPin.y;
  const portFootPinZ = portPin.z;
  const starboardPin = pinOf(it.starboard_foot_y, it.starboard_foot_height, it);
  const starboardFootPinX = starboardPin.x;
  const starboardFootPinY = starboardPin.y;
  const starboardFootPinZ = starboardPin.z;
  const clampSlip =
    (oneStrut
      ? oneStrutLiftOf(upperReaction, it.drag_ratio, it.vane_rudder_swing, singleStrutRise)
      : known(
          twoStrutLiftOf(
            upperReaction,
            it.drag_ratio,
            it.vane_rudder_swing,
            pinX,
            portPinY,
            starboardPinY,
            it.upper_bracket_height,
            portFootPinX,
            portFootPinY,
            portFootPinZ,
            starboardFootPinX,
            starboardFootPinY,
            starboardFootPinZ,
          ),
        )) +
    it.gear_mass * 9.80665;
  const stockUtilisation = roundBendingShareOf(
    (heldForce * Math.sqrt(1 + it.drag_ratio ** 2) * rudderArm) / 1000,
    it.stock_diameter,
    it.stock_yield / it.load_safety,
  );
  const stockSteeringUtilisation = roundBendingShareOf(
    (heldSteeringForce * rudderArm) / 1000,
    it.stock_diameter,
    it.stock_fatigue,
  );
  const tubeMoment =
    (Math.sqrt(1 + it.drag_ratio ** 2) *
      Math.max(
        bottomBearingForce * lowerClampArm,
        topBearingForce * (it.shaft_length - lowerClampArm - bracketSpacing),
      )) /
    1000;
  const tubeUtilisation = tubeBendingShareOf(
    tubeMoment,
    it.tube_od,
    it.tube_wall,
    it.tube_yield / it.load_safety,
  );
  const singleStrutLength = pinToPinOf(
    singleFootPinX,
    singleFootPinY,
    singleFootPinZ,
    pinX,
    upperClampOffset,
    it.upper_bracket_height,
  );
  const strutUtilisation = oneStrut
    ? known(
        oneStrutShareOf(
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.single_strut_od,
          it.single_strut_wall,
          it.strut_yield,
          it.strut_modulus,
          it.load_safety,
          singleStrutLength,
          it.pin_forward,
        ),
      )
    : known(
        twoStrutShareOf(
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.strut_od,
          it.strut_wall,
          it.strut_yield,
          it.strut_modulus,
          it.load_safety,
          pinX,
          portPinY,
          starboardPinY,
          it.upper_bracket_height,
          portFootPinX,
          portFootPinY,
          portFootPinZ,
          starboardFootPinX,
          starboardFootPinY,
          starboardFootPinZ,
        ),
      );
  const armsMeet = oneStrut
    ? 0
    : known(
        armsMeetOf(
          upperAxisX,
          pinX,
          portPinY,
          starboardPinY,
          portFootPinX,
          portFootPinY,
          starboardFootPinX,
          starboardFootPinY,
        ),
      );
  const boltTension = lowerBoltTensionOf(
    lowerReaction,
    upperReaction,
    it.drag_ratio,
    it.vane_rudder_swing,
    standoff,
    armsMeet,
    it.lower_bolt_spacing,
    transomSlope,
  );
  const boltShear = lowerBoltShearOf(lowerReaction, it.drag_ratio, it.vane_rudder_swing);
  const lowerPacking = it.shim_sleeve ? 0 : shimStack + wedgeMiddle;
  const boltUtilisation = known(
    lowerBoltShareOf(
      lowerReaction,
      upperReaction,
      it.drag_ratio,
      it.vane_rudder_swing,
      standoff,
      armsMeet,
      it.lower_bolt_spacing,
      transomSlope,
      it.bolt_diameter,
      it.bolt_strength,
      it.bolt_safety,
      lowerPacking,
    ),
  );
  const footBoltTension = oneStrut
    ? known(
        oneFootBoltTensionRecord.run(
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.foot_bolt_count,
          it.foot_bolt_spacing,
          it.foot_standoff,
          singleStrutLength,
          it.pin_forward,
        ),
      )
    : known(
        twoFootBoltTensionRecord.run(
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.foot_bolt_count,
          it.foot_bolt_spacing,
          it.foot_standoff,
          it.port_foot_y,
          it.port_foot_height,
          it.starboard_foot_y,
          it.starboard_foot_height,
          it.transom_rake,
          it.transom_camber_radius,
          pinX,
          portPinY,
          starboardPinY,
          it.upper_bracket_height,
          portFootPinX,
          portFootPinY,
          portFootPinZ,
          starboardFootPinX,
          starboardFootPinY,
          starboardFootPinZ,
        ),
      );
  const footBoltShear = oneStrut
    ? known(
        oneFootBoltShearRecord.run(
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.foot_bolt_count,
          it.foot_bolt_spacing,
          it.foot_standoff,
          singleStrutLength,
          it.pin_forward,
        ),
      )
    : known(
        twoFootBoltShearRecord.run(
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.foot_bolt_count,
          it.foot_bolt_spacing,
          it.foot_standoff,
          it.port_foot_y,
          it.port_foot_height,
          it.starboard_foot_y,
          it.starboard_foot_height,
          it.transom_rake,
          it.transom_camber_radius,
          pinX,
          portPinY,
          starboardPinY,
          it.upper_bracket_height,
          portFootPinX,
          portFootPinY,
          portFootPinZ,
          starboardFootPinX,
          starboardFootPinY,
          starboardFootPinZ,
        ),
      );
  const footBoltUtilisation = oneStrut
    ? known(
        oneFootBoltShareRecord.run(
          it.bolt_diameter,
          it.bolt_strength,
          it.bolt_safety,
          it.foot_pad,
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.foot_bolt_count,
          it.foot_bolt_spacing,
          it.foot_standoff,
          singleStrutLength,
          it.pin_forward,
        ),
      )
    : known(
        twoFootBoltShareRecord.run(
          it.bolt_diameter,
          it.bolt_strength,
          it.bolt_safety,
          it.foot_pad,
          upperReaction,
          it.drag_ratio,
          it.vane_rudder_swing,
          it.foot_bolt_count,
          it.foot_bolt_spacing,
          it.foot_standoff,
          it.port_foot_y,
          it.port_foot_height,
          it.starboard_foot_y,
          it.starboard_foot_height,
          it.transom_rake,
          it.transom_camber_radius,
          pinX,
          portPinY,
          starboardPinY,
          it.upper_bracket_height,
          portFootPinX,
          portFootPinY,
          portFootPinZ,
          starboardFootPinX,
          starboardFootPinY,
          starboardFootPinZ,
        ),
      );
  const shimBoltBending = known(shimBoltBendingOf(boltShear, lowerPacking, it.bolt_diameter));
  const skinThickness =
    it.transom_build === 'cored' && !it.core_removed ? it.inner_skin : it.transom_thickness;
  const plateUtilisation = known(
    plateShareOf(
      boltTension,
      it.bolt_diameter,
      it.plate_thickness,
      it.plate_yield,
      it.laminate_strength,
      it.plate_area,
    ),
  );
  const skinUtilisation = known(
    skinShareOf(
      boltTension,
      it.bolt_diameter,
      it.plate_thickness,
      it.plate_yield,
      it.laminate_strength,
      skinThickness,
      it.laminate_shear,
    ),
  );
  const footSkinUtilisation = known(
    skinShareOf(
      footBoltTension,
      it.bolt_diameter,
      it.plate_thickness,
      it.plate_yield,
      it.laminate_strength,
      skinThickness,
      it.laminate_shear,
    ),
  );
  const twoStruts = it.strut_count === 2;
  const portStrutLength = pinToPinOf(
    portFootPinX,
    portFootPinY,
    portFootPinZ,
    pinX,
    portPinY,
    it.upper_bracket_height,
  );
  const portStrutCut = portStrutLength - 2 * it.strut_end_allowance;
  const portStrutRun = pinX - portFootPinX;
  const portStrutRise = known(
    strutRiseOf(portFootPinX, portFootPinY, portFootPinZ, pinX, portPinY, it.upper_bracket_height),
  );
  const starboardStrutLength = pinToPinOf(
    starboardFootPinX,
    starboardFootPinY,
    starboardFootPinZ,
    pinX,
    starboardPinY,
    it.upper_bracket_height,
  );
  const starboardStrutCut = starboardStrutLength - 2 * it.strut_end_allowance;
  const starboardStrutRun = pinX - starboardFootPinX;
  const starboardStrutRise = known(
    strutRiseOf(
      starboardFootPinX,
      starboardFootPinY,
      starboardFootPinZ,
      pinX,
      starboardPinY,
      it.upper_bracket_height,
    ),
  );
  const singleStrutCut = singleStrutLength - 2 * it.strut_end_allowance;
  const singleStrutRun = pinX - singleFootPinX;
  const strutSpread = known(
    strutSpreadOf(
      pinX,
      portPinY,
      starboardPinY,
      portFootPinX,
      portFootPinY,
      starboardFootPinX,
      starboardFootPinY,
    ),
  );
  const strutTubesNeeded = oneStrut
    ? known(tubesNeededOf(it.strut_supply_length, it.saw_kerf, singleStrutCut))
    : known(tubesNeededOf(it.strut_supply_length, it.saw_kerf, portStrutCut, starboardStrutCut));
  const strutOffcut = oneStrut
    ? known(offcutOf(it.strut_supply_length, it.saw_kerf, singleStrutCut))
    : known(offcutOf(it.strut_supply_length, it.saw_kerf, portStrutCut, starboardStrutCut));
  const lowerBoltGrip =
    shimStack +
    wedgeMiddle * Math.cos(radians(transomSlope)) +
    it.flange_thickness +
    it.transom_thickness +
    it.bed_thickness +
    it.plate_thickness;
  const lowerBoltLength = known(boltLengthOf(lowerBoltGrip, it.bolt_diameter));
  const footBoltGrip =
    it.foot_pad + it.flange_thickness + it.transom_thickness + it.bed_thickness + it.plate_thickness;
  const footBoltLength = known(boltLengthOf(footBoltGrip, it.bolt_diameter));

  const { results } = to;
  results[0] = shimStack;
  results[1] = transomSlope;
  results[2] = wedgeMiddle;
  results[3] = standoff;
  results[4] = shaftX;
  results[5] = shaftTopHeight;
  results[6] = bearingGap;
  results[7] = bracketSpacing;
  results[8] = driveHeadroom;
  results[9] = shaftFaceGap;
  results[10] = Number(driveInReach);
  results[11] = driveFaceGap;
  results[12] = flangeYaw;
  results[13] = lowestHole;
  results[14] = vaneRudderHead;
  results[15] = vaneRudderFoot;
  results[16] = rudderImmersion;
  results[17] = ruddersShareHeight;
  results[18] = rudderGap;
  results[19] = rudderGapSwung;
  results[20] = rudderGapTurned;
  results[21] = rudderGapVertical;
  results[22] = shaftBesideRudder;
  results[23] = shaftGap;
  results[24] = lowerBracketEdge;
  results[25] = portFootEdge;
  results[26] = starboardFootEdge;
  results[27] = singleFootEdge;
  results[28] = Number(coreReady);
  results[29] = Number(retained);
  results[30] = sideForce;
  results[31] = steeringForce;
  results[32] = rudderArm;
  results[33] = lowerClampArm;
  results[34] = heldForce;
  results[35] = heldSteeringForce;
  results[36] = lowerReaction;
  results[37] = upperReaction;
  results[38] = bottomBearingForce;
  results[39] = topBearingForce;
  results[40] = clampSlip;
  results[41] = stockUtilisation;
  results[42] = stockSteeringUtilisation;
  results[43] = tubeMoment;
  results[44] = tubeUtilisation;
  results[45] = strutUtilisation;
  results[46] = boltTension;
  results[47] = boltShear;
  results[48] = boltUtilisation;
  results[49] = footBoltTension;
  results[50] = footBoltShear;
  results[51] = footBoltUtilisation;
  results[52] = shimBoltBending;
  results[53] = skinThickness;
  results[54] = plateUtilisation;
  results[55] = skinUtilisation;
  results[56] = footSkinUtilisation;
  results[57] = Number(twoStruts);
  results[58] = Number(oneStrut);
  results[59] = upperAxisX;
  results[60] = pinX;
  results[61] = portPinY;
  results[62] = starboardPinY;
  results[63] = portFootPinX;
  results[64] = portFootPinY;
  results[65] = portFootPinZ;
  results[66] = portStrutLength;
  results[67] = portStrutCut;
  results[68] = portStrutRun;
  results[69] = portStrutRise;
  results[70] = starboardFootPinX;
  results[71] = starboardFootPinY;
  results[72] = starboardFootPinZ;
  results[73] = starboardStrutLength;
  results[74] = starboardStrutCut;
  results[75] = starboardStrutRun;
  results[76] = starboardStrutRise;
  results[77] = singleFootPinX;
  results[78] = singleFootPinY;
  results[79] = singleFootPinZ;
  results[80] = singleStrutLength;
  results[81] = singleStrutCut;
  results[82] = singleStrutRun;
  results[83] = singleStrutRise;
  results[84] = strutSpread;
  results[85] = armsMeet;
  results[86] = strutTubesNeeded;
  results[87] = strutOffcut;
  results[88] = lowerBoltGrip;
  results[89] = lowerBoltLength;
  results[90] = footBoltGrip;
  results[91] = footBoltLength;
  results[92] = lowerPacking;

  put(
    to,
    0,
    judge({
      value: valueAt(rudderGap),
      low: it.rudder_gap_min,
      near: 10,
      applies: ruddersShareHeight === 1,
      graded: true,
    }),
  );
  put(
    to,
    1,
    judge({
      value: valueAt(rudderGapSwung),
      low: it.rudder_gap_min,
      near: 10,
      applies: ruddersShareHeight === 1,
      graded: true,
    }),
  );
  put(
    to,
    2,
    judge({
      value: valueAt(rudderGapVertical),
      low: it.rudder_gap_min,
      near: 10,
      applies: ruddersShareHeight !== 1,
      graded: true,
    }),
  );
  put(
    to,
    3,
    judge({
      value: valueAt(shaftGap),
      low: it.rudder_gap_min,
      near: 10,
      applies: shaftBesideRudder === 1,
      graded: true,
    }),
  );
  put(
    to,
    4,
    judge({ value: valueAt(shaftFaceGap), low: it.face_gap_min, near: 10, applies: true, graded: true }),
  );
  put(
    to,
    5,
    judge({
      value: valueAt(driveFaceGap),
      low: it.face_gap_min,
      near: 10,
      applies: driveInReach,
      graded: true,
    }),
  );
  put(
    to,
    6,
    judge({
      value: valueAt(bearingGap),
      low: it.bearing_gap_min,
      high: it.bearing_gap_max,
      near: 10,
      applies: true,
      graded: true,
    }),
  );
  put(
    to,
    7,
    judge({ value: valueAt(bracketSpacing), low: it.spacing_min, near: 10, applies: true, graded: true }),
  );
  put(
    to,
    8,
    judge({ value: valueAt(driveHeadroom), low: it.drive_gap_min, near: 5, applies: true, graded: true }),
  );
  put(
    to,
    9,
    judge({ value: valueAt(rudderImmersion), low: it.immersion_min, near: 0, applies: true, graded: false }),
  );
  put(
    to,
    10,
    judge({
      value: valueAt(it.shaft_lean),
      low: -it.lean_max,
      high: it.lean_max,
      near: 0.2,
      applies: true,
      graded: true,
    }),
  );
  put(
    to,
    11,
    judge({ value: valueAt(lowestHole), low: it.hole_freeboard_min, near: 10, applies: true, graded: true }),
  );
  put(
    to,
    12,
    judge({ value: valueAt(shimStack), high: it.shim_stack_max, near: 5, applies: true, graded: true }),
  );
  put(
    to,
    13,
    judge({ value: valueAt(flangeYaw), high: it.flange_yaw_max, near: 0.3, applies: true, graded: true }),
  );
  put(
    to,
    14,
    judge({
      value: valueAt(strutSpread),
      low: it.spread_min,
      high: it.spread_max,
      near: 3,
      applies: twoStruts,
      graded: true,
    }),
  );
  put(
    to,
    15,
    judge({
      value: valueAt(portStrutCut),
      high: it.strut_supply_length,
      near: 10,
      applies: twoStruts,
      graded: true,
      mustExist: true,
    }),
  );
  put(
    to,
    16,
    judge({
      value: valueAt(starboardStrutCut),
      high: it.strut_supply_length,
      near: 10,
      applies: twoStruts,
      graded: true,
      mustExist: true,
    }),
  );
  put(
    to,
    17,
    judge({
      value: valueAt(singleStrutCut),
      high: it.single_strut_max,
      near: 10,
      applies: oneStrut,
      graded: true,
      mustExist: true,
    }),
  );
  put(
    to,
    18,
    judge({
      value: valueAt(portStrutRun),
      low: 0,
      near: 10,
      applies: twoStruts,
      graded: true,
      lowIsOutside: true,
    }),
  );
  put(
    to,
    19,
    judge({
      value: valueAt(starboardStrutRun),
      low: 0,
      near: 10,
      applies: twoStruts,
      graded: true,
      lowIsOutside: true,
    }),
  );
  put(
    to,
    20,
    judge({
      value: valueAt(singleStrutRun),
      low: 0,
      near: 10,
      applies: oneStrut,
      graded: true,
      lowIsOutside: true,
    }),
  );
  put(
    to,
    21,
    judge({
      value: valueAt(portStrutRise),
      high: it.strut_rise_max,
      near: 3,
      applies: twoStruts,
      graded: true,
    }),
  );
  put(
    to,
    22,
    judge({
      value: valueAt(starboardStrutRise),
      high: it.strut_rise_max,
      near: 3,
      applies: twoStruts,
      graded: true,
    }),
  );
  put(
    to,
    23,
    judge({
      value: valueAt(singleStrutRise),
      high: it.strut_rise_max,
      near: 3,
      applies: oneStrut,
      graded: true,
    }),
  );
  put(
    to,
    24,
    judge({
      value: valueAt(strutTubesNeeded),
      high: it.strut_supply_count,
      near: 0,
      applies: true,
      graded: false,
    }),
  );
  put(to, 25, judge({ value: valueAt(lowerBracketEdge), low: 0, near: 10, applies: true, graded: true }));
  put(to, 26, judge({ value: valueAt(portFootEdge), low: 0, near: 10, applies: twoStruts, graded: true }));
  put(
    to,
    27,
    judge({ value: valueAt(starboardFootEdge), low: 0, near: 10, applies: twoStruts, graded: true }),
  );
  put(to, 28, judge({ value: valueAt(singleFootEdge), low: 0, near: 10, applies: oneStrut, graded: true }));
  put(to, 29, judge({ value: valueAt(stockUtilisation), high: 1, near: 0.1, applies: true, graded: true }));
  put(
    to,
    30,
    judge({ value: valueAt(stockSteeringUtilisation), high: 1, near: 0.1, applies: true, graded: true }),
  );
  put(to, 31, judge({ value: valueAt(tubeUtilisation), high: 1, near: 0.1, applies: true, graded: true }));
  put(to, 32, judge({ value: valueAt(strutUtilisation), high: 1, near: 0.1, applies: true, graded: true }));
  put(to, 33, judge({ value: valueAt(boltUtilisation), high: 1, near: 0.1, applies: true, graded: true }));
  put(to, 34, judge({ value: valueAt(plateUtilisation), high: 1, near: 0.1, applies: true, graded: true }));
  put(to, 35, judge({ value: valueAt(skinUtilisation), high: 1, near: 0.1, applies: true, graded: true }));
  put(
    to,
    36,
    judge({ value: valueAt(footBoltUtilisation), high: 1, near: 0.1, applies: true, graded: true }),
  );
  put(
    to,
    37,
    judge({ value: valueAt(footSkinUtilisation), high: 1, near: 0.1, applies: true, graded: true }),
  );
  put(to, 38, judge({ value: valueAt(Number(coreReady)), low: 1, near: 0, applies: true, graded: false }));
  put(to, 39, judge({ value: valueAt(Number(retained)), low: 1, near: 0, applies: true, graded: false }));
}
