import { stopWords } from '../order/cautions.ts';
import { aboutTemplates } from '../order/template/about.ts';
import { dxfOf } from '../order/template/dxf.ts';
import { svgOf } from '../order/template/svg.ts';
import { handoverSheet } from './handover/handover-sheet.ts';
import { jobSheet } from './job/job-sheet.ts';
import { orderSheet } from './order/order-sheet.ts';
import type { Printout } from './page/printout.ts';
import { cautionsOf, type SheetInput } from './sheet-input.ts';
import { surveyForm } from './survey/survey-form.ts';
import { templateSheets } from './template/template-sheets.ts';
import { templatesOf } from './template/templates-of.ts';

/** Files other than PDF that a sheet can be written as. */
export const FILE_ENDINGS = ['dxf', 'svg'] as const;
export type FileEnding = (typeof FILE_ENDINGS)[number];

export const SHEET_NAMES = ['survey', 'job', 'order', 'template', 'handover'] as const;
export type SheetName = (typeof SHEET_NAMES)[number];

export interface SheetKind {
  readonly title: string;
  /** What it is for, in one sentence. */
  readonly says: string;
  /** Makes the sheets, finished; absent while this kind cannot be printed. */
  readonly make?: (input: SheetInput) => Printout;
  /** Makes the text of other files of the same. */
  readonly files?: Readonly<Record<FileEnding, (input: SheetInput) => string>>;
}

const templateFile =
  (write: typeof dxfOf) =>
  (input: SheetInput): string =>
    write(
      templatesOf(input).parts,
      aboutTemplates(input.plan, input.scenario),
      stopWords(cautionsOf(input), 'file'),
    );

/** Every kind of sheet there is. A new kind is one entry here. */
export const sheetKinds: Readonly<Record<SheetName, SheetKind>> = {
  survey: {
    title: 'Survey form',
    says: 'Blank, to take to the boat: where each reading is taken, and room to write it down.',
    make: surveyForm,
  },
  job: {
    title: 'Job sheet',
    says: 'For the day: what to mark, drill, cut and tighten, where to stop, and what was fitted.',
    make: jobSheet,
  },
  order: {
    title: 'Order list',
    says: 'What to buy: shims, tubes, bolts, plates, sealant.',
    make: orderSheet,
  },
  template: {
    title: 'Templates',
    says: 'Shims, wedge, feet and holes at true size, to cut and drill by.',
    make: templateSheets,
    files: { dxf: templateFile(dxfOf), svg: templateFile(svgOf) },
  },
  handover: {
    title: 'Handover record',
    says: 'What was fitted, by whom and when, and what remains to be looked at.',
    make: handoverSheet,
  },
};
