/** What the workbook and the second model, which shares no line with it, make of the same inputs. */
import { newPlan } from '../../src/plan/new-plan.ts';
import { evaluation } from '../../src/workbook/evaluation.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import type { Inputs } from './model-case.ts';
import { secondModel } from './second-model.ts';

const plan = newPlan('Random plans');
const book = new Workbook(plan, null);

/** mm; the second model narrows the closest approach down instead of solving for it. */
const SWUNG = 0.01;
/** Near band of that limit, mm. */
const SWUNG_NEAR = 10;
/** Share of a value, and what is left of two that cancel. */
const RELATIVE = 1e-6;
const CANCELLED = 1e-9;

type Maybe = number | null;

function alike(name: string, answer: Maybe, expected: Maybe, slack = 0): string | undefined {
  if (answer === null || expected === null) {
    return answer === expected ? undefined : `${name}: ${answer}, the second model has ${expected}`;
  }
  const allowed = Math.max(slack, RELATIVE * Math.max(Math.abs(answer), Math.abs(expected)) + CANCELLED);
  return Math.abs(answer - expected) <= allowed
    ? undefined
    : `${name}: ${answer}, the second model has ${expected}`;
}

/** All that the workbook and the second model say differently about the same inputs. */
export function differences(drawn: Inputs): string[] {
  book.show(plan, null, new Map(Object.entries(drawn)));
  const ours = evaluation(book, plan);
  const second = secondModel(drawn);
  const found: (string | undefined)[] = [];
  for (const [name, expected] of Object.entries(second.results)) {
    if (!(name in ours.results)) found.push(`${name} is not a result of the workbook`);
    found.push(alike(name, ours.results[name] ?? null, expected, name === 'rudder_gap_swung' ? SWUNG : 0));
  }
  const judged = new Set(second.limits.map((it) => it.name));
  const names = ours.limits.map((it) => it.name);
  found.push(...[...judged].filter((name) => !names.includes(name)).map((name) => `${name} is no limit`));
  for (const limit of second.limits) {
    const { name, room } = limit;
    const swung = name === 'rudder_gap_swung';
    const mine = ours.limits.find((it) => it.name === name);
    if (mine === undefined) continue;
    // Where the value stands on the edge of a state, the last digit decides, and both may be right.
    const edge = swung ? 2 * SWUNG : CANCELLED;
    const onEdge =
      room !== null && (Math.abs(room) <= edge || (swung && Math.abs(room - SWUNG_NEAR) <= edge));
    if (mine.state !== limit.state && !onEdge) {
      found.push(`${name} is ${mine.state}, the second model says ${limit.state}`);
    }
    found.push(alike(`value of ${name}`, mine.value, limit.value, swung ? SWUNG : 0));
    found.push(alike(`low bound of ${name}`, mine.low, limit.low));
    found.push(alike(`high bound of ${name}`, mine.high, limit.high));
    found.push(alike(`room of ${name}`, mine.room, room, swung ? SWUNG : 0));
    const perRoom = room !== null && room !== 0 && limit.ratio !== null ? Math.abs(limit.ratio / room) : 0;
    found.push(alike(`room ratio of ${name}`, mine.room_ratio, limit.ratio, swung ? SWUNG * perRoom : 0));
  }
  // What the least room is among can be compared only where the second model judges all that applies.
  if (ours.limits.some((it) => !judged.has(it.name) && it.state !== 'does not apply')) {
    return found.filter((it) => it !== undefined);
  }
  const least = ours.least_room;
  const slack = least?.name === 'rudder_gap_swung' ? SWUNG : 0;
  found.push(alike('least room', least?.value ?? null, second.leastRatio, slack));
  const named = ours.limits.find((it) => it.name === least?.name);
  if (least !== null && (named?.room_ratio ?? -1) !== least.value)
    found.push(`least room is not that of ${least.name}`);
  if (ours.unanswered !== second.unanswered) {
    found.push(`${ours.unanswered} unanswered, the second model has ${second.unanswered}`);
  }
  return found.filter((it) => it !== undefined);
}
