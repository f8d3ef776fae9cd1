import { describe, expect, it } from 'vitest';
import { unitQuestionsOf } from '../../../src/session/unit-question/unit-questions.ts';
import { type Entry, putMany } from '../../../src/views/grid/put-many.ts';
import { whenUnitsClear } from '../../../src/views/grid/when-units-clear.ts';
import { openSession, rowAndFacts } from './given.ts';

describe('a block that is pasted', () => {
  it('asks once for all its lengths, which are then all in the unit that was said', () => {
    const session = openSession();
    const entry = (name: string, column: Entry['column'], typed: string): Entry => ({
      row: rowAndFacts(session, name).row,
      column,
      typed,
    });
    const entries = [
      entry('upper_bracket_height', 'value', '31 1/2'),
      entry('upper_bracket_height', 'offBy', '1/8'),
      entry('lower_bracket_height', 'value', '3'),
      entry('boat_speed', 'value', '7'),
      entry('transom_top', 'value', '90 cm'),
    ];
    expect(whenUnitsClear(session, entries, (clear) => void putMany(session, clear))).toBe(true);
    expect(session.undoes).toBeUndefined();
    const question = unitQuestionsOf(session).now();
    expect(question?.count).toBe(3);
    question?.answer('in');
    const read = (name: string) => session.reading(name);
    expect(read('upper_bracket_height')).toMatchObject({ value: 800.1, offBy: 3.175, typed: '31 1/2 in' });
    expect(read('lower_bracket_height')).toMatchObject({ value: 76.2, typed: '3 in' });
    expect(read('boat_speed')).toMatchObject({ value: 7, typed: '7' });
    expect(read('transom_top')).toMatchObject({ value: 900, typed: '90 cm' });
    session.undo();
    expect(session.undoes).toBeUndefined();
  });

  it('asks nothing where no length is far from usual', () => {
    const session = openSession();
    const entries: readonly Entry[] = [
      { row: rowAndFacts(session, 'upper_bracket_height').row, column: 'value', typed: '810' },
    ];
    expect(whenUnitsClear(session, entries, (clear) => void putMany(session, clear))).toBe(false);
    expect(session.value('upper_bracket_height')).toBe(810);
  });
});
