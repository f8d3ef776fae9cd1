import { later } from './later.tsx';

// Parts that load when they are first shown, so that the form paints before them.
export const SideDrawing = later('drawing', async () => (await import('../views/drawing/side-drawing.tsx')).SideDrawing);
export const SweepPanel = later('chart', async () => (await import('../views/charts/sweep-panel.tsx')).SweepPanel);
export const Remedies = later('remedies', async () => (await import('../views/remedies/remedies.tsx')).Remedies);
export const RemedySentence = later(
  'remedies',
  async () => (await import('../views/remedies/remedies.tsx')).RemedySentence,
  null,
);

interface Missing {
  readonly limit?: string;
  readonly height?: number;
  readonly onDone?: () => void;
}

const missing = (name: string) => (_: Missing) => <p className="page-stub type-small base-soft">{name}</p>;

export const ReadingPicture = (_: { readonly name: string }) => null;
export const GridView = missing('grid');
export const ScenarioPanel = missing('scenarios');
export const PlanPanel = missing('plan');
export const OwnBoat = missing('own boat');
export const OwnCells = missing('own cells');
export const Reference = missing('reference');
