import { describe, expect, it } from 'vitest';
import { dropTail, holdTail, isMissing, readTail } from '../../../src/app/keep/tail.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';

const memory = () => {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
    removeItem: (key: string) => void held.delete(key),
  };
};

const refusing = {
  getItem: (): string | null => {
    throw new DOMException('no', 'SecurityError');
  },
  setItem: (): void => {
    throw new DOMException('full', 'QuotaExceededError');
  },
  removeItem: (): void => {
    throw new DOMException('no', 'SecurityError');
  },
};

describe('the edit that a page going away holds on to', () => {
  it('comes back as it was, once', () => {
    const storage = memory();
    const plan = { ...newPlan('Held'), notes: 'typed just before the reload' };
    holdTail(storage, 'a', 5, plan);
    expect(readTail(storage)).toMatchObject({ id: 'a', when: 5, plan: { title: 'Held', notes: plan.notes } });
    dropTail(storage);
    expect(readTail(storage)).toBeUndefined();
  });

  it('is nothing where the browser refuses it, or where something else stands there', () => {
    holdTail(refusing, 'a', 5, newPlan('Held'));
    dropTail(refusing);
    expect(readTail(refusing)).toBeUndefined();
    for (const text of ['', 'null', '[]', '{"id":1}', '{"id":"a","when":1,"text":"{}"}']) {
      expect(readTail({ ...memory(), getItem: () => text })).toBeUndefined();
    }
  });

  it('is put in only where the store never had it', () => {
    const plan = newPlan('Held');
    const other = { ...plan, notes: 'another' };
    const tail = { id: 'a', when: 5, plan };
    expect(isMissing(tail, 'a', { when: 4, plan: other })).toBe(true);
    expect(isMissing(tail, 'b', { when: 4, plan: other })).toBe(false);
    expect(isMissing(tail, 'a', { when: 6, plan: other })).toBe(false);
    // The save ended while the page went away: a step that changes nothing would stand in the way of undo.
    expect(isMissing(tail, 'a', { when: 4, plan: newPlan('Held') })).toBe(false);
  });
});
