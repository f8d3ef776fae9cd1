import { setNotes, setTitle, setUnits } from '../../plan/edit/settings.ts';
import type { Units } from '../../plan/plan.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { usePlan, useSession } from '../use-session.ts';

const UNITS: readonly (readonly [Units, string])[] = [
  ['mm', 'Millimetres'],
  ['in', 'Inches'],
  ['both', 'Both, millimetres first'],
];

/** The plan's title, the units it is shown in, and its notes. */
export function PlanFacts() {
  const session = useSession();
  const { title, units, notes } = usePlan();
  return (
    <section className="plan-file-part plan-file-facts">
      <TextEntry
        label="Title"
        value={title}
        draftKey="plan title"
        onPut={(typed) => session.edit('Title', (plan) => setTitle(plan, typed))}
      />
      <fieldset className="plan-file-units">
        <legend className="type-small base-soft">Units</legend>
        {UNITS.map(([unit, words]) => (
          <label key={unit} className="plan-file-unit type-label">
            <input
              type="radio"
              className="plan-file-radio"
              name="plan-units"
              checked={units === unit}
              onChange={() => session.edit('Units', (plan) => setUnits(plan, unit))}
            />
            {words}
          </label>
        ))}
      </fieldset>
      <TextEntry
        label="Notes"
        value={notes}
        draftKey="plan notes"
        lines={5}
        onPut={(typed) => session.edit('Notes', (plan) => setNotes(plan, typed))}
      />
    </section>
  );
}
