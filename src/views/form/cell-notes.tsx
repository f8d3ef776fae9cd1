import { useId } from 'react';
import type { InputCell } from '../../plan/template.ts';
import { parseEntry } from '../../units/parse-entry.ts';
import { shown } from '../parts/show.ts';
import { usePlan, useReading, useSession } from '../use-session.ts';

const WHERE: Readonly<Record<InputCell['where'], string>> = {
  reading: 'Read it off the boat.',
  manual: 'From the gear’s own manual, or measured on the gear.',
  assumed: 'Assumed until you know better.',
  choice: 'Your choice.',
};

function usualText(cell: InputCell, units: 'mm' | 'in' | 'both'): string {
  if (cell.usual === undefined) return '';
  const [low, high] = cell.usual;
  return `Usually ${shown(low, cell.unit, units)} to ${shown(high, cell.unit, units)}.`;
}

/** How an input is read, how far it may be off, and who read it when. */
export function CellNotes({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const { units } = usePlan();
  const reading = useReading(cell.name);
  const id = useId();
  const numeric = cell.type === 'number' || cell.type === 'whole';
  const setOffBy = (text: string): void => {
    const entry = parseEntry(text, {
      name: `off by, ${cell.label}`,
      kind: cell.unit === 'mm' ? 'length' : 'number',
      unit: cell.unit,
      bare: units === 'in' ? 'in' : 'mm',
    });
    if (entry.ok && !entry.empty && typeof entry.value === 'number') {
      session.annotate(cell.name, { offBy: entry.value });
    }
  };
  return (
    <div className="cell-notes type-small">
      <p>{cell.help}</p>
      <p className="base-soft">
        {WHERE[cell.where]} {usualText(cell, units)} {cell.source === undefined ? '' : `Source: ${cell.source}.`}
      </p>
      <div className="cell-noted">
        {numeric && (
          <label htmlFor={`${id}off`}>
            Off by, at most
            <input
              id={`${id}off`}
              className="cell-note-box"
              key={reading?.offBy}
              defaultValue={shown(reading?.offBy ?? cell.off_by, cell.unit, units === 'both' ? 'mm' : units)}
              onBlur={(event) => setOffBy(event.target.value)}
            />
          </label>
        )}
        {(['who', 'when', 'with', 'note'] as const).map((key) => (
          <label key={key} htmlFor={id + key}>
            {{ who: 'Read by', when: 'When', with: 'With what', note: 'Note' }[key]}
            <input
              id={id + key}
              className="cell-note-box"
              defaultValue={reading?.[key] ?? ''}
              onBlur={(event) => {
                const text = event.target.value.trim();
                if (text !== (reading?.[key] ?? '')) session.annotate(cell.name, { [key]: text });
              }}
            />
          </label>
        ))}
      </div>
      <p className="base-soft">In formulas: {cell.name}</p>
    </div>
  );
}
