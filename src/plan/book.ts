import boat from '../../templates/boat.json';
import checks from '../../templates/checks.json';
import gear from '../../templates/gear.json';
import limits from '../../templates/limits.json';
import loads from '../../templates/loads.json';
import mount from '../../templates/mount.json';
import parts from '../../templates/parts.json';
import survey from '../../templates/survey.json';
import type { Known } from './known.ts';
import type { InputName, LimitName, ResultName } from './names.ts';
import type { InputCell, LimitCell, PageTemplate, ResultCell } from './template.ts';

/** The prebuilt workbook. Its files are validated by the tests, so the page need not do it again. */
export const pages = [survey, boat, gear, mount, checks, loads, parts] as readonly PageTemplate[];

const cells = pages.flatMap((page) => page.sections.flatMap((section) => section.cells));

export const inputs: readonly InputCell[] = cells.filter((cell) => cell.kind !== 'result');
export const results: readonly ResultCell[] = cells.filter((cell) => cell.kind === 'result');
export const limitCells = limits.limits as readonly LimitCell[];

const inputsByName = new Map(inputs.map((cell) => [cell.name, cell]));
const resultsByName = new Map(results.map((cell) => [cell.name, cell]));
const limitsByName = new Map(limitCells.map((cell) => [cell.name, cell]));

export const inputNamed = <N extends string>(name: N & Known<N, InputName>): InputCell | undefined =>
  inputsByName.get(name);
export const resultNamed = <N extends string>(name: N & Known<N, ResultName>): ResultCell | undefined =>
  resultsByName.get(name);
export const limitNamed = <N extends string>(name: N & Known<N, LimitName>): LimitCell | undefined =>
  limitsByName.get(name);

/** Name, label and unit of any input or result. */
export const cellNamed = <N extends string>(name: N & Known<N>): InputCell | ResultCell | undefined =>
  inputsByName.get(name) ?? resultsByName.get(name);
