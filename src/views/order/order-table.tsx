import type { OrderTable as Table } from '../../order/section.ts';

interface Props {
  readonly table: Table;
  /** What the table is, for those who do not see the heading above it. */
  readonly label: string;
  /** Too narrow for columns: each row is a short list. */
  readonly narrow: boolean;
}

/** One table of the order. */
export function OrderTable({ table, label, narrow }: Props) {
  const { heads, rows } = table;
  if (rows.length === 0) return null;
  // A row of two needs no list: its second cell is the first one's value.
  if (narrow && heads.length > 2) return <OrderRows table={table} />;
  return (
    <table className="order-table type-small" aria-label={label}>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head.text} scope="col" data-figure={head.figure ? '' : undefined}>
              {head.text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first, ...others], i) => (
          <tr key={i}>
            <th scope="row">{first}</th>
            {others.map((cell, k) => (
              <td key={heads[k + 1]?.text} data-figure={heads[k + 1]?.figure ? '' : undefined}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const OrderRows = ({ table: { heads, rows } }: { readonly table: Table }) => (
  <ul className="order-rows type-small">
    {rows.map(([first, ...others]) => (
      <li key={first}>
        <p className="type-label order-row-name">{first}</p>
        <dl>
          {others.map(
            (cell, k) =>
              cell !== '' && (
                <div key={heads[k + 1]?.text}>
                  <dt>{heads[k + 1]?.text}</dt>
                  <dd>{cell}</dd>
                </div>
              ),
          )}
        </dl>
      </li>
    ))}
  </ul>
);
