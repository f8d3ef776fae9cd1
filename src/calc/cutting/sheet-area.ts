import { record } from '../record.ts';

/** Sheet that so many rectangles use up, mm²: each takes a saw's cut along two of its sides. */
export const sheetArea = (count: number, width: number, height: number, kerf: number): number =>
  count * (width + kerf) * (height + kerf);

export const sheetAreaRecord = record({
  id: 'SHEET_AREA',
  title: 'Sheet used up by rectangles',
  arguments: [
    { name: 'count', unit: '–', meaning: 'How many are cut', least: 0 },
    { name: 'width', unit: 'mm', meaning: "A rectangle's width", least: 0 },
    { name: 'height', unit: 'mm', meaning: "A rectangle's height", least: 0 },
    { name: 'kerf', unit: 'mm', meaning: "The saw's cut", least: 0 },
  ],
  unit: 'mm²',
  formula: 'count × (width + kerf) × (height + kerf)',
  source: 'plane geometry: a cut along one long and one short side of each',
  example: { given: [4, 200, 140, 2], answer: 114736, tolerance: 0, source: 'by hand: 4 × 202 × 142' },
  run: sheetArea,
});
