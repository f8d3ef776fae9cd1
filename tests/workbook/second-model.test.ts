import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { inputs, limitCells } from '../../src/plan/book.ts';
import { refusal } from '../../src/plan/bounds.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { clash } from '../../src/plan/relations.ts';
import { evaluation } from '../../src/workbook/evaluation.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { limitsOnRows } from './limits-on-rows.ts';
import { caseAnswers, caseInputs, type Inputs } from './model-case.ts';
import { randomInputs } from './random-inputs.ts';
import { secondModel } from './second-model.ts';

const plan = newPlan('Random plans');
const book = new Workbook(plan, null);
afterAll(() => book.destroy());

/** mm; the second model narrows the closest approach down instead of solving for it. */
const SWUNG = 0.01;
/** Near band of that limit, mm. */
const SWUNG_NEAR = 10;
/** Share of a value, and what is left of two that cancel. */
const RELATIVE = 1e-6;
const CANCELLED = 1e-9;

type Maybe = number | null;

function alike(name: string, answer: Maybe, expected: Maybe, slack = 0): string | undefined {
  if (answer === null || expected === null) {
    return answer === expected ? undefined : `${name}: ${answer}, the second model has ${expected}`;
  }
  const allowed = Math.max(slack, RELATIVE * Math.max(Math.abs(answer), Math.abs(expected)) + CANCELLED);
  return Math.abs(answer - expected) <= allowed
    ? undefined
    : `${name}: ${answer}, the second model has ${expected}`;
}

/** All that the workbook and the second model say differently about the same inputs. */
function differences(drawn: Inputs): string[] {
  book.show(plan, null, new Map(Object.entries(drawn)));
  const ours = evaluation(book, plan);
  const second = secondModel(drawn);
  const found: (string | undefined)[] = [];
  for (const [name, expected] of Object.entries(second.results)) {
    if (!(name in ours.results)) found.push(`${name} is not a result of the workbook`);
    found.push(alike(name, ours.results[name] ?? null, expected, name === 'rudder_gap_swung' ? SWUNG : 0));
  }
  const judged = new Set(second.limits.map((it) => it.name));
  const names = ours.limits.map((it) => it.name);
  found.push(...[...judged].filter((name) => !names.includes(name)).map((name) => `${name} is no limit`));
  for (const limit of second.limits) {
    const { name, room } = limit;
    const swung = name === 'rudder_gap_swung';
    const mine = ours.limits.find((it) => it.name === name);
    if (mine === undefined) continue;
    // Where the value stands on the edge of a state, the last digit decides, and both may be right.
    const edge = swung ? 2 * SWUNG : CANCELLED;
    const onEdge =
      room !== null && (Math.abs(room) <= edge || (swung && Math.abs(room - SWUNG_NEAR) <= edge));
    if (mine.state !== limit.state && !onEdge) {
      found.push(`${name} is ${mine.state}, the second model says ${limit.state}`);
    }
    found.push(alike(`value of ${name}`, mine.value, limit.value, swung ? SWUNG : 0));
    found.push(alike(`low bound of ${name}`, mine.low, limit.low));
    found.push(alike(`high bound of ${name}`, mine.high, limit.high));
    found.push(alike(`room of ${name}`, mine.room, room, swung ? SWUNG : 0));
    const perRoom = room !== null && room !== 0 && limit.ratio !== null ? Math.abs(limit.ratio / room) : 0;
    found.push(alike(`room ratio of ${name}`, mine.room_ratio, limit.ratio, swung ? SWUNG * perRoom : 0));
  }
  // What the least room is among can be compared only where the second model judges all that applies.
  if (ours.limits.some((it) => !judged.has(it.name) && it.state !== 'does not apply')) {
    return found.filter((it) => it !== undefined);
  }
  const least = ours.least_room;
  const slack = least?.name === 'rudder_gap_swung' ? SWUNG : 0;
  found.push(alike('least room', least?.value ?? null, second.leastRatio, slack));
  const named = ours.limits.find((it) => it.name === least?.name);
  if (least !== null && (named?.room_ratio ?? -1) !== least.value)
    found.push(`least room is not that of ${least.name}`);
  if (ours.unanswered !== second.unanswered) {
    found.push(`${ours.unanswered} unanswered, the second model has ${second.unanswered}`);
  }
  return found.filter((it) => it !== undefined);
}

/** Throws what differs, and which inputs differ from the case to start from. */
function agree(drawn: Inputs): void {
  const found = differences(drawn);
  if (found.length === 0) return;
  const other = Object.entries(drawn).filter(([name, value]) => value !== caseInputs[name]);
  throw new Error(`${found.join('\n')}\nwith ${JSON.stringify(Object.fromEntries(other))}`);
}

