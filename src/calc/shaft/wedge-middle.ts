import { cos, tan } from '../angle.ts';
import { record } from '../record.ts';

/** Thickness of the wedge at its middle, mm, measured level; 0 when the flange is hinged and follows the face. */
export const wedgeMiddle = (
  hinged: boolean,
  edge: number,
  flangeHeight: number,
  lean: number,
  slope: number,
): number => (hinged ? 0 : edge + 0.5 * flangeHeight * cos(lean) * Math.abs(tan(slope) - tan(lean)));

export const wedgeMiddleRecord = record({
  id: 'WEDGE_MIDDLE',
  title: 'Wedge thickness at its middle',
  arguments: [
    { name: 'hinged', unit: '–', meaning: 'Whether the flange is hinged', type: 'flag' },
    { name: 'edge', unit: 'mm', meaning: "The wedge's thin edge", least: 0 },
    { name: 'flange_height', unit: 'mm', meaning: "The flange's height", least: 0 },
    { name: 'lean', unit: 'deg', meaning: "The shaft's lean" },
    { name: 'slope', unit: 'deg', meaning: "The transom's slope" },
  ],
  unit: 'mm',
  formula:
    'thin edge plus half the flange height times cos(lean) times the difference of the two tangents; 0 when hinged',
  source: 'plane geometry',
  example: { given: [false, 3, 140, 0, 45], answer: 73, tolerance: 1e-9, source: 'tan 45° = 1: 3 + 70' },
  run: wedgeMiddle,
});
