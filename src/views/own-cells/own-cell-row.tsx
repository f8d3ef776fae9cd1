import { memo } from 'react';
import { renameOwnCell, setOwnCell } from '../../plan/edit/own-cells.ts';
import type { OwnCell } from '../../plan/plan.ts';
import { readContent } from '../../session/own-cells/read-content.ts';
import type { Done } from '../../session/session.ts';
import { Action } from '../parts/action.tsx';
import { Quantity } from '../parts/quantity.tsx';
import { TextEntry } from '../parts/text-entry.tsx';
import { useAnswer, useChanged, useSession } from '../use-session.ts';

interface Props {
  readonly cell: OwnCell;
  readonly onFormula: (box: HTMLInputElement) => void;
  readonly onDelete: () => void;
  /** Why the cell could not be deleted. */
  readonly whyKept: string | undefined;
}

/** What an own cell holds, as a person would type it. */
const typedOf = ({ formula, value }: OwnCell): string => formula ?? (value === null ? '' : String(value));

/** One own cell: label, name, unit, what it holds, and its answer or why it has none. */
export const OwnCellRow = memo(function OwnCellRow({ cell, onFormula, onDelete, whyKept }: Props) {
  const session = useSession();
  const answer = useAnswer(cell.name);
  const changed = useChanged(cell.name);
  const { name, label, unit } = cell;
  const value = answer?.value ?? null;

  const change = (to: Partial<OwnCell>): Done =>
    session.edit(label, (plan) => setOwnCell(plan, { ...cell, ...to }));
  const putContent = (typed: string): Done =>
    session.edit(label, (plan) => {
      const content = readContent(plan, typed, label, unit);
      if (!content.ok) return content;
      const { formula: _before, ...rest } = cell;
      const { ok: _ok, ...held } = content;
      return setOwnCell(plan, { ...rest, ...held });
    });
  return (
    <li className="own-cells-row" data-cell={name} data-changed={changed ? '' : undefined}>
      <TextEntry
        label="Label"
        value={label}
        draftKey={`own label ${name}`}
        onPut={(it) => change({ label: it.trim() })}
      />
      <TextEntry
        label="Name in formulas"
        value={name}
        draftKey={`own name ${name}`}
        code
        onPut={(it) => session.edit(`Rename ${label}`, (plan) => renameOwnCell(plan, name, it.trim()))}
      />
      <TextEntry
        label="Unit"
        value={unit}
        draftKey={`own unit ${name}`}
        onPut={(it) => change({ unit: it.trim() })}
      />
      <div className="own-cells-holds">
        <TextEntry
          label="Formula after =, or a number in its unit"
          value={typedOf(cell)}
          draftKey={`own value ${name}`}
          code
          input={name}
          onPut={putContent}
          onFocused={(box) => onFormula(box as HTMLInputElement)}
        />
      </div>
      <div className="own-cells-answer" aria-live="polite">
        <span className="type-value" data-name={name} data-value={value === null ? '' : String(value)}>
          {value !== null && <Quantity value={value} unit={unit === '' ? '–' : unit} />}
        </span>
        {answer?.why !== undefined && <span className="type-small">No answer: {answer.why}</span>}
      </div>
      <span className="own-cells-delete">
        <Action says={`Delete ${label}`} onPress={onDelete}>
          Delete
        </Action>
      </span>
      {whyKept !== undefined && (
        <p className="own-cells-why type-small" role="alert">
          {whyKept}
        </p>
      )}
    </li>
  );
});
