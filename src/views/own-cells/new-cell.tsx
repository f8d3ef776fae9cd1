import { type RefObject, useId, useState } from 'react';
import { setOwnCell } from '../../plan/edit/own-cells.ts';
import { ownNameRefusal } from '../../plan/own-name.ts';
import { nameFrom } from '../../session/own-cells/name-from.ts';
import { readContent } from '../../session/own-cells/read-content.ts';
import { Action } from '../parts/action.tsx';
import { useKeptDraft } from '../parts/use-kept-draft.ts';
import { usePlan, useSession } from '../use-session.ts';

interface Props {
  readonly onFormula: (box: HTMLInputElement) => void;
  readonly contentBox: RefObject<HTMLInputElement | null>;
}

/** Adds an own cell. What is typed stays until it is added, also when the page is left. */
export function NewCell({ onFormula, contentBox }: Props) {
  const session = useSession();
  const plan = usePlan();
  const id = useId();
  const label = useKeptDraft('new own label');
  const name = useKeptDraft('new own name');
  const unit = useKeptDraft('new own unit');
  const content = useKeptDraft('new own content');
  const [why, setWhy] = useState<string>();
  const labelText = label.draft?.typed ?? '';
  const made = nameFrom(labelText, (it) => ownNameRefusal(plan, it) !== undefined);
  const nameText = name.draft?.typed ?? made;

  const add = (): void => {
    const done = session.edit(`Add ${labelText.trim() || nameText}`, (it) => {
      const unitText = unit.draft?.typed.trim() || '–';
      const title = labelText.trim() || nameText;
      const held = readContent(it, content.draft?.typed ?? '', title, unitText);
      if (!held.ok) return held;
      const { ok: _ok, ...rest } = held;
      return setOwnCell(it, { name: nameText.trim(), label: title, unit: unitText, ...rest });
    });
    setWhy(done.ok ? undefined : done.why);
    if (done.ok) for (const it of [label, name, unit, content]) it.drop();
  };
  const field = (
    key: string,
    words: string,
    text: string,
    { keep }: { readonly keep: (typed: string) => void },
    code = false,
  ) => (
    <span className="text-entry">
      <label className="text-entry-label type-small" htmlFor={id + key}>
        {words}
      </label>
      <input
        id={id + key}
        ref={key === 'content' ? contentBox : undefined}
        className={`text-entry-box ${code ? 'text-entry-code' : ''}`}
        type="text"
        autoComplete="off"
        spellCheck={false}
        aria-describedby={why === undefined ? undefined : `${id}why`}
        value={text}
        onChange={(event) => keep(event.target.value)}
        onFocus={key === 'content' ? (event) => onFormula(event.target) : undefined}
      />
    </span>
  );
  return (
    <form
      className="own-cells-new"
      aria-labelledby={`${id}title`}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <h3 className="type-section" id={`${id}title`}>
        A new cell
      </h3>
      <div className="own-cells-row">
        {field('label', 'Label', labelText, label)}
        {field('name', 'Name in formulas', nameText, name, true)}
        {field('unit', 'Unit', unit.draft?.typed ?? '', unit)}
        <div className="own-cells-holds">
          {field(
            'content',
            'Formula after =, or a number in its unit',
            content.draft?.typed ?? '',
            content,
            true,
          )}
        </div>
        <span className="own-cells-delete">
          <Action plate submits disabled={nameText === ''}>
            Add the cell
          </Action>
        </span>
        {why !== undefined && (
          <p className="own-cells-why type-small" id={`${id}why`} role="alert">
            {why}
          </p>
        )}
      </div>
    </form>
  );
}
