import type { ComponentType } from 'react';
import { part } from './part.tsx';

/** One study in the line of words, loaded when it is first opened. */
export interface StudyDoor {
  readonly study: string;
  readonly word: string;
  readonly View: ComponentType;
}

const door = (study: string, word: string, load: () => Promise<ComponentType>): StudyDoor => ({
  study,
  word,
  View: part(load),
});

/** The studies, in the order of their words. */
export const STUDIES: readonly [StudyDoor, ...StudyDoor[]] = [
  door('sweep', 'Sweep', async () => (await import('../views/charts/sweep-study.tsx')).SweepStudy),
  door('map', 'Map', async () => (await import('../views/map/map-panel.tsx')).MapPanel),
  door('drivers', 'Drivers', async () => (await import('../views/drivers/drivers-panel.tsx')).DriversPanel),
  door(
    'turning',
    'Turning values',
    async () => (await import('../views/turning/turning-panel.tsx')).TurningPanel,
  ),
  door('odds', 'Odds', async () => (await import('../views/odds/odds-panel.tsx')).OddsPanel),
  door(
    'proposals',
    'Proposals',
    async () => (await import('../views/proposals/proposals-panel.tsx')).ProposalsPanel,
  ),
];
