import { describe, expect, it } from 'vitest';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { readingOf } from '../../../src/plan/plan.ts';
import { ruledMount, withMount } from '../../../src/session/own-boat/with-mount.ts';
import { MADE } from '../../../src/studies/first-mount/ask.ts';

describe('a mount in a plan', () => {
  const plan = newPlan('Any boat');

  it('makes every choice of the mount and nothing else', () => {
    const after = withMount(
      plan,
      MADE.map((_, n) => n + 0.5),
    );
    for (const [name, reading] of after.inputs) {
      const at = (MADE as readonly string[]).indexOf(name);
      if (at < 0) expect(reading).toBe(plan.inputs.get(name));
      else expect(reading).toMatchObject({ value: at + 0.5, origin: 'choice' });
    }
  });

  // The stand-ins by hand: the flange's 140 mm over the lower edge at 40 mm, with 12 mm of room, on the 5 mm grid.
  it('has one by the rule alone, whatever else cannot be worked out', () => {
    const values = new Map(MADE.map((name, n) => [name, ruledMount(plan)[n]]));
    expect(values.get('lower_bracket_height')).toBe(120);
    expect(values.get('starboard_foot_y')).toBe(-(values.get('port_foot_y') as number));
    const bare = { ...plan, inputs: new Map(plan.inputs) };
    bare.inputs.set('transom_top', { value: null, formula: '=900', origin: 'reading' });
    expect(readingOf(bare, 'transom_top')?.value).toBeNull();
    expect(ruledMount(bare).every(Number.isFinite)).toBe(true);
  });
});
