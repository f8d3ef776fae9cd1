import { useRef } from 'react';
import type { ListedSection } from '../../order/list/order-list.ts';
import { Action } from '../parts/action.tsx';
import { useBox } from '../parts/use-box.ts';
import { useReady } from '../use-session.ts';
import { OrderTable } from './order-table.tsx';
import { type Order, useOrder } from './use-order.ts';
import './order-view.css';

/** Below this a table of six columns breaks its words, px. */
const COLUMNS_NEED = 600;

interface Props {
  /** Hands the templates to the browser as a file with this ending. */
  readonly onSave: (ending: 'dxf' | 'svg') => void;
}

/** What to buy, cut and mark, with the templates as files. */
export function OrderView({ onSave }: Props) {
  const ready = useReady();
  const order = useOrder();
  const ref = useRef<HTMLDivElement>(null);
  const box = useBox(ref);
  return (
    <div className="order" data-view="order" ref={ref}>
      <h2 className="type-page">Order list</h2>
      <p className="type-small base-soft">
        What to buy, cut and mark for the choices as they stand: estimates. The gear’s manual comes first, and
        the chandler knows what is on the shelf.
      </p>
      {ready && box !== undefined && (
        <>
          {order.stop !== undefined && <p className="order-stop type-small">{order.stop}</p>}
          {order.sections.map((section) => (
            <Section key={section.title} section={section} narrow={box.width < COLUMNS_NEED} />
          ))}
          <Files order={order} onSave={onSave} />
        </>
      )}
    </div>
  );
}

function Section({ section, narrow }: { readonly section: ListedSection; readonly narrow: boolean }) {
  const { title, lead, stop, tables, notes, unanswered, standsOn } = section;
  return (
    <section className="order-section">
      <h3 className="type-section">{title}</h3>
      <p className="type-small base-soft">{lead}</p>
      {stop !== undefined && <p className="order-stop type-small">{stop}</p>}
      {unanswered.map((why) => (
        <p key={why} className="order-why type-small">
          {why}
        </p>
      ))}
      <div className="order-tables" data-slim={tables.every((it) => it.heads.length <= 3) ? '' : undefined}>
        {tables.map((table) => (
          <OrderTable
            key={table.heads[0]?.text}
            table={table}
            label={`${title}: ${table.heads[0]?.text}`}
            narrow={narrow}
          />
        ))}
      </div>
      {notes.length > 0 && (
        <ul className="order-notes type-small">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {standsOn !== undefined && <p className="order-stands type-small">{standsOn}</p>}
    </section>
  );
}

function Files({ order, onSave }: { readonly order: Order } & Props) {
  const { parts, unanswered } = order.templates;
  return (
    <section className="order-section">
      <h3 className="type-section">Templates at true size</h3>
      <p className="type-small base-soft">
        {parts.length === 0
          ? 'There is nothing to cut or mark yet.'
          : `${parts.map(({ title }) => title).join(', ')}. For a shop that cuts sheet, in millimetres: closed outlines, holes and marks on layers of their own.`}
      </p>
      {unanswered.map((why) => (
        <p key={why} className="order-why type-small">
          {why}
        </p>
      ))}
      <div className="order-files">
        <Action disabled={parts.length === 0} onPress={() => onSave('dxf')}>
          Save as DXF
        </Action>
        <Action disabled={parts.length === 0} onPress={() => onSave('svg')}>
          Save as SVG
        </Action>
      </div>
      <p className="type-small base-soft">
        Measure the first piece before the rest is cut: a file opened in other units comes out 25.4 times too
        large or too small.
      </p>
    </section>
  );
}
