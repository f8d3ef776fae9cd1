import type { ReactNode } from 'react';
import { tables } from '../../plan/tables.ts';
import { Corrections } from './corrections.tsx';
import { SurveySteps } from './survey-steps.tsx';
import { TablePanel } from './table-panel.tsx';
import './survey.css';

interface Props {
  /** The survey's single readings, and what follows from all of it. */
  readonly form: ReactNode;
  readonly results: ReactNode;
  /** On a phone: one reading or row a screenful, and the part of the survey that the address asks for. */
  readonly steps?:
    | { readonly asked: string | undefined; readonly picture: (table: string, row: number) => ReactNode }
    | undefined;
}

const PLUMBED = tables.filter(({ name }) => name === 'transom_readings' || name === 'rudder_readings');
const OTHERS = tables.filter((table) => !PLUMBED.includes(table));

/** The survey: rows read with plumb line and straightedge, what is in the way, and readings before and after correction. */
export const SurveyPage = ({ form, results, steps }: Props) => (
  <div className="survey" data-view="survey">
    {steps?.asked === undefined ? (
      <>
        <h2 className="type-page">Survey</h2>
        <p className="base-soft">
          Measure here what one reading on Boat cannot show. Everything on this page may stay empty; then
          nothing follows it. No boat sits level while you measure: put in how it lies, and angles and heights
          are set right.
        </p>
        <p className="type-small base-soft">
          Work from a dinghy made fast fore and aft, with a second person. Keep clear of a boat that is not
          chocked.
        </p>
      </>
    ) : (
      <h2 className="base-spoken">Survey</h2>
    )}
    {steps === undefined ? (
      <>
        {PLUMBED.map((table) => (
          <TablePanel key={table.name} table={table} plumbed />
        ))}
        <Corrections />
        {OTHERS.map((table) => (
          <TablePanel key={table.name} table={table} />
        ))}
        {form}
        {results}
      </>
    ) : (
      <SurveySteps {...steps} form={form} results={results} />
    )}
  </div>
);
