import { faceProfile } from '../../calc/survey/face-profile.ts';
import type { KeepOut, SceneOptions } from '../../drawings/options.ts';
import { tableRows } from '../../plan/edit/tables.ts';
import { surveyTable } from '../../plan/tables.ts';
import type { Session } from '../../session/session.ts';
import { completeRows } from '../../workbook/table-sheet.ts';

const keepOutsIn = ({ plan }: Session, table: string, inside: boolean): KeepOut[] =>
  tableRows(plan, table).flatMap(({ values, note }) => {
    const [port, starboard, lower, upper] = values;
    return typeof port === 'number' &&
      typeof starboard === 'number' &&
      typeof lower === 'number' &&
      typeof upper === 'number'
      ? [{ edges: [port, starboard, lower, upper] as const, inside, label: note?.label ?? '' }]
      : [];
  });

/** The measured face, when the plan follows it. */
function profileOf(session: Session): SceneOptions['profile'] {
  const given = ['tape_zero_height', 'survey_line_aft', 'survey_trim', 'list_reading'].map((name) =>
    session.value(name),
  );
  const [zero, line, trim, list] = given;
  if (
    session.value('face_followed') !== true ||
    typeof zero !== 'number' ||
    typeof line !== 'number' ||
    typeof trim !== 'number' ||
    typeof list !== 'number'
  ) {
    return undefined;
  }
  const rows = completeRows(surveyTable(session.plan, 'transom_readings').rows);
  return faceProfile(true, rows, zero, line, trim, list).map(([z = 0, x = 0]) => [z, x] as const);
}

/** What the survey adds to a drawing: the face as measured, and what is in the way. */
export function surveyOptions(session: Session): Pick<SceneOptions, 'profile' | 'keepOuts'> {
  const profile = profileOf(session);
  return {
    ...(profile === undefined ? {} : { profile }),
    keepOuts: [
      ...keepOutsIn(session, 'keep_outs_outside', false),
      ...keepOutsIn(session, 'keep_outs_inside', true),
    ],
  };
}
