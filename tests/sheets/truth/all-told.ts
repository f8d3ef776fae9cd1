import { tableFor } from '../../../src/cli/table.ts';
import { sideView } from '../../../src/drawings/side/side-view.ts';
import { orderList } from '../../../src/order/list/order-list.ts';
import { profileOf } from '../../../src/order/profile-of.ts';
import { cellNamed } from '../../../src/plan/book.ts';
import type { CellName } from '../../../src/plan/names.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { standIns } from '../../../src/plan/stand-ins.ts';
import { mailLines } from '../../../src/session/plan-file/mail-lines.ts';
import { jobSheet } from '../../../src/sheets/job/job-sheet.ts';
import { orderSheet } from '../../../src/sheets/order/order-sheet.ts';
import type { PaperName } from '../../../src/sheets/page/paper.ts';
import type { Printout } from '../../../src/sheets/page/printout.ts';
import { sheetKinds } from '../../../src/sheets/registry.ts';
import { cautionsOf, limitsOf, type SheetInput, valuesOf } from '../../../src/sheets/sheet-input.ts';
import { templateSheets } from '../../../src/sheets/template/template-sheets.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { type ReadPage, readPdf, textOf } from '../../support/read-pdf.ts';
import { inputFor } from '../../support/sheets.ts';
import { readJob, type Units } from './read-job.ts';
import { missingOnPaper, readOrder } from './read-order.ts';
import { readDxf, readSvg, readTemplates } from './read-templates.ts';
import { readMail, readTable } from './read-workbook.ts';
import { plain, type Told, told } from './told.ts';

let shown: Workbook | undefined;

/** The command line's table of a plan. */
function tableOf(plan: Plan, scenario: string | null): string {
  shown ??= new Workbook(plan, scenario);
  shown.show(plan, scenario);
  return tableFor(shown, plan, scenario, new Map());
}

async function printed({ lettering }: SheetInput, printout: Printout): Promise<ReadPage[]> {
  return readPdf(await pdfOfPrintout(printout, lettering), false);
}

function readDrawing(input: SheetInput, units: Units): Told[] {
  const { shapes } = sideView(valuesOf(input), { unit: units, limits: limitsOf(input) });
  return shapes.flatMap((it) =>
    it.kind === 'dimension'
      ? [
          told(
            'drawing',
            `value ${it.name}`,
            it.figure.second === undefined ? it.figure.first : `${it.figure.first} (${it.figure.second})`,
          ),
        ]
      : [],
  );
}

export interface AllTold {
  readonly told: readonly Told[];
  /** What the page Parts says and the printed order list does not. */
  readonly missing: readonly string[];
}

/** Everything that is told of a plan, wherever it is told, read back from what was written. */
export async function allTold(
  drawn: Plan,
  scenario: string | null,
  paper: PaperName,
  units: Units,
): Promise<AllTold> {
  const plan = { ...drawn, units, active: scenario };
  const input = await inputFor(plan, scenario, { paper, units });
  const ask = (name: CellName) => input.answer(name).value;
  const sections = orderList(
    { ask, units, profile: profileOf(ask, plan) },
    standIns(plan, scenario),
    cautionsOf(input),
  );
  const order = await printed(input, orderSheet(input));
  const files = sheetKinds.template.files;
  const labelOf = (result: string): string => cellNamed(result as CellName)?.label ?? result;
  const { limits } = input.judgement;
  return {
    told: [
      ...readJob(await printed(input, jobSheet(input)), units, limits),
      ...readOrder(sections),
      ...readTemplates(await printed(input, templateSheets(input))),
      ...(files === undefined ? [] : [...readDxf(files.dxf(input)), ...readSvg(files.svg(input))]),
      ...readTable(tableOf(plan, scenario), ask('bolt_diameter')),
      ...readMail(mailLines(plan, input.judgement), limits, labelOf),
      ...readDrawing(input, units),
    ],
    missing: missingOnPaper(sections, bodyOf(order, sections.find((it) => it.stop !== undefined)?.stop)),
  };
}

/** The text of a list without what every sheet repeats: the plate over it and the block under it. */
function bodyOf(pages: readonly ReadPage[], stop: string | undefined): string {
  return plain(
    pages
      .map((page) => plain(textOf(page)).replace(/ Plan \S.* Scenario .*$/, ''))
      .map((text) =>
        stop === undefined || !text.startsWith(plain(stop)) ? text : text.slice(plain(stop).length),
      )
      .join(' '),
  );
}
