import type { Readable, Writable } from 'node:stream';
import type { Plan } from '../plan/plan.ts';
import { evaluation } from '../workbook/evaluation.ts';
import { readOverrides } from '../workbook/overrides.ts';
import type { Workbook } from '../workbook/workbook.ts';

/** Bytes in one line of a batch, at most. */
const LONGEST_LINE = 64 * 1024;

const refused = (why: string): string => JSON.stringify({ error: why });

function objectOf(line: string): Record<string, unknown> | string {
  let parsed: unknown;
  try {
    parsed = JSON.parse(line);
  } catch {
    return 'A line is one JSON object of overrides, such as {"shim_count": 3}; this one cannot be read.';
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) {
    return 'A line is one JSON object of overrides, such as {"shim_count": 3}; this one is something else.';
  }
  return parsed as Record<string, unknown>;
}

/** The answer to one line of a batch. */
export function answerLine(line: string, workbook: Workbook, plan: Plan, scenario: string | null): string {
  const given = objectOf(line);
  if (typeof given === 'string') return refused(given);
  const overrides = readOverrides(Object.entries(given), plan, scenario);
  if (!overrides.ok) return refused(overrides.why);
  workbook.show(plan, scenario, overrides.contents);
  return JSON.stringify(evaluation(workbook, plan));
}

/** Cuts a stream of bytes into lines; a line too long is handed on as undefined, without being held. */
async function* linesOf(input: Readable): AsyncGenerator<readonly (string | undefined)[]> {
  let rest = Buffer.alloc(0);
  let skipping = false;
  for await (const chunk of input) {
    const lines: (string | undefined)[] = [];
    let data = Buffer.concat([rest, chunk as Buffer]);
    for (let end = data.indexOf(10); end >= 0; end = data.indexOf(10)) {
      const line = data.subarray(0, end);
      data = data.subarray(end + 1);
      if (skipping) skipping = false;
      else lines.push(line.length > LONGEST_LINE ? undefined : line.toString('utf8'));
    }
    if (data.length > LONGEST_LINE) {
      if (!skipping) lines.push(undefined);
      skipping = true;
      data = Buffer.alloc(0);
    }
    rest = Buffer.from(data);
    yield lines;
  }
  if (!skipping && rest.length > 0) yield [rest.toString('utf8')];
}

/** Answers JSON Lines from `input` to `output`, one line out for each line in, in order, as they come. */
export async function runBatch(
  input: Readable,
  output: Writable,
  workbook: Workbook,
  plan: Plan,
  scenario: string | null,
): Promise<void> {
  for await (const lines of linesOf(input)) {
    const answers = lines
      .filter((line) => line === undefined || line.trim() !== '')
      .map((line) =>
        line === undefined
          ? refused(`A line may have ${LONGEST_LINE} bytes at most; this one has more.`)
          : answerLine(line, workbook, plan, scenario),
      );
    if (answers.length === 0) continue;
    const flushed = output.write(`${answers.join('\n')}\n`);
    if (!flushed) await new Promise((resolve) => output.once('drain', resolve));
  }
}
