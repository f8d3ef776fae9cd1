import { type Answer, NoAnswer } from '../answer.ts';
import { type Argument, record } from '../record.ts';

const heights: readonly Argument[] = [
  { name: 'vane_head', unit: 'mm', meaning: "The auxiliary rudder's head" },
  { name: 'vane_foot', unit: 'mm', meaning: "The auxiliary rudder's foot" },
  { name: 'main_head', unit: 'mm', meaning: "The head of the boat's own rudder" },
  { name: 'main_foot', unit: 'mm', meaning: "The foot of the boat's own rudder" },
];

/** Lower end less upper end of the heights both rudders take up, mm: 0 or less when they share any. */
const apart = (vaneHead: number, vaneFoot: number, mainHead: number, mainFoot: number): number =>
  Math.max(vaneFoot, mainFoot) - Math.min(vaneHead, mainHead);

/** 1 when the two rudders share at least one height, else 0. */
export const ruddersShareHeight = (
  vaneHead: number,
  vaneFoot: number,
  mainHead: number,
  mainFoot: number,
): number => (apart(vaneHead, vaneFoot, mainHead, mainFoot) <= 0 ? 1 : 0);

/** Height between two rudders that share none, mm. */
export function rudderGapVertical(
  vaneHead: number,
  vaneFoot: number,
  mainHead: number,
  mainFoot: number,
): Answer {
  const gap = apart(vaneHead, vaneFoot, mainHead, mainFoot);
  return gap > 0 ? gap : new NoAnswer('The two rudders share a height, so none is left between them.');
}

export const ruddersShareHeightRecord = record({
  id: 'RUDDERS_SHARE_HEIGHT',
  title: 'Do the two rudders share a height',
  arguments: heights,
  unit: '–',
  flag: true,
  formula: 'TRUE when the higher foot is not above the lower head',
  source: 'plane geometry',
  example: { given: [-50, -950, -100, -1200], answer: 1, tolerance: 0, source: 'by hand' },
  run: ruddersShareHeight,
});

export const rudderGapVerticalRecord = record({
  id: 'RUDDER_GAP_VERTICAL',
  title: 'Height between the two rudders',
  arguments: heights,
  unit: 'mm',
  formula: 'higher foot less lower head, where that is above 0',
  source: 'plane geometry',
  example: { given: [-50, -95, -100, -1200], answer: 5, tolerance: 0, source: 'by hand' },
  run: rudderGapVertical,
});
