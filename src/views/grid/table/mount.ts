import Handsontable from 'handsontable/base';
import { registerEditor } from 'handsontable/editors/registry';
import { CopyPaste } from 'handsontable/plugins/copyPaste';
import { registerPlugin } from 'handsontable/plugins/registry';
import type { Session } from '../../../session/session.ts';
import { COLUMNS, type Column, columnAt, HEADINGS, SPOKEN, widthOf } from '../columns.ts';
import { editText } from '../edit-text.ts';
import { type Facts, factsOf, sameFacts } from '../facts.ts';
import { dropText, keptText, subscribeToRows } from '../kept-text.ts';
import { put } from '../put.ts';
import { type Entry, type Outcome, putMany } from '../put-many.ts';
import { isEditable, lookOf } from '../row-look.ts';
import { type GridPage, type GridRow, heightOf, isCellRow, isHead, rowsOf } from '../rows.ts';
import { copied, pasted } from './clipboard.ts';
import { EntryEditor, serveEntries } from './entry-editor.ts';
import { type Keys, onTableKey } from './keys.ts';
import { keepOneStop, mend } from './mend.ts';
import { paint, reasonId } from './paint.ts';
import 'handsontable/styles/handsontable.min.css';
import 'handsontable/styles/ht-theme-main-no-icons.min.css';
import './table.css';

const EDITOR = 'sternmount.entry';

registerEditor(EDITOR, EntryEditor);
registerPlugin(CopyPaste);

type Hot = InstanceType<typeof Handsontable>;

/** The grid's own free key: personal and other non-commercial use. A business puts its own here. */
const KEY = 'non-commercial-and-evaluation';

const SCROLLBAR = 14;

/** Which cell of the table is chosen. */
export interface Chosen {
  readonly row: GridRow;
  readonly column: Column;
}

export interface Listeners {
  readonly onChoose: (chosen: Chosen) => void;
  /** Enter or F2 on a cell that is worked out. */
  readonly onExplain: () => void;
  /** Several cells were pasted or emptied at once. */
  readonly onMany: (outcome: Outcome) => void;
}

export interface GridTable {
  readonly resize: () => void;
  /** Brings the focus back to the chosen cell. */
  readonly focus: () => void;
  /** Chooses the value of a cell and brings it into sight; whether the table has it. */
  readonly choose: (name: string) => boolean;
  readonly destroy: () => void;
}

let tables = 0;

/**
 * Mounts the table in an element, as a view of the session: it holds no data and works nothing out. After an edit only
 * the cells of rows that stand on something else than before are painted again.
 */
