import { layout } from '../../drawings/layout/layout.ts';
import type { Scene } from '../../drawings/scene.ts';
import type { Hole } from '../../order/holes.ts';
import type { KeepOut } from '../../order/keep-outs-of.ts';
import type { Units } from '../../plan/plan.ts';
import { drawing, PAPER_RATIOS, ratioWords } from '../page/drawing.ts';
import type { Area } from '../page/paper.ts';
import { MM_PER_PX } from '../page/primitives.ts';
import type { Sheet } from '../page/sheet.ts';
import { keepOutKey } from './keep-out-key.ts';
import { ABOVE, BESIDE, ordinates } from './ordinates.ts';

const GAP = 4;
/** Share of the width that the drawing from the side takes. */
const SIDE = 0.42;

const ratioIn = (scene: Scene, { width, height }: Area): number =>
  layout(
    scene,
    { width: width / MM_PER_PX, height: height / MM_PER_PX },
    { medium: 'paper', ratios: PAPER_RATIOS },
  ).ratio;

/** Both drawings beside each other at one scale, which the title block then carries. */
export function markingDrawings(
  sheet: Sheet,
  side: Scene,
  stern: Scene,
  holes: readonly Hole[],
  keepOuts: readonly KeepOut[],
  units: Units,
  whole: Area,
): void {
  const key = keepOutKey(keepOuts);
  const keyHeight = key === '' ? 0 : sheet.textHeight(key, whole.width, 'small') + 1;
  const area: Area = { ...whole, height: whole.height - keyHeight };
  const y = sheet.text('From the side, bow to the left: plumb heights of the middles', area.x, area.y, {
    style: 'small',
  });
  const left: Area = { x: area.x, y, width: area.width * SIDE, height: area.height - (y - area.y) };
  const right: Area = { ...left, x: area.x + area.width * SIDE + GAP, width: area.width * (1 - SIDE) - GAP };
  sheet.text('From astern: along the face from the centreline, and up it from the mark', right.x, area.y, {
    style: 'small',
  });
  const inner: Area = {
    x: right.x,
    y: right.y + ABOVE,
    width: right.width - BESIDE,
    height: right.height - 2 * ABOVE,
  };
  const ratio = Math.min(ratioIn(side, left), ratioIn(stern, inner));
  drawing(sheet, side, left, [ratio]);
  const { transform } = drawing(sheet, stern, inner, [ratio]);
  ordinates(
    sheet,
    holes,
    keepOuts,
    units,
    { ...right, y: right.y + 1, height: right.height - 2 },
    (across, height) => [
      inner.x + (transform.x + across * transform.scale) * MM_PER_PX,
      inner.y + (transform.y - height * transform.scale) * MM_PER_PX,
    ],
  );
  if (key !== '') sheet.text(key, area.x, area.y + area.height + 1, { style: 'small', width: area.width });
  sheet.scale = ratioWords(ratio);
}