describe('the second model', () => {
  it('judges every limit that needs no rows', () => {
    const known = secondModel(caseInputs).limits.map((it) => it.name);
    const names = limitCells.map((it) => it.name).filter((name) => !limitsOnRows.includes(name));
    expect(names.filter((name) => !known.includes(name))).toEqual([]);
  });

  it('gives the printed answers of the case to start from', () => {
    const { results } = secondModel(caseInputs);
    for (const [name, printed] of Object.entries(caseAnswers)) {
      const answer = results[name];
      if (printed === null || answer === null || answer === undefined)
        expect([name, answer]).toEqual([name, printed]);
      else expect(Math.abs(answer - printed)).toBeLessThanOrEqual(1e-4);
    }
  });
});

describe('the workbook on plans drawn at random', { timeout: 60_000 }, () => {
  const met: Record<string, number> = {};
  const meet = (...kinds: (string | false)[]): void => {
    for (const kind of kinds) if (kind !== false) met[kind] = (met[kind] ?? 0) + 1;
  };

  it('agrees with the second model in every result, state, room and missing answer', () => {
    fc.assert(
      fc.property(randomInputs, (drawn) => {
        for (const cell of inputs) expect(refusal(cell, drawn[cell.name] ?? null)).toBeUndefined();
        expect(clash((name) => drawn[name] ?? null)).toBeUndefined();
        agree(drawn);

        const { results } = secondModel(drawn);
        meet(
          results.bolt_utilisation === null ? 'not held' : 'held',
          drawn.strut_count === 1 ? 'single strut' : 'two struts',
          results.rudder_gap === null ? 'no shared height' : 'shared height',
          results.rudder_gap !== null && results.rudder_gap_swung === null && 'no chord aft of the axis',
          results.rudder_gap_swung === 0 && 'rudders cross',
          results.shaft_gap !== null && 'shaft beside the rudder',
          results.drive_face_gap !== null && 'drive unit beside the transom',
          drawn.transom_camber_radius !== 0 && 'cambered',
          drawn.lower_flange_hinged === false && 'wedge',
          drawn.shim_sleeve === true && 'sleeves',
          drawn.transom_build === 'cored' && 'cored',
          (drawn.upper_bracket_height as number) <= (drawn.lower_bracket_height as number) &&
            'swapped brackets',
          results.strut_tubes_needed === null && 'cannot be cut',
          results.strut_tubes_needed === 2 && 'two tubes',
          results.lower_bolt_length === null && 'threaded rod',
        );
      }),
      // Shrinking a hundred inputs takes minutes and tells no more.
      { numRuns: 300, seed: 7, endOnFailure: true },
    );
  });

  it('met every kind of plan in doing so', () => {
    for (const kind of [
      ...['held', 'not held', 'single strut', 'two struts', 'shared height', 'no shared height'],
      ...[
        'no chord aft of the axis',
        'rudders cross',
        'shaft beside the rudder',
        'drive unit beside the transom',
      ],
      ...[
        'cambered',
        'wedge',
        'sleeves',
        'cored',
        'swapped brackets',
        'cannot be cut',
        'two tubes',
        'threaded rod',
      ],
    ]) {
      expect([kind, (met[kind] ?? 0) >= 3]).toEqual([kind, true]);
    }
  });

  it('agrees with it where values meet: heights that touch, bounds that coincide, zeros', () => {
    const meeting: readonly Inputs[] = [
      // The vane rudder's head at the main rudder's foot, then a hair below it.
      { main_rudder_foot: -50, main_rudder_head: 100 },
      { main_rudder_foot: -49.5, main_rudder_head: 100 },
      {
        shaft_foot_height: -1050,
        vane_rudder_drop: 150,
        lower_bracket_height: -900,
        upper_bracket_height: -400,
      },
      { lean_max: 0 },
      { lean_max: 0, shaft_lean: 0.5 },
      { spread_min: 60, spread_max: 60 },
      { bearing_gap_min: 110, bearing_gap_max: 110 },
      { bearing_gap_min: 100, bearing_gap_max: 120 },
      { upper_bracket_height: 250 },
      { lower_bracket_height: 100 },
      { upper_bracket_height: 1100 },
      { boat_speed: 0 },
      { rudder_gap_min: 0 },
      { single_foot_y: 0, strut_count: 1, pin_forward: -700 },
      { pin_half_width: 170 },
      { main_rudder_swing: 0, vane_rudder_swing: 0, shaft_offset: 90 },
      { main_rudder_swing: 90, vane_rudder_swing: 90, shaft_offset: 300 },
      { main_rudder_swing: 45, vane_rudder_swing: 45, shaft_offset: 200, shaft_lean: 4 },
      { vane_rudder_balance: 0 },
      { vane_rudder_balance: 230 },
      { rudder_stock_ahead: -58 },
      { rudder_stock_ahead: -35 },
      { strut_end_allowance: 140 },
      { strut_supply_length: 412.3646 },
      { strut_supply_count: 0 },
      { plate_thickness: 0, foot_pad: 4 },
    ];
    for (const changes of meeting) agree({ ...caseInputs, ...changes });
  });
});
