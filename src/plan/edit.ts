/** Edits of a plan. Each gives a new plan that shares all it left alone, or a sentence why it cannot be. */

export { lockAsDrilled } from './edit/drilled.ts';
export type { Edited } from './edit/edited.ts';
export { goOn, setFitted, setHandover, setStep, untick } from './edit/fit.ts';
export { deleteOwnCell, renameOwnCell, setOwnCell } from './edit/own-cells.ts';
export { deleteOwnLimit, setOwnLimit } from './edit/own-limits.ts';
export { editGoesTo, followBase, setApart, setReading } from './edit/reading.ts';
export {
  copyScenario,
  deleteScenario,
  keepScenario,
  renameScenario,
  setScenarioNote,
  switchTo,
} from './edit/scenarios.ts';
export { setLocked, setNotes, setTitle, setUnits } from './edit/settings.ts';
export { setStudy } from './edit/studies.ts';
export { addTableRows, removeTableRow, setTableRow, setTableRows, tableRows } from './edit/tables.ts';
