import { describe, expect, it } from 'vitest';
import { leftToStandIn, nothingYet, withAnswer, withTyped } from '../../../src/session/own-boat/own-boat.ts';
import { pictureAsk } from '../../../src/session/own-boat/picture-ask.ts';
import { firstInputs } from '../../../src/session/own-boat/steps.ts';

const cell = (name: string) => firstInputs.find((it) => it.name === name) ?? expect.fail();

describe('pictureAsk', () => {
  it('has what was read and what was left, and nothing that was refused or is still to come', () => {
    const inches = withAnswer(nothingYet, 'units', 'in');
    const typed = withTyped(withTyped(inches, 'transom_top', '2 3/8'), 'transom_bottom', '2 3/0');
    const state = leftToStandIn(typed, 'boat_speed');
    expect(pictureAsk(state, cell('transom_top'))).toMatchObject({
      name: 'transom_top',
      unread: false,
      units: 'in',
    });
    const { values, unread } = pictureAsk(state, cell('transom_bottom'));
    expect(unread).toBe(true);
    expect(values.get('transom_top')).toBe(60.325);
    expect(values.get('boat_speed')).toBe(8.75);
    expect(values.has('transom_bottom')).toBe(false);
    expect(values.has('shaft_length')).toBe(false);
  });

  it('leans the transom as it was said to, before its slope is read', () => {
    const ask = pictureAsk(withAnswer(nothingYet, 'lean', 'aft'), cell('transom_rake'));
    expect(ask.values.get('transom_rake')).toBe(10);
    expect(ask.unread).toBe(true);
  });
});
