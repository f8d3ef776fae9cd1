import { offcutRecord, tubesNeededRecord } from './cutting/cut.ts';
import { sheetAreaRecord } from './cutting/sheet-area.ts';
import { bedVolumeRecord } from './fasteners/bed-volume.ts';
import { boltLengthRecord } from './fasteners/bolt-length.ts';
import { clearanceHoleRecord } from './fasteners/clearance-hole.ts';
import {
  oneFootBoltShareRecord,
  oneFootBoltShearRecord,
  oneFootBoltTensionRecord,
  twoFootBoltShareRecord,
  twoFootBoltShearRecord,
  twoFootBoltTensionRecord,
} from './fasteners/foot-bolts.ts';
import {
  lowerBoltShareRecord,
  lowerBoltShearRecord,
  lowerBoltTensionRecord,
} from './fasteners/lower-bolts.ts';
import { packingFactorRecord } from './fasteners/packing-factor.ts';
import { padHollowRecord } from './fasteners/pad-hollow.ts';
import { plateReachRecord, plateShareRecord, skinShareRecord } from './fasteners/plate.ts';
import { beadLengthRecord, beadVolumeRecord } from './fasteners/sealant.ts';
import { shimBoltBendingRecord } from './fasteners/shim-bolt-bending.ts';
import { threadBeyondRecord } from './fasteners/thread-beyond.ts';
import { boltForceRecord, tighteningTorqueRecord } from './fasteners/torque.ts';
import { bobLeanRecord } from './fit/bob-lean.ts';
import { levelledLeanRecord, levelledSideLeanRecord } from './fit/levelled-lean.ts';
import { roomAboveRecord, roomBelowRecord, roomBetweenRecord } from './limits/room.ts';
import { heldForceRecord } from './loads/held-force.ts';
import {
  bottomBearingForceRecord,
  lowerReactionRecord,
  topBearingForceRecord,
  upperReactionRecord,
} from './loads/reactions.ts';
import { waterForceRecord } from './loads/water-force.ts';
import type { LibraryFunction, TableFunction } from './record.ts';
import { rudderGapRecord } from './rudders/gap.ts';
import { rudderGapSwungRecord } from './rudders/gap-swung.ts';
import { rudderGapTurnedRecord } from './rudders/gap-turned.ts';
import { immersionRecord } from './rudders/immersion.ts';
import { shaftBesideRudderRecord, shaftGapRecord } from './rudders/shaft-gap.ts';
import { rudderGapVerticalRecord, ruddersShareHeightRecord } from './rudders/shared-height.ts';
import { roundBendingShareRecord, tubeBendingShareRecord } from './section/bending-share.ts';
import { columnStrengthRecord } from './section/column.ts';
import { alongShaftRecord } from './shaft/along-shaft.ts';
import { axisXRecord } from './shaft/axis-x.ts';
import { faceGapRecord } from './shaft/face-gap.ts';
import { lowestHoleRecord } from './shaft/lowest-hole.ts';
import { standoffRecord } from './shaft/standoff.ts';
import { uprightRecord } from './shaft/upright.ts';
import { wedgeAngleRecord, wedgeThickEdgeRecord } from './shaft/wedge-edges.ts';
import { wedgeMiddleRecord } from './shaft/wedge-middle.ts';
import { armsMeetAsideRecord, armsMeetRecord, strutSpreadRecord } from './struts/arms.ts';
import { oneStrutLiftRecord, twoStrutLiftRecord } from './struts/clamp-lift.ts';
import { footPinXRecord, footPinYRecord, footPinZRecord } from './struts/foot-pin.ts';
import { pinToPinRecord } from './struts/pin-to-pin.ts';
import { strutRiseRecord } from './struts/rise.ts';
import { oneStrutShareRecord, twoStrutShareRecord } from './struts/share.ts';
import { airClearRecord } from './survey/air-clear.ts';
import { surveyCamberRecord } from './survey/camber.ts';
import { faceProfileRecord } from './survey/face-profile.ts';
import {
  flangeClearRecord,
  holesBorderRecord,
  holesClearRecord,
  platesClearRecord,
} from './survey/keep-out.ts';
import { levelledHeightRecord, levelledSlopeRecord, trimAngleRecord } from './survey/lie.ts';
import {
  plumbedHollowRecord,
  plumbedSlopeErrorRecord,
  plumbedSlopeRecord,
  plumbedXRecord,
  plumbLineAftRecord,
} from './survey/plumb.ts';
import { rowsGivenRecord } from './survey/rows-given.ts';
import { suspiciousRowsRecord } from './survey/suspicious.ts';
import { edgeDistanceRecord } from './transom/edge-distance.ts';
import { faceSlopeRecord } from './transom/face-slope.ts';
import { faceXRecord } from './transom/face-x.ts';
import { flangeYawRecord } from './transom/flange-yaw.ts';
import { flangesApartRecord } from './transom/flanges-apart.ts';
import { localRadiusRecord } from './transom/local-radius.ts';

