import { cos, tan } from '../angle.ts';
import { record } from '../record.ts';

/** The wedge's thick edge, mm, measured level; 0 when the flange is hinged. */
export const wedgeThickEdge = (
  hinged: boolean,
  edge: number,
  flangeHeight: number,
  lean: number,
  slope: number,
): number => (hinged ? 0 : edge + flangeHeight * cos(lean) * Math.abs(tan(slope) - tan(lean)));

/** Angle between the wedge's two faces, degrees; 0 when the flange is hinged. */
export const wedgeAngle = (hinged: boolean, lean: number, slope: number): number =>
  hinged ? 0 : Math.abs(slope - lean);

const hinged = { name: 'hinged', unit: '–', meaning: 'Whether the flange is hinged', type: 'flag' } as const;
const lean = { name: 'lean', unit: 'deg', meaning: "The shaft's lean" } as const;
const slope = { name: 'slope', unit: 'deg', meaning: "The transom's slope" } as const;

export const wedgeThickEdgeRecord = record({
  id: 'WEDGE_THICK_EDGE',
  title: "The wedge's thick edge",
  arguments: [
    hinged,
    { name: 'edge', unit: 'mm', meaning: "The wedge's thin edge", least: 0 },
    { name: 'flange_height', unit: 'mm', meaning: "The flange's height", least: 0 },
    lean,
    slope,
  ],
  unit: 'mm',
  formula:
    'thin edge plus the flange height times cos(lean) times the difference of the two tangents; 0 when hinged',
  source: 'plane geometry',
  example: { given: [false, 3, 140, 0, 45], answer: 143, tolerance: 1e-9, source: 'tan 45° = 1: 3 + 140' },
  run: wedgeThickEdge,
});

export const wedgeAngleRecord = record({
  id: 'WEDGE_ANGLE',
  title: 'Angle of the wedge',
  arguments: [hinged, lean, slope],
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
