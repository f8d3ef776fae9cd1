import { point } from '../point.ts';
import { type Bench, water } from '../reading/bench.ts';
import type { Scene } from '../scene.ts';
import { polygon, polyline } from '../shapes.ts';
import { asked, note, surveyScene } from './survey-scene.ts';

/** How far aft of everything the line is drawn, mm. */
const AFT = 680;
const BOB = 70;

/** A plumb line hung aft of the stern: heights up from the water, distances level from the line forward. */
export function plumbLine({ n, x, side }: Bench): Scene {
  const [top, bottom] = [n('transom_top'), n('transom_bottom')];
  const [head, foot] = [n('main_rudder_head'), n('main_rudder_foot')];
  const edge = (z: number): number =>
    n('rudder_overhang') +
    ((n('rudder_overhang_foot') - n('rudder_overhang')) * (head - z)) / Math.max(1, head - foot);
  const line = Math.max(x(top), x(bottom), edge(head), edge(foot)) + AFT;
  const [hung, low] = [top + 150, foot - 60];
  const faceRows = [0.88, 0.5, 0.12].map((share) => bottom + (top - bottom) * share);
  const edgeRows = [0.15, 0.7].map((share) => head + (foot - head) * share);
  const shapes = [
    water,
    ...side('transom_rake', 'rudder_overhang'),
    polyline('outline', [point(line - AFT, hung), point(line + 30, hung)]),
    polyline('soft', [point(line, hung), point(line, low)]),
    polygon('fastener', [point(line - 16, low), point(line + 16, low), point(line, low - BOB)]),
  ];
  return surveyScene('A plumb line hung aft of the stern', [
    ...shapes,
    ...faceRows.map((z, i) => asked(`face ${i}`, 'distance', point(x(z), z), point(line, z))),
    ...edgeRows.map((z, i) => asked(`edge ${i}`, 'distance', point(edge(z), z), point(line, z))),
    asked('height', 'height', point(line + 160, 0), point(line + 160, faceRows[0] ?? top), [
      point(line + 160, 0),
      point(line, faceRows[0] ?? top),
    ]),
    asked(
      'height under water',
      'height, minus',
      point(line + 160, 0),
      point(line + 160, edgeRows[1] ?? foot),
      [point(line + 160, 0), point(line, edgeRows[1] ?? foot)],
    ),
    note(['bob, in a bucket of water', 'if it swings'], point(line, low - BOB / 2)),
  ]);
}
