import { start } from './commands/start.ts';
import { run } from './exit.ts';

await run(start);
