import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { inputNamed } from '../../plan/book.ts';
import { tableRows } from '../../plan/edit/tables.ts';
import { tables } from '../../plan/tables.ts';
import { usePlan } from '../use-session.ts';
import { Corrections } from './corrections.tsx';
import { TablePanel } from './table-panel.tsx';

interface Props {
  /** The part that the address asks for; the list of parts when it asks for none. */
  readonly asked: string | undefined;
  readonly form: ReactNode;
  readonly results: ReactNode;
  readonly picture: (table: string, row: number) => ReactNode;
}

const READINGS = { name: 'readings', label: 'How the boat lies; angles, heights, least distances' };
const CORRECTED = { name: 'corrected', label: 'Reading, correction, corrected' };
const PARTS: readonly { readonly name: string; readonly label: string }[] = [READINGS, ...tables, CORRECTED];

/** A part by its own name, or by the name of a cell in it. */
const partOf = (asked: string) =>
  PARTS.find(({ name }) => name === asked) ?? (inputNamed(asked) === undefined ? CORRECTED : READINGS);

const hrefOf = (name: string): string => `#/survey/${name}`;

/** The survey on a phone: a list of its parts, then one part at a time, one reading or row a screenful. */
export function SurveySteps({ asked, form, results, picture }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const part = asked === undefined ? undefined : partOf(asked);
  const name = part?.name;
  useLayoutEffect(() => {
    if (name !== undefined) frame.current?.scrollIntoView({ block: 'start' });
  }, [name]);
  if (part === undefined) return <PartList />;
  const table = tables.find((it) => it.name === part.name);
  const next = PARTS[PARTS.indexOf(part) + 1];
  return (
    <div className="survey-part" ref={frame} data-part={part.name}>
      <a className="survey-link type-small" href="#/survey">
        All parts of the survey
      </a>
      {table !== undefined && (
        <TablePanel
          key={table.name}
          table={table}
          plumbed={table.name === 'transom_readings' || table.name === 'rudder_readings'}
          oneByOne={picture}
        />
      )}
      {part === READINGS && form}
      {part === CORRECTED && (
        <>
          <Corrections />
          {results}
        </>
      )}
      {next !== undefined && (
        <a className="survey-link" href={hrefOf(next.name)}>
          Next: {next.label}
        </a>
      )}
    </div>
  );
}

function PartList() {
  const plan = usePlan();
  return (
    <ol className="survey-parts">
      {PARTS.map(({ name, label }) => {
        const rows = tables.some((it) => it.name === name) ? tableRows(plan, name).length : undefined;
        return (
          <li key={name}>
            <a className="survey-link" href={hrefOf(name)}>
              <span>{label}</span>
              {rows !== undefined && (
                <span className="type-small base-soft">
                  {rows === 0 ? 'no row yet' : rows === 1 ? '1 row' : `${rows} rows`}
                </span>
              )}
            </a>
          </li>
        );
      })}
    </ol>
  );
}
