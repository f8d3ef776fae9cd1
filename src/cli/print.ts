import { print } from './commands/print.ts';
import { run } from './exit.ts';

await run(print);
