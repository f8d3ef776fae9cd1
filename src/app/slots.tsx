import type { ComponentProps, ReactNode } from 'react';
import type { PictureAsk } from '../session/own-boat/picture-ask.ts';
import { LimitBoard } from '../views/board/limit-board.tsx';
import { RemedyRoom } from '../views/remedies/remedy-room.tsx';
import type { Kept } from './kept.ts';
import { part } from './part.tsx';
import { Slot } from './slot.tsx';

// Parts that load when they are first shown, so that the form paints before them.

const LazySide = part(async () => (await import('../views/drawing/side-drawing.tsx')).SideDrawing);
const LazyReading = part(async () => (await import('../views/drawing/reading-picture.tsx')).ReadingPicture);
const LazyStep = part(async () => (await import('../views/drawing/step-picture.tsx')).StepPicture);
const LazyTable = part(async () => (await import('../views/drawing/table-picture.tsx')).TablePicture);
const LazySweep = part(async () => (await import('../views/charts/sweep-panel.tsx')).SweepPanel);
const LazyRemedies = part(async () => (await import('../views/remedies/remedies.tsx')).Remedies);
const LazySentence = part(async () => (await import('../views/remedies/remedies.tsx')).RemedySentence);
const LazyScenarios = part(async () => (await import('../views/scenarios/scenario-panel.tsx')).ScenarioPanel);
const LazyPlan = part(async () => (await import('./plan-door.tsx')).PlanDoor);
const LazyPaper = part(async () => (await import('./paper-door.tsx')).PaperDoor);
const LazyLost = part(async () => (await import('./plan-door.tsx')).LostDoor);
const LazyOwnBoat = part(async () => (await import('../views/own-boat/own-boat.tsx')).OwnBoat);
const LazyOwnCells = part(async () => (await import('../views/own-cells/own-cells.tsx')).OwnCells);
const LazySurvey = part(async () => (await import('../views/survey/survey-page.tsx')).SurveyPage);
const LazyFitUp = part(async () => (await import('../views/fit-up/fit-up.tsx')).FitUp);
const LazyReference = part(async () => (await import('../views/reference/reference.tsx')).Reference);
const LazyOrder = part(async () => (await import('./order-door.tsx')).OrderDoor);
// A build for yards leaves the grid out, because its free key is for personal use only.
const LazyGrid = __WITH_GRID__
  ? part(async () => (await import('../views/grid/grid-view.tsx')).GridView)
  : undefined;

export const SideDrawing = (props: ComponentProps<typeof LazySide>) => (
  <Slot name="drawing">
    <LazySide {...props} />
  </Slot>
);

export const ReadingPicture = ({ name }: { readonly name: string }) => (
  <Slot name="picture" opening={null}>
    <LazyReading name={name} />
  </Slot>
);

export const SweepPanel = ({ height }: { readonly height: number }) => (
  <Slot name="chart">
    <LazySweep height={height} />
  </Slot>
);

export const Remedies = ({ limit }: { readonly limit: string }) => (
  <Slot name="remedies">
    <LazyRemedies limit={limit} />
  </Slot>
);

export const RemedySentence = ({ limit }: { readonly limit: string }) => (
  <Slot name="remedy" opening={<RemedyRoom />}>
    <LazySentence limit={limit} />
  </Slot>
);

export const hasGrid: boolean = __WITH_GRID__;

export const GridView = ({ asked }: { readonly asked?: string }) =>
  LazyGrid === undefined ? (
    <p className="page-stub type-small">
      This build has no workbook grid. <a href="#/mount">The form does everything.</a>
    </p>
  ) : (
    <Slot name="workbook">
      <LazyGrid {...(asked === undefined ? {} : { asked })} />
    </Slot>
  );

const pictureOf = (ask: PictureAsk) => (
  <Slot name="picture" opening={null}>
    <LazyStep ask={ask} />
  </Slot>
);

interface OwnBoatProps {
  readonly onUnderway: (isUnderway: boolean) => void;
  readonly onDone: () => void;
}

export const OwnBoat = (props: OwnBoatProps) => (
  <Slot name="steps">
    <LazyOwnBoat picture={pictureOf} board={<LimitBoard />} {...props} />
  </Slot>
);

export const OwnCells = () => (
  <Slot name="page Own cells">
    <LazyOwnCells />
  </Slot>
);

const rowPictureOf = (table: string, row: number) => (
  <Slot name="picture" opening={null}>
    <LazyTable table={table} row={row} />
  </Slot>
);

interface SurveyProps {
  readonly form: ReactNode;
  readonly results: ReactNode;
  /** One reading or row a screenful. */
  readonly alone: boolean;
  readonly asked: string | undefined;
}

export const SurveyPage = ({ form, results, alone, asked }: SurveyProps) => (
  <Slot name="survey">
    <LazySurvey form={form} results={results} steps={alone ? { asked, picture: rowPictureOf } : undefined} />
  </Slot>
);

export const FitUp = ({ asked }: { readonly asked: string | undefined }) => (
  <Slot name="page Fit-up">
    <LazyFitUp asked={asked} />
  </Slot>
);

export const Reference = () => (
  <Slot name="list of names">
    <LazyReference />
  </Slot>
);

export const OrderList = () => (
  <Slot name="order list">
    <LazyOrder />
  </Slot>
);

export const ScenarioPanel = () => (
  <Slot name="comparison">
    <LazyScenarios />
  </Slot>
);

export const PlanDoor = ({ kept }: { readonly kept: Kept }) => (
  <Slot name="plan">
    <LazyPlan kept={kept} />
  </Slot>
);

export const PaperDoor = () => (
  <Slot name="sheets">
    <LazyPaper />
  </Slot>
);

export const LostDoor = ({ kept }: { readonly kept: Kept }) => (
  <Slot name="notice" opening={null}>
    <LazyLost kept={kept} />
  </Slot>
);
