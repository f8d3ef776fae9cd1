import { CAPS } from '../caps.ts';
import type { Plan } from '../plan.ts';
import { documentSchema, KIND } from './document.ts';
import { type Fault, faultOfIssue } from './fault-of-issue.ts';
import { isJsonObject, type JsonObject } from './json-object.ts';
import { MIGRATIONS, type Migration, migrate, versionAfter } from './migrations.ts';
import { planOf } from './plan-of.ts';
import { readJson } from './read-json.ts';

/** Why a file was not opened. */
export type Reason = 'not a plan' | 'too new' | 'damaged' | 'too large' | 'step failed';

export interface NotOpened {
  readonly ok: false;
  readonly reason: Reason;
  /** One sentence. */
  readonly why: string;
  /** The place in the file, when there is one. */
  readonly where?: string;
}

export interface OpenedPlan {
  readonly ok: true;
  readonly plan: Plan;
  /** What was done to it on the way, one sentence each. */
  readonly notes: readonly string[];
}

export type Opened = OpenedPlan | NotOpened;

const no = (reason: Reason, why: string, where?: string): NotOpened => ({
  ok: false,
  reason,
  why,
  ...(where === undefined || where === '' ? {} : { where }),
});

const NOT_OURS = no('not a plan', 'This is not a plan: it does not begin as a plan file does.');

const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

/** Whether a text that cannot be read was once a plan. */
const claimsToBePlan = (text: string): boolean => text.includes(`"${KIND}"`);

const broken = ({ tooLarge, why, where }: Fault): NotOpened =>
  no(tooLarge === true ? 'too large' : 'damaged', why, where);

function versionOf(document: JsonObject, newest: number): number | NotOpened {
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return no('damaged', 'The version of the plan file is not a whole number of at least 1.', 'version');
  }
  if (version <= newest) return version;
  return no(
    'too new',
    `The plan was written by a newer workbook (file version ${version}); this one reads versions 1 to ${newest}.`,
    'version',
  );
}

function openDocument(document: JsonObject, steps: readonly Migration[]): Opened {
  const version = versionOf(document, versionAfter(steps));
  if (typeof version !== 'number') return version;
  const migrated = migrate(document, version, steps);
  if (!migrated.ok) {
    return no(
      'step failed',
      `The plan could not be brought from file version ${migrated.from} to ${migrated.from + 1}.`,
    );
  }
  const checked = documentSchema.safeParse(migrated.document);
  if (!checked.success) {
    const issue = checked.error.issues[0];
    return issue === undefined
      ? no('damaged', 'The plan does not hold what a plan holds.')
      : broken(faultOfIssue(issue, migrated.document));
  }
  const read = planOf(checked.data);
  return 'plan' in read ? { ok: true, ...read } : broken(read);
}

/** `openPlan` with other steps than the workbook's own. */
export function openWith(text: string, steps: readonly Migration[]): Opened {
  if (text.length > CAPS.file || bytesOf(text) > CAPS.file) {
    return no('too large', `The file is larger than ${CAPS.file / 1e6} MB; no plan is.`);
  }
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const read = readJson(body, { text: CAPS.text, rows: CAPS.rows });
  if (!read.ok) {
    if (!claimsToBePlan(body)) return NOT_OURS;
    return no(
      read.tooLarge ? 'too large' : 'damaged',
      `The plan cannot be read beyond line ${read.line}: ${read.why}.`,
      `line ${read.line}`,
    );
  }
  return isJsonObject(read.value) && read.value.kind === KIND ? openDocument(read.value, steps) : NOT_OURS;
}

/** Opens the text of a plan file, whoever wrote it: a plan, or a named reason. Never throws. */
export const openPlan = (text: string): Opened => openWith(text, MIGRATIONS);
