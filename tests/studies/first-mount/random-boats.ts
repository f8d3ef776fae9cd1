import { seeded } from '../../../src/calc/uncertainty/seeded.ts';
import type { InputName } from '../../../src/plan/names.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan, Value } from '../../../src/plan/plan.ts';

/** A boat drawn at random, the same for the same number: every kind of stern, rudders hung on it or under the hull. */
export function randomBoat(number: number): Plan {
  const random = seeded(number * 7919 + 13);
  const between = (low: number, high: number): number => Math.round(low + (high - low) * random());
  const oneIn = (count: number): boolean => random() < 1 / count;
  const rake = between(-350, 350) / 10;
  const bottom = between(-150, 150);
  const half = between(350, 1200);
  const isHung = oneIn(4);
  const head = isHung ? between(50, 350) : between(-350, 0);
  const overhang = isHung ? between(20, 140) : between(-250, 90);
  const values: readonly (readonly [InputName, Value])[] = [
    ['transom_rake', rake],
    ['transom_bottom', bottom],
    ['transom_top', bottom + between(720, 1400)],
    ['transom_half_breadth', half],
    ['transom_half_breadth_low', Math.round((half * between(55, 100)) / 100)],
    ['transom_camber_radius', oneIn(2) ? 0 : between(1500, 8000)],
    ['transom_thickness', between(10, 40)],
    ['main_rudder_head', head],
    ['main_rudder_foot', head - between(700, 1500)],
    ['rudder_overhang', overhang],
    ['rudder_overhang_foot', overhang + between(-40, 40)],
    ['rudder_stock_ahead', isHung ? -between(-30, 0) : between(250, 600)],
    ['boat_speed', between(24, 34) / 4],
    ['shaft_length', between(900, 1500)],
    ['lower_reach', between(150, 280)],
    ['lower_flange_hinged', !oneIn(4)],
  ];
  const plan = newPlan(`Boat ${number}`);
  const inputs = new Map(plan.inputs);
  for (const [name, value] of values) {
    const reading = inputs.get(name);
    if (reading !== undefined) inputs.set(name, { ...reading, value, origin: 'reading' });
  }
  return { ...plan, units: oneIn(3) ? 'in' : 'mm', inputs };
}
