import { evaluate } from './commands/evaluate.ts';
import { run } from './exit.ts';

await run(evaluate);
