import { study } from './commands/study.ts';
import { run } from './exit.ts';

await run(study);
