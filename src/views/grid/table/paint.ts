import type { Column } from '../columns.ts';
import type { Facts } from '../facts.ts';
import { afterFigure, type Look, valueInUse } from '../row-look.ts';
import { type GridRow, isCellRow, isFifth } from '../rows.ts';
import type { Place } from '../rows-state.ts';

const part = (td: HTMLElement, className: string, text: string): HTMLSpanElement => {
  const span = td.ownerDocument.createElement('span');
  span.className = className;
  span.textContent = text;
  return span;
};

/** A figure, with unseen figures after it where points are to lie under one another. */
function figurePart(td: HTMLElement, { text, form }: Look): HTMLSpanElement {
  const figure = part(td, 'grid-figure', text);
  const rest = form.includes('refused') ? '' : afterFigure(text);
  if (rest !== '') {
    const unseen = part(td, 'grid-unseen', rest);
    unseen.setAttribute('aria-hidden', 'true');
    figure.append(unseen);
  }
  return figure;
}

function fill(td: HTMLElement, column: Column, look: Look): void {
  const word = look.word === '' ? [] : [part(td, 'grid-word', look.word)];
  if (column === 'value') {
    const isBlank = look.text === '' && !look.form.startsWith('box');
    td.replaceChildren(...word, ...(isBlank ? [] : [figurePart(td, look)]));
  } else if (look.form === 'head section') {
    td.replaceChildren(part(td, 'grid-head-title', look.text));
  } else if (word.length > 0) {
    td.replaceChildren(part(td, 'grid-text', look.text), ...word);
  } else {
    td.textContent = look.text;
  }
}

/** Characters of a name from which it is lettered closer, and closer still. */
const LONG = 36;
const LONGER = 44;

const lettering = (column: Column, { text }: Look): string => {
  if (column !== 'label' || text.length <= LONG) return '';
  return text.length > LONGER ? 'grid-longer' : 'grid-long';
};

const classOf = (row: GridRow, column: Column, look: Look, facts: Facts): string =>
  [
    'grid-cell',
    `grid-${column}`,
    ...look.form.split(' ').map((form) => `grid-is-${form}`),
    row.kind === 'page' || row.kind === 'section' ? `grid-${row.kind}` : '',
    isFifth(row) ? 'grid-fifth' : '',
    lettering(column, look),
    column === 'label' && facts.changed ? 'grid-changed' : '',
    row.kind === 'book' && row.cell.kind === 'choice' && column === 'value' ? 'grid-of-choice' : '',
  ]
    .filter((name) => name !== '' && name !== 'grid-is-none')
    .join(' ');

const attribute = (td: HTMLElement, name: string, value: string | undefined): void => {
  if (value === undefined) td.removeAttribute(name);
  else if (td.getAttribute(name) !== value) td.setAttribute(name, value);
};

/** The page hooks: which cell this is, what it holds in base units, and whether it can be typed in. */
function hook(td: HTMLElement, row: GridRow, column: Column, look: Look, facts: Facts): void {
  const isValue = column === 'value' && isCellRow(row);
  const value = isValue ? valueInUse(facts) : null;
  attribute(td, 'data-name', isValue ? row.name : undefined);
  attribute(td, 'data-value', isValue ? (value === null ? '' : String(value)) : undefined);
  attribute(td, 'data-input', isValue && look.editable ? row.name : undefined);
}

/** Where the reason of a refused text stands, for `aria-describedby`. */
export const reasonId = (table: string, row: GridRow, column: Column): string =>
  `${table}-${column}-${isCellRow(row) ? row.name : row.kind}`;

/** Shows a cell of the table in an element that may have shown another before. */
export function paint(
  td: HTMLTableCellElement,
  { row, column, facts }: Place,
  look: Look,
  table: string,
): void {
  const isHead = row.kind === 'page' || row.kind === 'section';
  td.className = td.className.replace(/(^| )grid-\S+/g, '').trim();
  td.className += `${td.className === '' ? '' : ' '}${classOf(row, column, look, facts)}`;
  td.colSpan = isHead && column === 'label' ? 5 : 1;
  td.hidden = isHead && column !== 'label';
  fill(td, column, look);
  attribute(td, 'role', column === 'label' ? 'rowheader' : 'gridcell');
  attribute(td, 'aria-readonly', look.editable ? undefined : 'true');
  attribute(td, 'aria-invalid', look.refused ? 'true' : undefined);
  attribute(td, 'aria-describedby', look.refused ? reasonId(table, row, column) : undefined);
  hook(td, row, column, look, facts);
}
