import { lazy, type ReactNode } from 'react';

/** One study in the line of words, loaded when it is first opened. */
export interface StudyDoor {
  readonly study: string;
  readonly word: string;
  readonly View: React.LazyExoticComponent<() => ReactNode>;
}

const door = (study: string, word: string, load: () => Promise<{ default: () => ReactNode }>): StudyDoor => ({
  study,
  word,
  View: lazy(load),
});

/** The studies, in the order of their words. */
export const STUDIES: readonly [StudyDoor, ...StudyDoor[]] = [
  door('sweep', 'Sweep', async () => ({
    default: (await import('../views/charts/sweep-study.tsx')).SweepStudy,
  })),
  door('map', 'Map', async () => ({ default: (await import('../views/map/map-panel.tsx')).MapPanel })),
  door('drivers', 'Drivers', async () => ({
    default: (await import('../views/drivers/drivers-panel.tsx')).DriversPanel,
  })),
  door('turning', 'Turning values', async () => ({
    default: (await import('../views/turning/turning-panel.tsx')).TurningPanel,
  })),
  door('odds', 'Odds', async () => ({
    default: (await import('../views/odds/odds-panel.tsx')).OddsPanel,
  })),
  door('proposals', 'Proposals', async () => ({
    default: (await import('../views/proposals/proposals-panel.tsx')).ProposalsPanel,
  })),
];
