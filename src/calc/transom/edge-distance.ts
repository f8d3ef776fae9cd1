import { record } from '../record.ts';

/** Least distance from a flange's outline to the border of the usable transom, mm; negative past it. */
export const edgeDistance = (
  y: number,
  z: number,
  height: number,
  width: number,
  bottom: number,
  top: number,
  halfBreadth: number,
): number => Math.min(z - height / 2 - bottom, top - z - height / 2, halfBreadth - Math.abs(y) - width / 2);

export const edgeDistanceRecord = record({
  id: 'EDGE_DISTANCE',
  title: 'Flange to the edge of the transom',
  arguments: [
    { name: 'y', unit: 'mm', meaning: "The flange's distance from the centreline" },
    { name: 'z', unit: 'mm', meaning: "The flange's height" },
    { name: 'flange_height', unit: 'mm', meaning: "The flange's own height", least: 0 },
    { name: 'flange_width', unit: 'mm', meaning: "The flange's own width", least: 0 },
    { name: 'bottom', unit: 'mm', meaning: "The face's lower edge" },
    { name: 'top', unit: 'mm', meaning: "The face's upper edge" },
    { name: 'half_breadth', unit: 'mm', meaning: 'The usable half width' },
  ],
  unit: 'mm',
  formula:
    'the least of: flange foot above the lower edge, flange head below the upper edge, flange side inside the half width',
  source: 'plane geometry',
  example: {
    given: [170, 790, 120, 60, 40, 900, 600],
    answer: 50,
    tolerance: 0,
    source: 'by hand: 690, 50 and 400',
  },
  run: edgeDistance,
});
