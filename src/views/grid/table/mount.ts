import Handsontable from 'handsontable/base';
import { registerEditor } from 'handsontable/editors/registry';
import { CopyPaste } from 'handsontable/plugins/copyPaste';
import { registerPlugin } from 'handsontable/plugins/registry';
import type { Session } from '../../../session/session.ts';
import { COLUMNS, HEADINGS, widthOf } from '../columns.ts';
import { subscribeToRows } from '../kept-text.ts';
import { belowHeads, moveOver } from '../moves.ts';
import { type Entry, type Outcome, putMany } from '../put-many.ts';
import { isEditable, lookOf } from '../row-look.ts';
import { type GridPage, heightOf, isCellRow, isHead } from '../rows.ts';
import { RowsState } from '../rows-state.ts';
import { whenUnitsClear } from '../when-units-clear.ts';
import { type Chosen, chosenAt, chosenPlace, type Hot } from './chosen.ts';
import { clipText, fillClip, pastedAt } from './clipboard.ts';
import { EntryEditor, serveEntries } from './entry-editor.ts';
import { tableFills } from './fills.ts';
import { onTableKey } from './keys.ts';
import { listOver } from './list-over.ts';
import { listenAfterQuestions } from './listen-after-questions.ts';
import { keepOneStop, mend } from './mend.ts';
import { paint } from './paint.ts';
import { pairOfClicks } from './pair-of-clicks.ts';
import { tellReasons } from './reasons.ts';
import { tableEntries } from './table-entries.ts';
import { tableKeys } from './table-keys.ts';
import 'handsontable/styles/handsontable.min.css';
import 'handsontable/styles/ht-theme-main-no-icons.min.css';
import './table.css';

const EDITOR = 'sternmount.entry';

registerEditor(EDITOR, EntryEditor);
registerPlugin(CopyPaste);

/** The grid's own free key: personal and other non-commercial use. A business puts its own here. */
const KEY = 'non-commercial-and-evaluation';

const SCROLLBAR = 14;
const HEADINGS_HEIGHT = 32;

export interface Listeners {
  readonly onChoose: (chosen: Chosen) => void;
  /** Enter or F2 on a cell that cannot be typed in. */
  readonly onExplain: () => void;
  /** Texts were put into several cells at once. */
  readonly onMany: (outcome: Outcome) => void;
  /** Nothing could be filled. */
  readonly onNoFill: () => void;
}

export interface GridTable {
  /** Fits the table to its frame. */
  readonly resize: () => void;
  /** Brings the focus back to the chosen cell. */
  readonly focus: () => void;
  /** Chooses the value of a cell and brings it into sight; whether the table has it. */
  readonly choose: (name: string) => boolean;
  readonly destroy: () => void;
}

let tables = 0;

/** The grid looks for this mark of its own before it acts on an event. */
const letBe = (event: Event): void => {
  Object.assign(event, { isImmediatePropagationEnabled: false });
};

