import type { Part } from '../part.ts';
import { auxiliaryRudder } from './auxiliary-rudder.ts';
import { driveUnit } from './drive-unit.ts';
import { lowerBolts } from './lower-bolts.ts';
import { lowerBracket } from './lower-bracket.ts';
import { ownRudder } from './own-rudder.ts';
import { shaftAxis } from './shaft-axis.ts';
import { shims } from './shims.ts';
import { struts } from './strut.ts';
import { transom } from './transom.ts';
import { tube } from './tube.ts';
import { upperBracket } from './upper-bracket.ts';
import { wedge } from './wedge.ts';

/** Everything in the side view, from what lies farthest to what lies nearest. */
export const sideParts: readonly Part[] = [
  ownRudder,
  auxiliaryRudder,
  transom,
  tube,
  lowerBolts,
  shims,
  wedge,
  lowerBracket,
  upperBracket,
  ...struts,
  driveUnit,
  shaftAxis,
];