export function mountTable(
  frame: HTMLElement,
  session: Session,
  page: GridPage | undefined,
  listeners: Listeners,
): GridTable {
  const id = `grid-table-${++tables}`;
  const root = frame.ownerDocument.createElement('div');
  const reasons = frame.ownerDocument.createElement('div');
  reasons.hidden = true;
  frame.append(root, reasons);

  const ownNames = (): readonly string[] => session.plan.ownCells.map((cell) => cell.name);
  let rows = rowsOf(page, ownNames());
  let { ownCells } = session.plan;
  let facts: Facts[] = rows.map((row) => factsOf(session, row));
  /** A refused text keeps the choice where it is, so that its reason stays in sight. */
  let stay = false;

  const blank = (): string[][] => rows.map(() => COLUMNS.map(() => ''));
  const size = () => ({
    width: frame.clientWidth,
    height: frame.clientHeight,
    colWidths: COLUMNS.map((column) => widthOf(column, frame.clientWidth - SCROLLBAR)),
  });

  const paintAt = (td: HTMLTableCellElement, at: number, columnNumber: number): void => {
    const [row, column, known] = [rows[at], columnAt(columnNumber), facts[at]];
    if (row === undefined || column === undefined || known === undefined) return;
    paint(td, row, column, lookOf(row, column, known, session.plan), known, id);
  };

  const hot: Hot = new Handsontable(root, {
    licenseKey: KEY,
    themeName: 'ht-theme-main',
    injectCoreCss: false,
    data: blank(),
    ...size(),
    colHeaders: COLUMNS.map((column) => HEADINGS[column]),
    rowHeaders: false,
    readOnlyCellClassName: '',
    rowHeights: (at: number) => heightOf(rows[at], at),
    columnHeaderHeight: 32,
    autoRowSize: false,
    autoColumnSize: false,
    fillHandle: false,
    undo: false,
    autoWrapRow: false,
    autoWrapCol: false,
    wordWrap: false,
    tabNavigation: false,
    outsideClickDeselects: false,
    copyPaste: { copyColumnHeaders: false },
    enterMoves: () => (stay ? { row: 0, col: 0 } : { row: 1, col: 0 }),
    editor: EDITOR,
    renderer: 'base',
    // After the grid's own renderer, which would take the mark of a refused text off again.
    afterRenderer: (td, at, columnNumber) => paintAt(td, at, columnNumber),
    cells: (at: number, columnNumber: number) => ({
      readOnly: !isEditable(rows[at], columnAt(columnNumber)),
    }),
    beforeKeyDown: (event: KeyboardEvent) => {
      if (hot.getActiveEditor()?.isOpened() === true || !hot.isListening()) return;
      if (!onTableKey(event, keys)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    modifyTransformStart: (delta) => skipHeads(delta),
    afterSelectionEnd: () => tellChosen(),
    beforeChange: (changes) => {
      many(
        changes.flatMap((change) =>
          change === null ? [] : entryAt(change[0], Number(change[1]), String(change[3] ?? '')),
        ),
      );
      return false;
    },
    beforeCopy: (data, ranges) => {
      copied(data, ranges, (at, columnNumber) => {
        const [row, column, known] = [rows[at], columnAt(columnNumber), facts[at]];
        if (row === undefined || column === undefined || known === undefined) return '';
        return { row, column, facts: known, plan: session.plan };
      });
    },
    beforePaste: (data, ranges) => {
      many(
        pasted(data, ranges).flatMap(({ at, column, typed }) => entryAt(at, column, typed)),
      );
      return false;
    },
    beforeSetRangeStart: (coords) => {
      if (isHead(rows[coords.row ?? 0])) coords.row = belowHeads(coords.row ?? 0);
    },
    beforeOnCellMouseDown: (event, coords) => {
      if (isHead(rows[coords.row ?? 0])) event.stopImmediatePropagation();
    },
    modifyFocusOnTabNavigation: (_from, coords) => {
      coords.row = belowHeads(coords.row ?? 0);
    },
    afterRender: () => {
      mend(root, 'Workbook', rows.length);
      const place = chosenAt();
      keepOneStop(root, place === undefined ? null : hot.getCell(place.at, place.columnNumber));
    },
  });

  const chosenAt = (): { at: number; columnNumber: number } | undefined => {
    const highlight = hot.getSelectedRangeLast()?.highlight;
    if (highlight?.row == null || highlight.col == null || highlight.row < 0) return undefined;
    return { at: highlight.row, columnNumber: highlight.col };
  };
  const chosen = (): Chosen | undefined => {
    const place = chosenAt();
    const row = place === undefined ? undefined : rows[place.at];
    const column = place === undefined ? undefined : columnAt(place.columnNumber);
    return row === undefined || column === undefined ? undefined : { row, column };
  };
  const tellChosen = (): void => {
    const now = chosen();
    if (now !== undefined) listeners.onChoose(now);
  };

  const belowHeads = (at: number): number => {
    let to = at;
    while (isHead(rows[to])) to++;
    return rows[to] === undefined ? at : to;
  };

  function skipHeads(delta: { row: number | null; col: number | null }): void {
    const place = chosenAt();
    if (place === undefined || delta.row === null || delta.row === 0) return;
    const step = Math.sign(delta.row);
    let to = place.at + delta.row;
    while (isHead(rows[to])) to += step;
    // Above the first cell stand only headings: stay.
    delta.row = rows[to] === undefined ? lastCell(step) - place.at : to - place.at;
  }
  const lastCell = (step: number): number =>
    step < 0 ? rows.findIndex((row) => !isHead(row)) : rows.length - 1;

  const entryAt = (at: number, columnNumber: number, typed: string): Entry[] => {
    const [row, column] = [rows[at], columnAt(columnNumber)];
    return row !== undefined && column !== undefined && isEditable(row, column) ? [{ row, column, typed }] : [];
  };
  const many = (entries: readonly Entry[]): void => {
    if (entries.length > 0) listeners.onMany(putMany(session, entries));
  };

  const keys: Keys = {
    undo: () => session.undo(),
    redo: () => session.redo(),
    explain: () => {
      const now = chosen();
      if (now !== undefined && isCellRow(now.row)) listeners.onExplain();
    },
    flip: () => {
      const now = chosen();
      if (now?.row.kind !== 'book' || now.row.cell.kind === 'result' || now.column !== 'value') return false;
      if (now.row.cell.type !== 'flag') return false;
      session.choose(now.row.name, session.value(now.row.name) !== true);
      return true;
    },
    drop: () => {
      const now = chosen();
      if (now === undefined || keptText(session, now.row, now.column) === undefined) return false;
      dropText(session, now.row, now.column);
      return true;
    },
    isEditable: () => {
      const now = chosen();
      return now !== undefined && isEditable(now.row, now.column);
    },
  };

  serveEntries(hot, {
    text: (at, columnNumber) => {
      const [row, column, known] = [rows[at], columnAt(columnNumber), facts[at]];
      return row === undefined || column === undefined || known === undefined ? '' : editText(row, column, known);
    },
    label: (at, columnNumber) => {
      const [row, column] = [rows[at], columnAt(columnNumber)];
      const name = row?.kind === 'book' ? row.cell.label : (facts[at]?.own?.label ?? 'New cell');
      return column === undefined ? name : `${name}, ${SPOKEN[column].toLowerCase()}`;
    },
    reason: (at, columnNumber) => {
      const [row, column] = [rows[at], columnAt(columnNumber)];
      if (row === undefined || column === undefined) return undefined;
      return keptText(session, row, column) === undefined ? undefined : reasonId(id, row, column);
    },
    put: (at, columnNumber, typed) => {
      const [row, column, known] = [rows[at], columnAt(columnNumber), facts[at]];
      if (row === undefined || column === undefined || known === undefined) return;
      const isAsBefore = typed === editText(row, column, known) && keptText(session, row, column) === undefined;
      stay = !isAsBefore && !put(session, row, column, typed).ok;
    },
  });

  /** Every refused text's reason, for the cells to point at. */
  const tellReasons = (): void => {
    reasons.replaceChildren(
      ...rows.flatMap((row) =>
        COLUMNS.flatMap((column) => {
          const kept = keptText(session, row, column);
          if (kept?.why === undefined) return [];
          const sentence = frame.ownerDocument.createElement('p');
          sentence.id = reasonId(id, row, column);
          sentence.textContent = kept.why;
          return [sentence];
        }),
      ),
    );
  };

  const paintRow = (at: number): void => {
    for (let columnNumber = 0; columnNumber < COLUMNS.length; columnNumber++) {
      const td = hot.getCell(at, columnNumber);
      if (td !== null) paintAt(td as HTMLTableCellElement, at, columnNumber);
    }
  };

  const refresh = (): void => {
    const isOther = session.plan.ownCells !== ownCells;
    if (isOther) {
      ownCells = session.plan.ownCells;
      const next = rowsOf(page, ownNames());
      if (next.map(nameOf).join(' ') !== rows.map(nameOf).join(' ')) {
        rows = next;
        facts = rows.map((row) => factsOf(session, row));
        tellReasons();
        hot.updateData(blank());
        return;
      }
    }
    let reasonsMoved = false;
    rows.forEach((row, at) => {
      if (isHead(row)) return;
      const now = factsOf(session, row);
      const before = facts[at];
      if (before !== undefined && !isOther && sameFacts(before, now)) return;
      reasonsMoved ||= hasReasons(now) || (before !== undefined && hasReasons(before));
      facts[at] = now;
      paintRow(at);
    });
    if (reasonsMoved) tellReasons();
  };

  tellReasons();
  const stop = subscribeToRows(session, refresh);

  return {
    resize: () => hot.updateSettings(size()),
    focus: () => {
      const place = chosenAt();
      if (place !== undefined) hot.selectCell(place.at, place.columnNumber);
    },
    choose: (name) => {
      const at = rows.findIndex((row) => isCellRow(row) && row.name === name);
      return at >= 0 && hot.selectCell(at, COLUMNS.indexOf('value'));
    },
    destroy: () => {
      stop();
      hot.destroy();
      root.remove();
      reasons.remove();
    },
  };
}

const nameOf = (row: GridRow): string => (isCellRow(row) ? row.name : row.kind);

const hasReasons = ({ valueText, labelText, unitText, offByText }: Facts): boolean =>
  [valueText, labelText, unitText, offByText].some((it) => it !== undefined);
