import { degrees } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { type Argument, record } from '../record.ts';

/** Sine of the angle below which two arms count as parallel in plan. */
const PARALLEL = 1e-9;

type Plan = readonly [
  pinX: number,
  portPinY: number,
  starboardPinY: number,
  portFootX: number,
  portFootY: number,
  starboardFootX: number,
  starboardFootY: number,
];

const planArguments: readonly Argument[] = [
  { name: 'pin_x', unit: 'mm', meaning: "The clamp pins' x" },
  { name: 'port_pin_y', unit: 'mm', meaning: "The port clamp pin's y" },
  { name: 'starboard_pin_y', unit: 'mm', meaning: "The starboard clamp pin's y" },
  { name: 'port_foot_x', unit: 'mm', meaning: "The port foot pin's x" },
  { name: 'port_foot_y', unit: 'mm', meaning: "The port foot pin's y" },
  { name: 'starboard_foot_x', unit: 'mm', meaning: "The starboard foot pin's x" },
  { name: 'starboard_foot_y', unit: 'mm', meaning: "The starboard foot pin's y" },
];

/** Smaller angle between two arms seen from above, each looked at from foot to clamp, degrees, 0 to 180. */
export function strutSpread(...[pinX, portPinY, starPinY, portX, portY, starX, starY]: Plan): Answer {
  const ax = pinX - portX;
  const ay = portPinY - portY;
  const bx = pinX - starX;
  const by = starPinY - starY;
  if ((ax === 0 && ay === 0) || (bx === 0 && by === 0)) {
    return new NoAnswer('A strut has no length seen from above, so it has no direction.');
  }
  return degrees(Math.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by));
}

/** Where the two arms' lines cross seen from above; no answer when they are parallel. */
function crossing([pinX, portPinY, starPinY, portX, portY, starX, starY]: Plan):
  | { readonly x: number; readonly y: number }
  | NoAnswer {
  const ax = pinX - portX;
  const ay = portPinY - portY;
  const bx = pinX - starX;
  const by = starPinY - starY;
  const turn = ax * by - ay * bx;
  if (Math.abs(turn) <= PARALLEL * Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by))) {
    return new NoAnswer(
      'The two struts run parallel seen from above, so they cannot hold the clamp sideways.',
    );
  }
  const t = ((starX - portX) * by - (starY - portY) * bx) / turn;
  return { x: portX + t * ax, y: portY + t * ay };
}

/** How far aft of the shaft's axis the two arms' lines cross seen from above, mm. */
export function armsMeet(axisX: number, ...plan: Plan): Answer {
  const at = crossing(plan);
  return at instanceof NoAnswer ? at : at.x - axisX;
}

/** How far to starboard of the shaft's axis the two arms' lines cross seen from above, mm. */
export function armsMeetAside(axisY: number, ...plan: Plan): Answer {
  const at = crossing(plan);
  return at instanceof NoAnswer ? at : at.y - axisY;
}

export const strutSpreadRecord = record({
  id: 'STRUT_SPREAD',
  title: 'Angle between the two struts seen from above',
  arguments: planArguments,
  unit: 'deg',
  formula: 'the angle between the two arms from foot to clamp, from their cross and dot products',
  source: 'plane geometry',
  example: {
    given: [150, 20, 20, 50, -80, 50, 120],
    answer: 90,
    tolerance: 1e-12,
    source: 'two diagonals of a square',
  },
  run: strutSpread,
});

export const armsMeetRecord = record({
  id: 'ARMS_MEET',
  title: 'Where the two struts would meet, aft of the shaft',
  arguments: [
    { name: 'axis_x', unit: 'mm', meaning: "The shaft axis's x at the upper bracket" },
    ...planArguments,
  ],
  unit: 'mm',
  formula: 'the crossing of the two arms prolonged, seen from above, less the axis',
  source: 'plane geometry: crossing of two lines',
  example: {
    given: [150, 130, -20, 20, 30, -100, 30, 100],
    answer: 5,
    tolerance: 1e-9,
    source: 'by hand: similar triangles, 100 aft for every 80 across, so 125 aft of the feet',
  },
  run: armsMeet,
});

export const armsMeetAsideRecord = record({
  id: 'ARMS_MEET_ASIDE',
  title: 'Where the two struts would meet, to starboard of the shaft',
  arguments: [
    { name: 'axis_y', unit: 'mm', meaning: "The shaft axis's y at the upper bracket" },
    ...planArguments,
  ],
  unit: 'mm',
  formula: 'the crossing of the two arms prolonged, seen from above, less the axis',
  source: 'plane geometry: crossing of two lines',
  example: {
    given: [30, 100, 10, 70, 20, -70, 20, 150],
    answer: 10,
    tolerance: 1e-9,
    source: 'by hand: alike to both sides of y = 40, 80 aft for every 80 across',
  },
  run: armsMeetAside,
});
