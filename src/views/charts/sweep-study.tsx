import { SweepPanel } from './sweep-panel.tsx';

/** Height of the chart where it has the page to itself, px. */
const HEIGHT = 400;

/** The sweep with the page to itself. */
export const SweepStudy = () => <SweepPanel height={HEIGHT} />;
