import type { ReactNode } from 'react';

interface Props {
  readonly what: string;
  readonly children: ReactNode;
}

/** A table of what was planned against what was fitted. */
export const CompareTable = ({ what, children }: Props) => (
  <table className="fit-up-table type-small">
    <caption className="base-spoken">{what}s that differ from the plan</caption>
    <thead>
      <tr>
        <th scope="col">{what}</th>
        <th scope="col">Planned</th>
        <th scope="col">As fitted</th>
      </tr>
    </thead>
    <tbody>{children}</tbody>
  </table>
);
