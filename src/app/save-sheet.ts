import type { Session } from '../session/session.ts';
import type { Printout } from '../sheets/page/printout.ts';
import { FILE_ENDINGS, SHEET_NAMES, type SheetKind, sheetKinds } from '../sheets/registry.ts';
import type { SheetInput } from '../sheets/sheet-input.ts';
import type { Asked } from '../views/paper/choice.ts';
import { loadLettering } from './faces.ts';
import { download } from './keep/download.ts';
import { planFileName } from './keep/plan-file-name.ts';

const TYPES = { pdf: 'application/pdf', dxf: 'image/vnd.dxf', svg: 'image/svg+xml' } as const;

const today = (): string => {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

const kindOf = ({ sheet }: Asked): SheetKind | undefined =>
  SHEET_NAMES.filter((name) => name === sheet).map((name) => sheetKinds[name])[0];

/** What a sheet is made from: the plan as this page has it. */
const inputOf = async (session: Session, { paper, units }: Asked): Promise<SheetInput> => ({
  plan: session.plan,
  scenario: session.plan.active,
  answer: (name) => session.answer(name) ?? { value: null, why: 'It has not been worked out yet.' },
  judgement: session.judgement,
  date: today(),
  paper,
  units,
  lettering: await loadLettering(),
});

/** The sheets asked for, and the input they were made from. */
export async function makeSheets(session: Session, asked: Asked): Promise<[Printout, SheetInput]> {
  const make = kindOf(asked)?.make;
  if (make === undefined) throw new Error('This sheet cannot be printed.');
  const input = await inputOf(session, asked);
  return [make(input), input];
}

async function contentOf(session: Session, asked: Asked, ending: string): Promise<string | Uint8Array> {
  const files = kindOf(asked)?.files;
  const its = FILE_ENDINGS.find((it) => it === ending);
  if (its !== undefined && files !== undefined) return files[its](await inputOf(session, asked));
  const [printout, { lettering }] = await makeSheets(session, asked);
  // The writer of PDF files is large, and not needed to look.
  const { pdfOfPrintout } = await import('../sheets/write/pdf-of-printout.ts');
  return pdfOfPrintout(printout, lettering);
}

/** Hands a sheet to the browser as a file, and gives back the file's name. */
export async function saveSheet(session: Session, asked: Asked, ending: keyof typeof TYPES): Promise<string> {
  const content = await contentOf(session, asked, ending);
  const name = planFileName(session.plan.title).replace(/\.plan\.json$/, `-${asked.sheet}.${ending}`);
  const part = typeof content === 'string' ? content : new Uint8Array(content);
  download(name, new Blob([part], { type: TYPES[ending] }));
  return name;
}
