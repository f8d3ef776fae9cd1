import { useSyncExternalStore } from 'react';
import { Plate } from '../views/parts/plate.tsx';
import { studiesRestarted } from './study-line.ts';

/** Says that the studies stopped and were started again, until one has answered. */
export function StudyNotice() {
  const isRestarted = useSyncExternalStore(studiesRestarted.subscribe, () => studiesRestarted.value);
  if (!isRestarted) return null;
  return (
    <Plate
      says="The studies stopped and were started again."
      why="What was asked is being worked out once more; the rest of the page is not concerned."
    />
  );
}
