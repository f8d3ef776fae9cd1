import { writeFileSync } from 'node:fs';
import { namesModule } from './names-module.ts';

/** Writes `src/plan/names.ts` from the templates, so that a name which is not there does not compile. */
writeFileSync(new URL('../plan/names.ts', import.meta.url), namesModule());
