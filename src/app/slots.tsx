import { later } from './later.tsx';

// Parts that load when they are first shown, so that the form paints before them.
export const SideDrawing = later('drawing', async () => (await import('../views/drawing/side-drawing.tsx')).SideDrawing);

interface Missing {
  readonly limit?: string;
  readonly height?: number;
  readonly onDone?: () => void;
}

const missing = (name: string) => (_: Missing) => <p className="page-stub type-small base-soft">{name}</p>;

export const SweepPanel = missing('sweep');
export const Remedies = missing('remedies');
export const GridView = missing('grid');
export const ScenarioPanel = missing('scenarios');
export const PlanPanel = missing('plan');
export const OwnBoat = missing('own boat');
export const OwnCells = missing('own cells');
export const Reference = missing('reference');
