import { type KeyboardEvent, useCallback, useRef, useState } from 'react';
import type { Units, Value } from '../../plan/plan.ts';
import { isStandIn } from '../../plan/stand-ins.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { typedText } from '../../session/typed-text.ts';
import { enterClear } from '../../session/unit-question/enter-clear.ts';
import { useDraft, useLook, useReading, useSession } from '../use-session.ts';
import { glide } from './glide.ts';
import { bareUnit } from './length-style.ts';
import { piecesOf } from './show.ts';
import { stepped } from './step.ts';
import { useSelectAll } from './use-select-all.ts';
import { useUnits } from './use-units.ts';
import './entry-field.css';

const EDGE = {
  reading: 'entry-reading',
  manual: 'entry-manual',
  'stand-in': 'entry-stand-in',
  assumed: 'entry-stand-in',
  choice: 'entry-choice',
} as const;

/** The class that says where an input's number comes from; one that follows a stand-in has a stand-in's edge. */
export function useEdge(name: string): string {
  const reading = useReading(name);
  const standIn = useLook(useCallback((it: Session) => isStandIn(it.plan, name), [name]));
  if (reading === undefined) return '';
  if (reading.formula === undefined) return EDGE[reading.origin];
  return standIn ? EDGE['stand-in'] : 'entry-formula';
}

/** A keypad with digits alone serves where neither a sign, a fraction nor a formula is to be expected. */
const keypad = (cell: InputCell, units: Units): 'decimal' | 'numeric' | 'text' => {
  if (cell.type === 'whole') return 'numeric';
  const mayBeNegative = (cell.min ?? cell.above ?? -1) < 0;
  return mayBeNegative || (cell.unit === 'mm' && units !== 'mm') ? 'text' : 'decimal';
};

interface Props {
  readonly cell: InputCell;
  /** Ids of the label's and of further describing elements. */
  readonly labelledBy: string;
  readonly describedBy?: string | undefined;
  readonly id?: string | undefined;
}

/** A field for a number, length or formula: shows the value and, while it is edited, the text as it was typed. */
export function EntryField({ cell, labelledBy, describedBy, id }: Props) {
  const session = useSession();
  const units = useUnits();
  const edge = useEdge(cell.name);
  const draft = useDraft(cell.name);
  const value: Value = useLook(useCallback((it: Session) => it.value(cell.name), [cell.name]));
  const locked = useLook(useCallback((it: Session) => it.plan.locked.has(cell.name), [cell.name]));
  const [text, setText] = useState<string>();
  const before = useRef('');
  const { box, selectAll, onMouseDown } = useSelectAll();

  const [piece] = piecesOf(value, cell.unit, units);
  const figure = value === null ? '' : (piece?.figure ?? '');
  const keptText = (): string => {
    const now = session.reading(cell.name);
    return (now === undefined ? undefined : typedText(now, cell.unit, bareUnit(units))) ?? figure;
  };

  const show = (next: string): void => {
    before.current = next;
    setText(next);
  };
  /** Whether what was typed waits for an answer about its unit. */
  const commit = (): boolean => {
    if (text === undefined || text === before.current) return false;
    before.current = text;
    glide();
    return enterClear(session, cell.name, text);
  };
  const step = (direction: 1 | -1): void => {
    if (commit()) return;
    const now = session.value(cell.name);
    if (typeof now !== 'number' || session.reading(cell.name)?.formula !== undefined) return;
    glide();
    const next = stepped(cell, now, direction, units);
    session.choose(cell.name, next);
    show(piecesOf(next, cell.unit, units)[0]?.figure ?? '');
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.key === 'Enter') {
      commit();
      selectAll();
    } else if (event.key === 'Escape') {
      session.dropDraft(cell.name);
      show(keptText());
      selectAll();
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1);
      selectAll();
    }
  };

  return (
    <input
      id={id}
      ref={box}
      className={`entry-box type-value ${edge}`}
      data-input={cell.name}
      aria-labelledby={labelledBy}
      aria-describedby={describedBy}
      aria-invalid={draft === undefined ? undefined : true}
      inputMode={keypad(cell, units)}
      enterKeyHint="done"
      autoComplete="off"
      autoCapitalize="off"
      spellCheck={false}
      readOnly={locked}
      value={text ?? draft?.typed ?? figure}
      onMouseDown={onMouseDown}
      onFocus={() => {
        // Asked anew: the focus may come back in the turn in which a text was refused.
        show(session.draft<string>(cell.name)?.typed ?? keptText());
        selectAll();
      }}
      onChange={(event) => setText(event.target.value)}
      onBlur={() => {
        commit();
        setText(undefined);
      }}
      onKeyDown={onKeyDown}
    />
  );
}
