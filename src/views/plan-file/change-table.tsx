import type { Change, ChangeGroup } from '../../session/plan-file/what-changes.ts';

const side = (text: string | null): string => text ?? 'not there';

const Line = ({ change }: { readonly change: Change }) => (
  <tr>
    <th scope="row">
      {change.title}
      {change.name !== undefined && change.name !== change.title && (
        <span className="plan-file-name type-small base-soft">{change.name}</span>
      )}
    </th>
    <td className="base-soft">{side(change.before)}</td>
    <td>{side(change.after)}</td>
  </tr>
);

/** One group of changes: what it is, how it is now, how it would be. Everything from a file is plain text here. */
export const ChangeTable = ({ group }: { readonly group: ChangeGroup }) => (
  <table className="plan-file-changes type-small">
    <caption className="type-label">
      {group.title}, {group.changes.length}
    </caption>
    <thead>
      <tr>
        <th scope="col">What</th>
        <th scope="col">Now</th>
        <th scope="col">Then</th>
      </tr>
    </thead>
    <tbody>
      {group.changes.map((change) => (
        <Line key={change.name ?? change.title} change={change} />
      ))}
    </tbody>
  </table>
);
