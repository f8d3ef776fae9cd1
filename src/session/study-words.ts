import { cellNamed, inputNamed, limitNamed, resultNamed } from '../plan/book.ts';
import type { InputName } from '../plan/names.ts';
import type { Plan } from '../plan/plan.ts';
import type { Words } from '../studies/words.ts';
import { valuePieces } from '../units/format-value.ts';
import { figuresApart } from '../workbook/figures-apart.ts';
import { brief } from '../workbook/limit-words.ts';
import { surveyWords } from './survey/survey-words.ts';

/** A detail set apart by a comma would read as another item of a list. */
const bracketed = (text: string): string => text.replace(/, (.+)$/, ' ($1)');

/** As a word stands inside a sentence. */
const inside = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Parts that are fitted or not, as a thing to fit. */
const FITTED: Partial<Readonly<Record<InputName, string>>> = {
  shim_sleeve: 'rigid sleeves round the lower bolts, or one bonded block,',
  core_removed: 'solid in place of the core under every flange',
  stop_collar: 'a stop collar or through pin',
  lanyard: 'a line to a strong point of the boat',
};

/** What is there once an input has a value, where that has a name of its own. */
function thingOf(name: string): ((value: number) => string) | undefined {
  if (name === ('bolt_diameter' satisfies InputName)) return (value) => `M${value} bolts`;
  const fitted = FITTED[name as InputName];
  return fitted === undefined ? undefined : () => fitted;
}

/** The plan's own words and units for what studies say. */
export function studyWords(plan: Pick<Plan, 'units' | 'ownCells' | 'limits'>): Words {
  const own = (name: string) => plan.ownCells.find((cell) => cell.name === name);
  const shortOf = (name: string): string =>
    bracketed(inside(cellNamed(name)?.short ?? own(name)?.label ?? surveyWords(name)?.short ?? name));
  const unitOf = (name: string): string =>
    cellNamed(name)?.unit ?? own(name)?.unit ?? surveyWords(name)?.unit ?? '–';
  const piecesOf = (value: number, name: string) =>
    valuePieces(value, unitOf(name), { unit: plan.units === 'in' ? 'in' : 'mm' });
  const resultOf = (limit: string): string =>
    limitNamed(limit)?.result ?? plan.limits.find((it) => it.name === limit)?.result ?? limit;
  return {
    cell: (name) => ({
      short: shortOf(name),
      noun: inputNamed(name)?.noun,
      figure: (value) => brief(value, unitOf(name), plan.units),
      bare: (value) => piecesOf(value, name)[0]?.figure ?? '',
      thing: thingOf(name),
    }),
    limit: (name) => {
      const result = resultOf(name);
      return {
        short: shortOf(result),
        figure: (value) => brief(value, unitOf(result), plan.units),
        figures: (values) => figuresApart(values, result, unitOf(result), plan.units),
        isYesNo: resultNamed(result)?.flag === true,
        lowIsOutside: limitNamed(name)?.low_is_outside === true,
      };
    },
  };
}
