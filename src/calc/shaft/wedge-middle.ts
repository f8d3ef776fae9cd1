import { record } from '../record.ts';
import { wedgeArguments, wedgeTaper } from './wedge-taper.ts';

/** Thickness of the wedge at its middle, mm, measured level; 0 when the flange is hinged and follows the face. */
export const wedgeMiddle = (
  hinged: boolean,
  edge: number,
  flangeHeight: number,
  lean: number,
  slope: number,
  sideLean = 0,
): number => (hinged ? 0 : edge + 0.5 * wedgeTaper(flangeHeight, lean, slope, sideLean));

export const wedgeMiddleRecord = record({
  id: 'WEDGE_MIDDLE',
  title: 'Wedge thickness at its middle',
  arguments: wedgeArguments,
  unit: 'mm',
  formula:
    'thin edge plus half the flange’s upright height times the difference of the two tangents; 0 when hinged',
  source: 'plane geometry',
  example: {
    given: [false, 3, 140, -45, 45, 60],
    answer: 3 + 140 / Math.sqrt(5),
    tolerance: 1e-9,
    source: 'by hand: 140/√(1 + 1 + 3) upright, tangents 2 apart, half of that',
  },
  run: wedgeMiddle,
});
