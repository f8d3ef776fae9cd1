import '../../src/cli/sound-compiler.ts';
import { soakBodies } from './bodies.ts';
import { soakChances } from './chances.ts';
import { soakMounts } from './mounts.ts';
import { soakMutants } from './mutants.ts';
import { soakPaper } from './paper.ts';
import type { SoakPart } from './part.ts';
import { soakReplay } from './replay.ts';
import { soakSecondModel } from './second-model.ts';
import { soakShares } from './shares.ts';
import { soakSurvey } from './survey.ts';

/** Every part of the long run; `npm run soak -- WORD` runs those whose name holds the word; a second word narrows them. */
const PARTS: Readonly<Record<string, SoakPart>> = {
  paper: soakPaper,
  chances: soakChances,
  shares: soakShares,
  survey: soakSurvey,
  replay: soakReplay,
  bodies: soakBodies,
  mutants: soakMutants,
  'second model': soakSecondModel,
  mounts: soakMounts,
};

const [word = '', only = ''] = process.argv.slice(2);
let [passed, failed] = [0, 0];
for (const [part, run] of Object.entries(PARTS)) {
  if (!part.includes(word)) continue;
  for await (const { name, says, ok } of run(only)) {
    console.log(`${ok ? 'holds ' : 'FAILS '} ${name}: ${says}`);
    if (ok) passed++;
    else failed++;
  }
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
