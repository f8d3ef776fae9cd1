import { engineEdit } from './engine.ts';
import { pageTimes } from './page.ts';

// Measures side by side in one run and prints one JSON object. Nothing is asserted here.
const engine_edit_ms = engineEdit();
const page = await pageTimes();
process.stdout.write(`${JSON.stringify({ engine_edit_ms, ...page }, null, 2)}\n`);
process.exit(0);
