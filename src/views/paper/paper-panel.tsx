import { useState } from 'react';
import { Action } from '../parts/action.tsx';
import { useJudgement, usePlan, useReady } from '../use-session.ts';
import type { Asked, Ending, SheetChoice } from './choice.ts';
import { OneOf } from './one-of.tsx';
import { SheetPicture, type SheetShown } from './sheet-picture.tsx';
import { usePages } from './use-pages.ts';
import './paper.css';

export type { SheetShown } from './sheet-picture.tsx';

interface Props {
  /** The sheet that is shown at first. */
  readonly first: string;
  readonly choices: readonly SheetChoice[];
  readonly show: (asked: Asked) => Promise<readonly SheetShown[]>;
  /** Hands the sheets to the browser as one file, and gives back the file's name. */
  readonly save: (asked: Asked, ending: Ending) => Promise<string>;
}

const PAPERS = [
  ['a4', 'A4'],
  ['letter', 'Letter'],
] as const;

const UNITS = [
  ['mm', 'mm'],
  ['in', 'inches'],
  ['both', 'both'],
] as const;

const FOR_A_SHOP =
  'Measure the first piece before the rest is cut: a file opened in other units comes out 25.4 times too large or too small.';

/** What to see to once the file is saved. */
const AFTER: Readonly<Record<Ending, string>> = {
  pdf: 'Print it at 100 %, not fitted to the page.',
  dxf: FOR_A_SHOP,
  svg: FOR_A_SHOP,
};

const counted = (count: number): string => `${count} sheet${count === 1 ? '' : 's'}`;

/** Sheets to print: which, on what paper, in which units; how each page will look; saved as a file. */
export function PaperPanel({ first, choices, show, save }: Props) {
  const plan = usePlan();
  const judgement = useJudgement();
  const ready = useReady();
  const [asked, setAsked] = useState<Asked>({
    sheet: first,
    paper: 'a4',
    units: plan.units,
  });
  const [told, setTold] = useState('');
  const { pages, isStale, why } = usePages(show, asked, judgement, ready);
  const chosen = choices.find((it) => it.name === asked.sheet);
  const pick = (part: Partial<Asked>): void => {
    setAsked({ ...asked, ...part });
    setTold('');
  };
  const onSave = (ending: Ending): void => {
    setTold('Making the file.');
    save(asked, ending).then(
      (name) => setTold(`Handed to your browser as ${name}. ${AFTER[ending]}`),
      (error: unknown) =>
        setTold(`Not saved: ${error instanceof Error ? error.message : String(error)} Try again.`),
    );
  };
  return (
    <div className="paper" data-view="paper">
      <h2 className="type-page">Paper</h2>
      <p className="type-text">
        {plan.active === null ? 'The base values' : `The scenario ${plan.active}`} of {plan.title}, on sheets
        for the boat and the yard.
      </p>
      <OneOf
        legend="Sheet"
        options={choices.map((it) => [it.name, it.title] as const)}
        value={asked.sheet}
        onPick={(sheet) => pick({ sheet })}
      />
      <p className="type-small paper-says">{chosen?.says}</p>
      <div className="paper-row">
        <OneOf legend="Paper" options={PAPERS} value={asked.paper} onPick={(paper) => pick({ paper })} />
        <OneOf legend="Lengths in" options={UNITS} value={asked.units} onPick={(units) => pick({ units })} />
      </div>
      <div className="paper-save">
        {chosen?.endings.map((ending) => (
          <Action key={ending} plate={ending === 'pdf'} onPress={() => onSave(ending)} disabled={!ready}>
            {`Save as ${ending.toUpperCase()}`}
          </Action>
        ))}
        <p className="type-small" role="status">
          {told}
        </p>
      </div>
      <p className="type-small" role="status">
        {why !== undefined
          ? `The sheets cannot be shown: ${why}`
          : isStale
            ? 'Drawing the sheets.'
            : `${counted(pages.length)}, as they will be printed:`}
      </p>
      <div className="paper-sheets" data-stale={isStale ? '' : undefined}>
        {pages.map((page, i) => {
          const title = `Sheet ${i + 1} of ${pages.length}`;
          return <SheetPicture key={title} sheet={page} title={title} id={`paper-${i}`} />;
        })}
      </div>
    </div>
  );
}