/** Every library function, in the order of the work. */
export const catalogue: readonly LibraryFunction[] = [
  edgeDistanceRecord,
  flangesApartRecord,
  faceSlopeRecord,
  faceXRecord,
  flangeYawRecord,
  localRadiusRecord,
  alongShaftRecord,
  axisXRecord,
  faceGapRecord,
  lowestHoleRecord,
  standoffRecord,
  uprightRecord,
  wedgeMiddleRecord,
  wedgeThickEdgeRecord,
  wedgeAngleRecord,
  rudderGapSwungRecord,
  rudderGapTurnedRecord,
  rudderGapRecord,
  immersionRecord,
  shaftBesideRudderRecord,
  shaftGapRecord,
  ruddersShareHeightRecord,
  rudderGapVerticalRecord,
  strutSpreadRecord,
  armsMeetRecord,
  armsMeetAsideRecord,
  twoStrutLiftRecord,
  oneStrutLiftRecord,
  footPinXRecord,
  footPinYRecord,
  footPinZRecord,
  pinToPinRecord,
  strutRiseRecord,
  twoStrutShareRecord,
  oneStrutShareRecord,
  tubesNeededRecord,
  offcutRecord,
  sheetAreaRecord,
  roundBendingShareRecord,
  tubeBendingShareRecord,
  columnStrengthRecord,
  heldForceRecord,
  lowerReactionRecord,
  upperReactionRecord,
  bottomBearingForceRecord,
  topBearingForceRecord,
  waterForceRecord,
  boltLengthRecord,
  clearanceHoleRecord,
  threadBeyondRecord,
  boltForceRecord,
  tighteningTorqueRecord,
  padHollowRecord,
  bedVolumeRecord,
  beadLengthRecord,
  beadVolumeRecord,
  twoFootBoltTensionRecord,
  twoFootBoltShearRecord,
  twoFootBoltShareRecord,
  oneFootBoltTensionRecord,
  oneFootBoltShearRecord,
  oneFootBoltShareRecord,
  lowerBoltTensionRecord,
  lowerBoltShearRecord,
  lowerBoltShareRecord,
  packingFactorRecord,
  plateReachRecord,
  plateShareRecord,
  skinShareRecord,
  shimBoltBendingRecord,
  roomAboveRecord,
  roomBelowRecord,
  roomBetweenRecord,
  trimAngleRecord,
  levelledHeightRecord,
  levelledSlopeRecord,
  plumbedSlopeRecord,
  plumbedSlopeErrorRecord,
  plumbedHollowRecord,
  plumbLineAftRecord,
  plumbedXRecord,
  surveyCamberRecord,
  suspiciousRowsRecord,
  rowsGivenRecord,
  flangeClearRecord,
  holesClearRecord,
  platesClearRecord,
  holesBorderRecord,
  airClearRecord,
  bobLeanRecord,
  levelledLeanRecord,
  levelledSideLeanRecord,
];

/** Functions that give a table: they stand only where another function takes one. */
export const tableFunctions: readonly TableFunction[] = [faceProfileRecord];

export const functionNamed = (id: string): LibraryFunction | undefined =>
  catalogue.find((it) => it.id === id);
