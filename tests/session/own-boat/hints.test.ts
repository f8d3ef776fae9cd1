import { describe, expect, it } from 'vitest';
import { hintsFor } from '../../../src/session/own-boat/hints.ts';
import { firstInputs } from '../../../src/session/own-boat/steps.ts';

const hints = (name: string, lying: 'afloat' | 'ashore'): string => {
  const cell = firstInputs.find((it) => it.name === name);
  return cell === undefined ? '' : hintsFor(cell, { lying }).join(' ');
};

describe('hintsFor', () => {
  it('warns of work over water afloat, and of a boat that is not chocked ashore', () => {
    expect(hints('transom_top', 'afloat')).toContain('over water');
    expect(hints('rudder_overhang', 'ashore')).toContain('not chocked');
    expect(hints('transom_top', 'ashore')).not.toContain('over water');
  });

  it('says what lying ashore does to a height and to a slope', () => {
    expect(hints('transom_top', 'ashore')).toContain('mark the water has left');
    expect(hints('transom_rake', 'ashore')).toContain('seldom lies as it sails');
  });

  it('sends what lies under water to the next time ashore', () => {
    expect(hints('main_rudder_foot', 'afloat')).toContain('stand-in');
    expect(hints('boat_speed', 'afloat')).toBe('');
  });
});
