import { describe, expect, it } from 'vitest';
import { judge } from '../../src/calc/limits/judge.ts';
import { limitNamed } from '../../src/plan/book.ts';
import type { LimitAnswer } from '../../src/workbook/judged.ts';
import {
  boundWords,
  limitSentence,
  limitTitle,
  roomWords,
  secondWords,
  valueWords,
} from '../../src/workbook/limit-words.ts';

const answer = (name: string, value: number | undefined, low?: number, high?: number): LimitAnswer => {
  const cell = limitNamed(name);
  if (cell === undefined) throw new Error(`There is no limit named ${name}.`);
  const graded = cell.graded !== false;
  const verdict = judge({
    value,
    low,
    high,
    near: cell.near,
    applies: true,
    graded,
    mustExist: cell.must_exist === true,
    lowIsOutside: cell.low_is_outside === true,
  });
  return { name, result: cell.result, value, low, high, near: cell.near, graded, verdict, class: cell.class };
};

describe('the words of a limit', () => {
  it('give distance and direction', () => {
    expect(roomWords(answer('rudder_gap', 44.7009, 50), 'both')).toBe('5.3 mm short');
    expect(roomWords(answer('strut_spread', 61.2579, 45, 90), 'mm')).toBe('16.3° room');
    expect(roomWords(answer('bolt_utilisation', 0.864, undefined, 1), 'mm')).toBe('14 % in hand');
    expect(roomWords(answer('rudder_gap', 44.7009, 50), 'in')).toBe('3⁄16 in short');
  });

  it('show enough decimals that what is outside does not read like its bound', () => {
    const justOutside = answer('rudder_gap', 49.998, 50);
    expect(justOutside.verdict.state).toBe('outside');
    expect(valueWords(justOutside, 'mm')).toBe('49.998 mm');
    expect(roomWords(justOutside, 'mm')).toBe('0.002 mm short');
    expect(valueWords(answer('rudder_gap', 50, 50), 'mm')).toBe('50 mm');
    expect(roomWords(answer('rudder_gap', 50, 50), 'mm')).toBe('0 mm room');
  });

  it('say yes or no where that is all there is', () => {
    expect(valueWords(answer('core_ready', 0, 1), 'mm')).toBe('no');
    expect(roomWords(answer('core_ready', 0, 1), 'mm')).toBe('not held');
    expect(roomWords(answer('core_ready', 1, 1), 'mm')).toBe('held');
    expect(boundWords(answer('core_ready', 1, 1), 'mm')).toBe('yes');
  });

  it('say what a length that is not there lacks', () => {
    expect(roomWords(answer('port_strut_cut', -3, undefined, 800), 'mm')).toBe('not above 0');
    expect(roomWords(answer('port_strut_run', 0, 0), 'mm')).toBe('on the bound');
  });

  it('name the bounds', () => {
    expect(boundWords(answer('bearing_gap', 110, 50, 250), 'mm')).toBe('50 mm to 250 mm');
    expect(boundWords(answer('rudder_gap', 44, 50), 'in')).toBe('at least 1 15⁄16 in');
    expect(boundWords(answer('shim_stack', 48, undefined, 75), 'mm')).toBe('at most 75 mm');
    expect(boundWords(answer('port_strut_run', 219, 0), 'mm')).toBe('more than 0 mm');
  });

  it('make a sentence that says who asks', () => {
    expect(limitSentence(answer('rudder_gap', 44.7009, 50), 'mm')).toBe(
      'The two rudders pass 44.7 mm apart, amidships; you asked for at least 50 mm.',
    );
    expect(limitSentence(answer('shaft_face_gap', 152.1414, 25), 'mm')).toBe(
      'Shaft and transom are 152.1 mm apart at the narrowest.',
    );
    expect(limitSentence(answer('core_ready', 0, 1), 'mm')).toMatch(
      /^The transom is cored: replace the core/,
    );
  });

  it('tell shares in per cent, and what overlaps without a sign', () => {
    const bolts = (share: number) => limitSentence(answer('bolt_utilisation', share, undefined, 1), 'mm');
    expect(bolts(0.79)).toBe('The lower bolts are loaded to 79 % of their strength.');
    expect(bolts(1.0824)).toBe(
      'The lower bolts are loaded to 108 % of their strength; allowed is at most 100 %.',
    );
    // A hair over the bound does not read as the bound.
    expect(bolts(1.0004)).toContain('loaded to 100.04 % of');
    expect(limitSentence(answer('port_foot_edge', -80.4, 0), 'mm')).toBe(
      'The port foot hangs 80.4 mm over the transom’s edge; it takes at least 0 mm.',
    );
    expect(limitSentence(answer('rudder_immersion', 0.772, 0.95), 'mm')).toBe(
      '77 % of the auxiliary rudder’s span is under water; you asked for at least 95 %.',
    );
  });

  it('call a limit by the short name of what it judges', () => {
    expect(limitTitle(answer('rudder_gap_swung', 44, 50))).toBe('Rudder gap, swung');
    expect(limitTitle(answer('shaft_lean', 0, -1, 1))).toBe('Shaft lean');
  });

  it('give a second figure for lengths where both units are shown', () => {
    expect(secondWords(44.7, 'mm', 'both')).toBe('1 3⁄4 in');
    expect(secondWords(44.7, 'mm', 'mm')).toBeUndefined();
    expect(secondWords(1, 'deg', 'both')).toBeUndefined();
  });
});
