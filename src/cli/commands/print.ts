import { PAPERS, type PaperName } from '../../sheets/page/paper.ts';
import {
  FILE_ENDINGS,
  type FileEnding,
  SHEET_NAMES,
  type SheetName,
  sheetKinds,
} from '../../sheets/registry.ts';
import type { SheetInput } from '../../sheets/sheet-input.ts';
import { pdfOfPrintout } from '../../sheets/write/pdf-of-printout.ts';
import { readOverrides } from '../../workbook/overrides.ts';
import { Workbook } from '../../workbook/workbook.ts';
import { asksForHelp, readArguments } from '../arguments.ts';
import { type Command, Refused } from '../exit.ts';
import { loadLettering } from '../faces.ts';
import { loadPlan } from '../load-plan.ts';
import { helpText, type OptionName } from '../options.ts';
import { isPattern } from '../plan-files.ts';
import { setOf } from '../set-of.ts';
import { systemFault } from '../system-fault.ts';
import { writeBeside } from '../write-beside.ts';

const UNITS = ['mm', 'in', 'both'] as const;

const OPTIONS: readonly OptionName[] = ['sheet', 'out', 'plan', 'scenario', 'set', 'paper', 'units', 'date'];

const HELP = helpText(
  `Writes a sheet (${SHEET_NAMES.join(', ')}) of a plan as PDF; the templates also as .dxf or .svg, by the ending of --out.`,
  'print --',
  OPTIONS,
);

/** One of a closed list of words, or a refusal that names them. */
function oneOf<const Word extends string>(
  option: string,
  given: string | undefined,
  words: readonly Word[],
  fallback?: Word,
): Word {
  const found = given === undefined ? fallback : words.find((it) => it === given);
  if (found !== undefined) return found;
  const what = given === undefined ? `--${option} is missing` : `--${option} cannot be “${given}”`;
  throw new Refused(`${what}; it takes ${words.slice(0, -1).join(', ')} or ${words.at(-1)}.`);
}

const today = (): string => {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

function dateOf(given: string | undefined): string {
  if (given === undefined) return today();
  const time = Date.parse(`${given}T00:00:00Z`);
  if (
    /^\d{4}-\d\d-\d\d$/.test(given) &&
    Number.isFinite(time) &&
    new Date(time).toISOString().startsWith(given)
  )
    return given;
  throw new Refused(`--date cannot be “${given}”; it takes year-month-day, as in 2031-04-09.`);
}

const endingOf = (out: string): FileEnding | undefined =>
  FILE_ENDINGS.find((it) => out.toLowerCase().endsWith(`.${it}`));

function write(out: string, content: string | Uint8Array): void {
  try {
    writeBeside(out, content);
  } catch (error) {
    const why = systemFault(error, {
      ENOENT: 'there is no such folder',
      EACCES: 'its folder is closed to you',
      EPERM: 'its folder is closed to you',
    });
    throw new Refused(`The file ${out} cannot be written: ${why}.`);
  }
}

/** One sheet, written to a file. */
export const print: Command = async ({ args, output }) => {
  if (asksForHelp(args)) {
    output.write(HELP);
    return;
  }
  const given = readArguments(args, OPTIONS);
  if ('why' in given) throw new Refused(given.why);
  const last = (name: string): string | undefined => given.options.get(name)?.at(-1);
  const name: SheetName = oneOf('sheet', last('sheet'), SHEET_NAMES);
  const paper: PaperName = oneOf('paper', last('paper'), PAPERS, 'a4');
  const out = last('out');
  if (out === undefined) throw new Refused('--out is missing; it takes the name of the file to write.');
  const date = dateOf(last('date'));
  const file = last('plan');
  if (file !== undefined && isPattern(file))
    throw new Refused('A sheet is printed from one plan: --plan takes no pattern here.');
  const loaded = loadPlan(file, last('scenario'));
  if (!loaded.ok) throw new Refused(loaded.why);
  const { plan, scenario } = loaded;
  const units = oneOf('units', last('units'), UNITS, plan.units);
  const overrides = readOverrides((given.options.get('set') ?? []).map(setOf), plan, scenario);
  if (!overrides.ok) throw new Refused(overrides.why);
  const { make, files, title } = sheetKinds[name];
  const ending = endingOf(out);
  if (ending !== undefined && files === undefined)
    throw new Refused(`${title}: this can be written as PDF alone, not as ${ending.toUpperCase()}.`);
  if (make === undefined) throw new Refused(`${title}: this version cannot print that yet.`);
  const workbook = new Workbook(plan, scenario);
  workbook.show(plan, scenario, overrides.contents);
  const lettering = await loadLettering();
  const asked: SheetInput = {
    plan,
    scenario,
    answer: (cell) => workbook.answer(cell),
    judgement: workbook.judgement(),
    date,
    paper,
    units,
    lettering,
  };
  if (ending !== undefined && files !== undefined) {
    write(out, files[ending](asked));
    output.write(`${title}: at true size, in millimetres, in ${out}.\n`);
    return;
  }
  const printout = make(asked);
  write(out, await pdfOfPrintout(printout, lettering));
  const pages = printout.sheets.length;
  output.write(`${title}: ${pages} page${pages === 1 ? '' : 's'} in ${out}.\n`);
};