/**
 * Mounts the table in a frame, as a view of the session: it holds no data and works nothing out. After an edit only the
 * cells of rows that now stand on something else are painted again.
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

  const state = new RowsState(session, page);
  /** A refused text keeps the choice where it is, so that its reason stays in sight. */
  let stay = false;
  /** The cell that Tab leads to: the one chosen last, for the grid forgets it when Tab leads away. */
  let stop: ReturnType<typeof chosenAt>;

  const chosen = () => chosenPlace(hot, state);
  const keys = tableKeys(session, chosen, {
    explain: listeners.onExplain,
    top: (inColumn) =>
      hot.selectCell(belowHeads(state.rows, 0), inColumn ? (chosenAt(hot)?.columnNumber ?? 0) : 0),
    fill: () => fills.fill(),
    fillDown: () => fills.fillDown(),
    list: () => listOver(frame, hot, session, state),
  });
  const fills = tableFills(() => hot, state, {
    onEntries: (entries) => putAll(entries),
    onNone: listeners.onNoFill,
  });
  const blank = (): string[][] => state.rows.map(() => COLUMNS.map(() => ''));
  const size = () => ({
    width: frame.clientWidth,
    height: frame.clientHeight,
    colWidths: COLUMNS.map((column) => widthOf(column, frame.clientWidth - SCROLLBAR)),
  });
  const paintAt = (td: HTMLTableCellElement, at: number, columnNumber: number): void => {
    const place = state.place(at, columnNumber);
    if (place === undefined) return;
    paint(td, place, lookOf(place.row, place.column, place.facts, session.plan), id);
  };
  const entryAt = (at: number, columnNumber: number, typed: string): Entry[] => {
    const place = state.place(at, columnNumber);
    return place !== undefined && isEditable(place.row, place.column) ? [{ ...place, typed }] : [];
  };
  const putAll = (entries: readonly Entry[]): void => {
    if (entries.length === 0) return;
    whenUnitsClear(session, entries, (clear) => listeners.onMany(putMany(session, clear)));
  };

  const clicks = pairOfClicks();
  const hot: Hot = new Handsontable.Core(root, {
    licenseKey: KEY,
    themeName: 'ht-theme-main',
    injectCoreCss: false,
    data: blank(),
    ...size(),
    colHeaders: COLUMNS.map((column) => HEADINGS[column]),
    columnHeaderHeight: HEADINGS_HEIGHT,
    rowHeaders: false,
    rowHeights: (at: number) => heightOf(state.rows[at], at),
    readOnlyCellClassName: '',
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
    enterMoves: () => ({ row: stay ? 0 : 1, col: 0 }),
    editor: EDITOR,
    renderer: 'base',
    cells: (at: number, columnNumber: number) => {
      const place = state.place(at, columnNumber);
      return { readOnly: !isEditable(place?.row, place?.column) };
    },
    // After the grid's own renderer, which would take the mark of a refused text off again.
    afterRenderer: paintAt,
    beforeBeginEditing: (_row, _column, _text, event) =>
      clicks.opens(event) && !(event instanceof MouseEvent && listOver(frame, hot, session, state)),
    beforeKeyDown: (event: KeyboardEvent) => {
      clicks.onKey();
      if (hot.getActiveEditor()?.isOpened() === true || !hot.isListening()) return true;
      if (!onTableKey(event, keys)) return true;
      event.preventDefault();
      event.stopPropagation();
      return false;
    },
    modifyTransformStart: (delta) => {
      const where = chosenAt(hot);
      if (where !== undefined) delta.row = moveOver(state.rows, where.at, delta.row ?? 0);
    },
    beforeOnCellMouseDown: (event, coords) => {
      clicks.onPress();
      if (coords.row !== null && isHead(state.rows[coords.row])) letBe(event);
    },
    modifyFocusOnTabNavigation: (_from, coords) => {
      coords.row = belowHeads(state.rows, coords.row ?? 0);
    },
    afterSelectionEnd: () => {
      const now = chosen();
      if (now !== undefined) listeners.onChoose(now);
    },
    beforeChange: (changes) => {
      putAll(
        changes.flatMap((change) =>
          change === null ? [] : entryAt(change[0], Number(change[1]), String(change[3] ?? '')),
        ),
      );
      return false;
    },
    beforeCopy: (data, ranges) => {
      fillClip(data, ranges, (at, columnNumber) => {
        const place = state.place(at, columnNumber);
        return place === undefined ? '' : clipText(place, session.plan);
      });
    },
    beforePaste: (data, ranges) => {
      putAll(pastedAt(data, ranges).flatMap((it) => entryAt(it.at, it.columnNumber, it.typed)));
      return false;
    },
    afterRender: () => {
      mend(root, 'Workbook', state.rows.length);
      stop = chosenAt(hot) ?? stop;
      keepOneStop(root, stop === undefined ? null : hot.getCell(stop.at, stop.columnNumber));
    },
  });
  serveEntries(
    hot,
    tableEntries(
      session,
      state,
      id,
      (taken) => {
        stay = !taken;
      },
      ({ column }, typed) => {
        stay = true;
        fills.fillWith(column, typed);
      },
    ),
  );
  hot.init();

  const paintRow = (at: number): void => {
    for (let columnNumber = 0; columnNumber < COLUMNS.length; columnNumber++) {
      const td = hot.getCell(at, columnNumber);
      if (td !== null) paintAt(td, at, columnNumber);
    }
  };
  const refresh = (): void => {
    const moved = state.refresh();
    tellReasons(reasons, session, state.rows, id);
    if (moved.rows) hot.updateData(blank());
    else for (const at of moved.at) paintRow(at);
  };
  tellReasons(reasons, session, state.rows, id);
  const stops = [subscribeToRows(session, refresh), listenAfterQuestions(hot, root, session)];

  return {
    resize: () => hot.updateSettings(size()),
    focus: () => {
      if (stop !== undefined) hot.selectCell(stop.at, stop.columnNumber);
    },
    choose: (name) => {
      const at = state.rows.findIndex((row) => isCellRow(row) && row.name === name);
      return at >= 0 && hot.selectCell(at, COLUMNS.indexOf('value'));
    },
    destroy: () => {
      for (const stop of stops) stop();
      hot.destroy();
      root.remove();
      reasons.remove();
    },
  };
}
