import type { Session } from '../session/session.ts';
import type { Printout } from '../sheets/page/printout.ts';
import { SHEET_NAMES, sheetKinds } from '../sheets/registry.ts';
import type { SheetInput } from '../sheets/sheet-input.ts';
import { pictureOfSheet } from '../sheets/write/picture-of-sheet.ts';
import type { Asked, SheetChoice } from '../views/paper/choice.ts';
import { PaperPanel, type SheetShown } from '../views/paper/paper-panel.tsx';
import { useSession } from '../views/use-session.ts';
import { loadLettering } from './faces.ts';
import { download } from './keep/download.ts';
import { planFileName } from './keep/plan-file-name.ts';

const CHOICES: readonly SheetChoice[] = SHEET_NAMES.flatMap((name) => {
  const { title, says, make } = sheetKinds[name];
  return make === undefined ? [] : [{ name, title, says }];
});

const today = (): string => {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

async function made(session: Session, { sheet, paper, units }: Asked): Promise<[Printout, SheetInput]> {
  const make = SHEET_NAMES.filter((name) => name === sheet).map((name) => sheetKinds[name].make)[0];
  if (make === undefined) throw new Error('This sheet cannot be printed.');
  const input: SheetInput = {
    plan: session.plan,
    scenario: session.plan.active,
    answer: (name) => session.answer(name) ?? { value: null, why: 'It has not been worked out yet.' },
    judgement: session.judgement,
    date: today(),
    paper,
    units,
    lettering: await loadLettering(),
  };
  return [make(input), input];
}

async function show(session: Session, asked: Asked): Promise<readonly SheetShown[]> {
  const [printout] = await made(session, asked);
  return printout.sheets.map(pictureOfSheet);
}

async function save(session: Session, asked: Asked): Promise<string> {
  const [printout, { lettering }] = await made(session, asked);
  // The writer of PDF files is large, and not needed to look.
  const { pdfOfPrintout } = await import('../sheets/write/pdf-of-printout.ts');
  const pdf = await pdfOfPrintout(printout, lettering);
  const name = planFileName(session.plan.title).replace(/\.plan\.json$/, `-${asked.sheet}.pdf`);
  download(name, new Blob([new Uint8Array(pdf)], { type: 'application/pdf' }));
  return name;
}

/** The page Paper, wired to the sheets and this browser's files. */
export function PaperDoor() {
  const session = useSession();
  return (
    <PaperPanel
      first="job"
      choices={CHOICES}
      show={(asked) => show(session, asked)}
      save={(asked) => save(session, asked)}
    />
  );
}
