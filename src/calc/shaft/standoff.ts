import { cos } from '../angle.ts';
import { record } from '../record.ts';

/** Level distance from the transom face to the shaft's axis at the lower bracket, mm. */
export const standoff = (stack: number, slope: number, wedge: number, reach: number): number =>
  stack / cos(slope) + wedge + reach;

export const standoffRecord = record({
  id: 'STANDOFF',
  title: 'Transom face to shaft axis',
  arguments: [
    { name: 'shim_stack', unit: 'mm', meaning: 'The shim stack, square to the transom' },
    { name: 'slope', unit: 'deg', meaning: "The transom's slope" },
    { name: 'wedge_middle', unit: 'mm', meaning: "The wedge's middle thickness" },
    { name: 'reach', unit: 'mm', meaning: "The lower bracket's reach" },
  ],
  unit: 'mm',
  formula: 'shim stack over the cosine of the slope, plus the wedge, plus the reach',
  source: 'plane geometry',
  example: { given: [30, 60, 8, 160], answer: 228, tolerance: 1e-9, source: 'cos 60° = ½: 60 + 8 + 160' },
  run: standoff,
});
