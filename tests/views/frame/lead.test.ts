import { describe, expect, it } from 'vitest';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { leadOf } from '../../../src/views/frame/lead.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

// The template's values are the model's case to start from; its answers are in model.md.
const leadWith = (overrides: Readonly<Record<string, number | boolean | null>>) => {
  const plan = newPlan('Lead');
  const workbook = new Workbook(plan);
  workbook.show(plan, null, new Map(Object.entries(overrides)));
  const lead = leadOf(workbook.judgement(), 'mm');
  workbook.destroy();
  return lead;
};

describe('the lead sentence', () => {
  it('says what is outside, why, and what else is', () => {
    expect(leadWith({ shim_count: 3 })).toEqual({
      says: 'The two rudders pass 44.7 mm apart, amidships; you asked for at least 50 mm.',
      mend: 'rudder_gap',
      more: 'Also outside: Rudder gap, swung.',
    });
  });

  it('names the worst of several by share of its bound', () => {
    const lead = leadWith({ upper_bracket_height: 900 });
    expect(lead?.says).toBe(
      'As planned it cannot be built. The shaft is 20 mm too short: the drive unit would have to sit on the upper clamp; the gear’s manual asks for at least 12 mm.',
    );
    expect(lead?.mend).toBe('drive_headroom');
  });

  it('begins with what cannot be built, however small its share of room is', () => {
    // The foot hangs 2 mm over the edge: 0.02 of 100 mm. The gap is outside by 0.11 of its bound.
    const lead = leadWith({ shim_count: 3, foot_width: 120, transom_half_breadth: 228 });
    expect(lead?.mend).toBe('port_foot_edge');
    expect(lead?.says).toMatch(/^As planned it cannot be built\. The port foot /);
    expect(lead?.more).toMatch(/^Also outside: .*Rudder gap/);
  });

  it('says what is near when nothing is outside', () => {
    const lead = leadWith({});
    expect(lead?.says).toMatch(
      /^Nothing is outside, 3 limits are near\. The lower bolts are loaded to 96 % of their strength; allowed is at most 100 %/,
    );
    expect(lead?.mend).toBe('bolt_utilisation');
  });

  it('says what has no answer, with the reason', () => {
    const lead = leadWith({ laminate_strength: null, rudder_gap_min: 40, shim_sleeve: true });
    expect(lead?.says).toMatch(/has no answer\. .* is empty\.$/);
    expect(lead?.mend).toBeUndefined();
  });

  it('says how little room is left when all are inside', () => {
    // The model's answers: the stock bears 0.785 of what it can, the least share of room then.
    expect(leadWith({ rudder_gap_min: 40, shim_sleeve: true })).toEqual({
      says: expect.stringMatching(
        /^All \d+ limits that apply are inside\. Least room: Stock, 21 % in hand\.$/,
      ),
      mend: undefined,
      more: '',
    });
  });

  it('is silent until there are limits', () => {
    expect(leadOf({ limits: [], leastRoom: undefined, unanswered: 0 }, 'mm')).toBeUndefined();
  });
});
