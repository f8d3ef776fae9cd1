import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputs, limitCells } from '../../src/plan/book.ts';
import { refusal } from '../../src/plan/bounds.ts';
import { clash } from '../../src/plan/relations.ts';
import { differences } from './differences.ts';
import { limitsOnRows } from './limits-on-rows.ts';
import { caseAnswers, caseInputs, type Inputs } from './model-case.ts';
import { randomInputs } from './random-inputs.ts';
import { secondModel } from './second-model.ts';

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
