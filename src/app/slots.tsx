import { type ComponentProps, lazy, type ReactNode } from 'react';
import type { PictureAsk } from '../session/own-boat/picture-ask.ts';
import { LimitBoard } from '../views/board/limit-board.tsx';
import { RemedyRoom } from '../views/remedies/remedy-room.tsx';
import type { Kept } from './kept.ts';
import { Slot } from './slot.tsx';

// Parts that load when they are first shown, so that the form paints before them.

const LazySide = lazy(async () => ({
  default: (await import('../views/drawing/side-drawing.tsx')).SideDrawing,
}));
const LazyReading = lazy(async () => ({
  default: (await import('../views/drawing/reading-picture.tsx')).ReadingPicture,
}));
const LazyStep = lazy(async () => ({
  default: (await import('../views/drawing/step-picture.tsx')).StepPicture,
}));
const LazyTable = lazy(async () => ({
  default: (await import('../views/drawing/table-picture.tsx')).TablePicture,
}));
const LazySweep = lazy(async () => ({
  default: (await import('../views/charts/sweep-panel.tsx')).SweepPanel,
}));
const LazyRemedies = lazy(async () => ({
  default: (await import('../views/remedies/remedies.tsx')).Remedies,
}));
const LazySentence = lazy(async () => ({
  default: (await import('../views/remedies/remedies.tsx')).RemedySentence,
}));
const LazyScenarios = lazy(async () => ({
  default: (await import('../views/scenarios/scenario-panel.tsx')).ScenarioPanel,
}));
const LazyPlan = lazy(async () => ({ default: (await import('./plan-door.tsx')).PlanDoor }));
const LazyPaper = lazy(async () => ({ default: (await import('./paper-door.tsx')).PaperDoor }));
const LazyLost = lazy(async () => ({ default: (await import('./plan-door.tsx')).LostDoor }));
const LazyOwnBoat = lazy(async () => ({ default: (await import('../views/own-boat/own-boat.tsx')).OwnBoat }));
const LazyOwnCells = lazy(async () => ({
  default: (await import('../views/own-cells/own-cells.tsx')).OwnCells,
}));
const LazySurvey = lazy(async () => ({
  default: (await import('../views/survey/survey-page.tsx')).SurveyPage,
}));
const LazyFitUp = lazy(async () => ({ default: (await import('../views/fit-up/fit-up.tsx')).FitUp }));
const LazyReference = lazy(async () => ({
  default: (await import('../views/reference/reference.tsx')).Reference,
}));
const LazyOrder = lazy(async () => ({ default: (await import('./order-door.tsx')).OrderDoor }));
// A build for yards leaves the grid out, because its free key is for personal use only.
const LazyGrid = __WITH_GRID__
  ? lazy(async () => ({ default: (await import('../views/grid/grid-view.tsx')).GridView }))
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
