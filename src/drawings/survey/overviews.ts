import type { CellName } from '../../plan/names.ts';
import { newPlan } from '../new-plan.ts';
import { type Point, point } from '../point.ts';
import { benchFor } from '../reading/bench.ts';
import { withTypical } from '../reading/typical.ts';
import type { Label, Outline, Scene } from '../scene.ts';
import { polyline } from '../shapes.ts';
import { note, numbered, surveyScene } from './survey-scene.ts';

/** The number a reading carries on the form; readings without one are not lettered. */
export type Numbers = ReadonlyMap<string, number>;

const labels = (places: readonly (readonly [name: string, at: Point])[], numbers: Numbers): Label[] =>
  places.flatMap(([name, at]) => {
    const number = numbers.get(name);
    return number === undefined ? [] : [numbered(number, at, name)];
  });

/** The stern from the side with the places of the readings, each with its number on the form. */
export function sideOverview(numbers: Numbers): Scene {
  const { shapes, points } = newPlan();
  const n = (name: CellName): number =>
    withTypical({ number: () => null, flag: () => null }).number(name) ?? 0;
  const at = (name: string, aside: number, down = 0): Point => {
    const place = points.find((it) => it.name === name)?.at ?? point(0, 0);
    return point(place.x + aside, place.y - down);
  };
  const half = n('tube_od') / 2;
  const [drive, shaft] = [at('drive_overlap', half + 20, 60), at('shaft_length', half, 120)];
  const auxiliary = at('vane_rudder_chord', 0, 200);
  const blade = {
    x0: -n('rudder_stock_ahead') - 40,
    y0: n('main_rudder_foot'),
    x1: 0,
    y1: n('main_rudder_head'),
  };
  const own: Label = {
    kind: 'label',
    role: 'name',
    lines: ['the boat’s', 'own rudder'],
    at: point(-200, -600),
    inside: blade,
  };
  return surveyScene('The stern from the side, with the number of each reading', [
    ...shapes.filter((shape) => shape.kind !== 'label'),
    note(['waterline mark'], point(0, 0)),
    note(['drive unit'], drive),
    note(['shaft, a tube with', 'a stock inside'], shaft),
    note(['auxiliary rudder'], auxiliary),
    own,
    ...labels(
      points.map(({ name, at }) => [name, at] as const),
      numbers,
    ),
  ]);
}

/** The transom from astern with the places of the readings, each with its number on the form. */
export function sternOverview(numbers: Numbers): Scene {
  const bench = benchFor(withTypical({ number: () => null, flag: () => null }));
  const outline = bench?.stern('transom_rake') ?? [];
  const n = bench?.n ?? (() => 0);
  const water: Outline = { kind: 'water', role: 'water', level: 0 };
  const [top, bottom] = [n('transom_top'), n('transom_bottom')];
  const [high, low] = [n('port_foot_height'), n('lower_bracket_height')];
  return surveyScene('The transom from astern, port to the left, with the number of each reading', [
    water,
    ...outline.map((shape): Outline => ({ ...shape, role: 'dashed' })),
    polyline('axis', [point(0, bottom - 90), point(0, top + 90)]),
    polyline('dashed', [point(0, high), point(n('transom_half_breadth'), high)]),
    polyline('dashed', [point(0, low), point(n('transom_half_breadth_low'), low)]),
    ...labels(
      [
        ['transom_top', point(0, top)],
        ['transom_bottom', point(0, bottom)],
        ['transom_half_breadth', point(n('transom_half_breadth') / 2, high)],
        ['transom_half_breadth_low', point(n('transom_half_breadth_low') / 2, low)],
        ['transom_camber_radius', point(-n('transom_half_breadth') / 2, (high + low) / 2)],
        ['heel_angle', point(n('transom_half_breadth') * 0.8, 0)],
      ],
      numbers,
    ),
  ]);
}
