import { describe, expect, it } from 'vitest';
import { momentOf, nowWords, waited, waitWords } from '../../src/fitting/wait.ts';
import type { StepDone } from '../../src/plan/plan.ts';

const wait = { what: 'The epoxy', done: 'hardened', from: 'plates', hours: 'epoxy_hours' } as const;
const laid: StepDone = { step: 'plates', done: true, when: '2031-04-09 22:30' };
const hours = (value: number): StepDone => ({ step: 'epoxy_hours', done: false, value });
const at = (text: string): Date => momentOf(text) ?? new Date(Number.NaN);

describe('waiting for what hardens', () => {
  it('counts the maker’s hours from the tick, over midnight and a month’s end', () => {
    const it1 = waited(wait, [laid, hours(16)], at('2031-04-10 14:29'));
    expect(it1).toEqual({
      state: 'waiting',
      since: '2031-04-09 22:30',
      until: '2031-04-10 14:30',
      hours: 16,
    });
    expect(waited(wait, [laid, hours(16)], at('2031-04-10 14:30')).state).toBe('over');
    const lastDay = { ...laid, when: '2031-04-30 23:00' };
    expect(waited(wait, [lastDay, hours(1.5)], at('2031-05-01 00:29'))).toMatchObject({
      state: 'waiting',
      until: '2031-05-01 00:30',
    });
  });

  it('says what is missing: the start, the hours, the time of the tick', () => {
    const now = at('2031-04-10 14:30');
    expect(waited(wait, [], now).state).toBe('not begun');
    expect(waited(wait, [{ ...laid, done: false }, hours(1)], now).state).toBe('not begun');
    expect(waited(wait, [laid], now).state).toBe('no hours');
    expect(waited(wait, [{ ...laid, when: 'yesterday' }, hours(1)], now).state).toBe('no time');
    expect(waitWords(wait, waited(wait, [laid], now))).toContain('that its maker gives');
    expect(waitWords(wait, waited(wait, [laid, hours(16)], at('2031-04-10 09:00')))).toBe(
      'The epoxy was laid at 2031-04-09 22:30; its maker gives 16 h. It will have hardened at 2031-04-10 14:30.',
    );
  });

  it('reads the day and minute back that it keeps', () => {
    const now = new Date(2031, 0, 5, 7, 4);
    expect(nowWords(now)).toBe('2031-01-05 07:04');
    expect(momentOf(nowWords(now))).toEqual(now);
    expect(momentOf('2031-01-05')).toBeUndefined();
  });
});
