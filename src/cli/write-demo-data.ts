import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { openPlan } from '../plan/file/open-plan.ts';
import { writePlan } from '../plan/file/write-plan.ts';

/** Opens every demo boat and writes it again, so that it holds what the workbook has gained since. */
const folder = resolve(import.meta.dirname, '../../demo-data');
for (const name of readdirSync(folder).filter((it) => it.endsWith('.plan.json'))) {
  const path = join(folder, name);
  const before = readFileSync(path, 'utf8');
  const opened = openPlan(before);
  if (!opened.ok) throw new Error(`${name}: ${opened.why}`);
  const after = writePlan(opened.plan);
  for (const note of opened.notes) process.stdout.write(`${name}: ${note}\n`);
  if (after !== before) writeFileSync(path, after);
}
