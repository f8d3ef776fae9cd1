import type { CellName } from '../../plan/names.ts';
import { point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { polygon, polyline } from '../shapes.ts';
import type { Bench, Pictures } from './bench.ts';
import { level, type Picture, upright } from './picture.ts';

/** Half the width and the depth of the parts as drawn here, mm; they are lettered nowhere. */
const [DRIVE, VANE] = [55, 12];

/** The shaft's top with the drive unit and its vane on it, of no particular make. */
function above({ n, shaft, side }: Bench) {
  const top = n('shaft_top_height');
  const x = shaft.at(top).x;
  const box = (half: number, low: number, high: number): Outline =>
    polygon('outline', [
      point(x - half, low),
      point(x + half, low),
      point(x + half, high),
      point(x - half, high),
    ]);
  const [low, high] = [n('vane_low'), n('vane_high')];
  const shapes: readonly Outline[] = [
    ...side('transom_rake', 'shaft_foot_height'),
    box(DRIVE, top, top + n('drive_height')),
    box(VANE, top + low, top + Math.max(high, low + 50)),
    polyline('axis', [point(x, top - 200), point(x, top + Math.max(high, n('drive_height')) + 80)]),
  ];
  return { top, x, shapes, middle: top + (Math.max(0, high) + Math.min(0, low)) / 2 };
}

const up =
  (name: CellName, aside: number) =>
  (bench: Bench): Picture => {
    const { top, x, shapes, middle } = above(bench);
    const value = bench.n(name);
    const rise = Math.abs(value) < 40 ? 40 : value;
    return {
      shapes,
      measured: upright(x + aside, top, top + rise, x + 34, x + 20),
      wide: Math.max(900, Math.abs(bench.n('vane_high')) * 2.2),
      about: point(x, name === 'vane_high' ? middle : top + rise / 2),
    };
  };

const out =
  (name: CellName, share: number) =>
  (bench: Bench): Picture => {
    const { top, x, shapes } = above(bench);
    const reach = Math.max(40, bench.n(name));
    const at = top + (name === 'vane_sweep_radius' ? bench.n('vane_high') : bench.n('drive_height')) * share;
    return {
      shapes: [...shapes, polyline('hidden', [point(x + reach, at - 150), point(x + reach, at + 150)])],
      measured: level(at, x, x + reach, at),
      wide: Math.max(900, reach * 3.4),
      about: point(x, at),
    };
  };

/** What turns above the shaft. */
export const abovePictures: Pictures = {
  drive_height: up('drive_height', 160),
  drive_sweep_radius: out('drive_sweep_radius', 0.5),
  vane_low: up('vane_low', 160),
  vane_high: up('vane_high', 200),
  vane_sweep_radius: out('vane_sweep_radius', 0.6),
};
