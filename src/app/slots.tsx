import { lazy } from 'react';
import type { Kept } from './kept.ts';
import { Slot } from './slot.tsx';

// Parts that load when they are first shown, so that the form paints before them.

const LazySide = lazy(async () => ({ default: (await import('../views/drawing/side-drawing.tsx')).SideDrawing }));
const LazyReading = lazy(async () => ({
  default: (await import('../views/drawing/reading-picture.tsx')).ReadingPicture,
}));
const LazySweep = lazy(async () => ({ default: (await import('../views/charts/sweep-panel.tsx')).SweepPanel }));
const LazyRemedies = lazy(async () => ({ default: (await import('../views/remedies/remedies.tsx')).Remedies }));
const LazySentence = lazy(async () => ({
  default: (await import('../views/remedies/remedies.tsx')).RemedySentence,
}));
const LazyScenarios = lazy(async () => ({
  default: (await import('../views/scenarios/scenario-panel.tsx')).ScenarioPanel,
}));
const LazyPlan = lazy(async () => ({ default: (await import('./plan-door.tsx')).PlanDoor }));
const LazyLost = lazy(async () => ({ default: (await import('./plan-door.tsx')).LostDoor }));
// A build for yards leaves the grid out, because its free key is for personal use only.
const LazyGrid = __WITH_GRID__
  ? lazy(async () => ({ default: (await import('../views/grid/grid-view.tsx')).GridView }))
  : undefined;

export const SideDrawing = () => (
  <Slot name="drawing">
    <LazySide />
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
  <Slot name="remedy" opening={null}>
    <LazySentence limit={limit} />
  </Slot>
);

export const hasGrid: boolean = __WITH_GRID__;

export const GridView = () =>
  LazyGrid === undefined ? (
    <p className="page-stub type-small">
      This build has no workbook grid. <a href="#/mount">The form does everything.</a>
    </p>
  ) : (
    <Slot name="workbook">
      <LazyGrid />
    </Slot>
  );

interface Missing {
  readonly onDone?: () => void;
}

const missing = (name: string) => (_: Missing) => <p className="page-stub type-small base-soft">{name}</p>;

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

export const LostDoor = ({ kept }: { readonly kept: Kept }) => (
  <Slot name="notice" opening={null}>
    <LazyLost kept={kept} />
  </Slot>
);

export const OwnBoat = missing('own boat');
export const OwnCells = missing('own cells');
export const Reference = missing('reference');
