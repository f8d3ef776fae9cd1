import { record } from '../record.ts';
import { leanArgument } from './upright-part.ts';
import { hingedArgument, slopeArgument, wedgeArguments, wedgeTaper } from './wedge-taper.ts';

/** The wedge's thick edge, mm, measured level; 0 when the flange is hinged. */
export const wedgeThickEdge = (
  hinged: boolean,
  edge: number,
  flangeHeight: number,
  lean: number,
  slope: number,
  sideLean = 0,
): number => (hinged ? 0 : edge + wedgeTaper(flangeHeight, lean, slope, sideLean));

/** Angle between the wedge's two faces, degrees; 0 when the flange is hinged. */
export const wedgeAngle = (hinged: boolean, lean: number, slope: number): number =>
  hinged ? 0 : Math.abs(slope - lean);

export const wedgeThickEdgeRecord = record({
  id: 'WEDGE_THICK_EDGE',
  title: "The wedge's thick edge",
  arguments: wedgeArguments,
  unit: 'mm',
  formula:
    'thin edge plus the flange’s upright height times the difference of the two tangents; 0 when hinged',
  source: 'plane geometry',
  example: {
    given: [false, 3, 140, -45, 45, 60],
    answer: 3 + 280 / Math.sqrt(5),
    tolerance: 1e-9,
    source: 'by hand: 140/√(1 + 1 + 3) upright, tangents 2 apart',
  },
  run: wedgeThickEdge,
});

export const wedgeAngleRecord = record({
  id: 'WEDGE_ANGLE',
  title: 'Angle of the wedge',
  arguments: [hingedArgument, leanArgument, slopeArgument],
  unit: 'deg',
  formula: 'the difference between the transom’s slope and the shaft’s lean; 0 when hinged',
  source: 'plane geometry',
  example: {
    given: [false, 2, -10],
    answer: 12,
    tolerance: 1e-12,
    source: 'by hand: 10° one way, 2° the other',
  },
  run: wedgeAngle,
});
