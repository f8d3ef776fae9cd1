import { FILE_ENDINGS, SHEET_NAMES, sheetKinds } from '../sheets/registry.ts';
import { pictureOfSheet } from '../sheets/write/picture-of-sheet.ts';
import type { SheetChoice } from '../views/paper/choice.ts';
import { PaperPanel } from '../views/paper/paper-panel.tsx';
import { useSession } from '../views/use-session.ts';
import { makeSheets, saveSheet } from './save-sheet.ts';

const CHOICES: readonly SheetChoice[] = SHEET_NAMES.flatMap((name) => {
  const { title, says, make, files } = sheetKinds[name];
  const endings = files === undefined ? (['pdf'] as const) : (['pdf', ...FILE_ENDINGS] as const);
  return make === undefined ? [] : [{ name, title, says, endings }];
});

/** The page Paper, wired to the sheets and this browser's files. */
export function PaperDoor() {
  const session = useSession();
  return (
    <PaperPanel
      first="job"
      choices={CHOICES}
      show={async (asked) => (await makeSheets(session, asked))[0].sheets.map(pictureOfSheet)}
      save={(asked, ending) => saveSheet(session, asked, ending)}
    />
  );
}
