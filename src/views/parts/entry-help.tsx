import type { Argument, LibraryFunction, TableFunction } from '../../calc/record.ts';
import { boundWordsOf } from '../../session/reference/argument-words.ts';
import { callOf } from '../../session/reference/call-of.ts';
import type { Entry } from '../../session/reference/entries.ts';
import { exampleOf } from '../../session/reference/example-of.ts';
import { STANDARD_SOURCE } from '../../session/reference/standard-functions.ts';
import { whereFrom } from '../../session/reference/where-from.ts';
import './entry-help.css';

const yesNo = (answer: number | boolean): string =>
  typeof answer === 'boolean' ? (answer ? 'TRUE' : 'FALSE') : String(answer);

const ArgumentLine = ({ argument }: { readonly argument: Argument }) => (
  <tr>
    <th scope="row">{argument.name}</th>
    <td>
      {argument.meaning}
      {boundWordsOf(argument)}
    </td>
    <td className="base-soft">{argument.unit === '–' ? (argument.type ?? '–') : argument.unit}</td>
  </tr>
);

/** What a function gives, with its source and, where it is one number, its worked example. */
function Gives({ record }: { readonly record: LibraryFunction | TableFunction }) {
  if (!('example' in record)) {
    return (
      <>
        <p>Gives a table: {record.formula}.</p>
        <p className="base-soft">Source: {record.source}.</p>
      </>
    );
  }
  return (
    <>
      <p>
        Gives{record.flag === true ? ' yes or no' : record.unit === '–' ? '' : `, in ${record.unit}`}:{' '}
        {record.formula}.
      </p>
      <p className="entry-help-call">{exampleOf(record)}</p>
      <p className="base-soft">
        Source: {record.source}. Example from: {record.example.source}.
      </p>
    </>
  );
}

/** What a name or function of formulas is: unit, meaning, arguments, source, worked example. */
export function EntryHelp({ entry }: { readonly entry: Entry }) {
  if (entry.kind === 'cell') {
    return (
      <div className="entry-help type-small">
        <p>{entry.cell.help}</p>
        <p className="base-soft">
          {entry.page}, in {entry.unit === '–' ? 'no unit' : entry.unit}. From: {whereFrom(entry.cell)}
        </p>
      </div>
    );
  }
  if (entry.kind === 'standard') {
    const { call, example, answer } = entry.standard;
    return (
      <div className="entry-help type-small">
        <p className="entry-help-call">{call}</p>
        <p>
          Example: {example} gives {yesNo(answer)}.
        </p>
        <p className="base-soft">Source: {STANDARD_SOURCE}.</p>
      </div>
    );
  }
  if (entry.kind === 'function') {
    const { record } = entry;
    return (
      <div className="entry-help type-small">
        <p className="entry-help-call">{callOf(record)}</p>
        {record.arguments.length > 0 && (
          <table className="entry-help-arguments">
            <caption className="base-spoken">Arguments of {record.id}</caption>
            <tbody>
              {record.arguments.map((argument) => (
                <ArgumentLine key={argument.name} argument={argument} />
              ))}
            </tbody>
          </table>
        )}
        <Gives record={record} />
      </div>
    );
  }
  return (
    <p className="entry-help type-small base-soft">
      {entry.kind === 'table'
        ? `${entry.table.help} Columns: ${entry.table.columns.map((column) => column.label.toLowerCase()).join(', ')}, in mm.`
        : entry.kind === 'room'
          ? `Distance left to the limit, in ${entry.unit === '–' ? 'no unit' : entry.unit}; minus when it is outside.`
          : `Your own cell${entry.own.formula === undefined ? '' : `: ${entry.own.formula}`}`}
    </p>
  );
}
