import { NoAnswer } from '../../calc/answer.ts';
import { stands } from '../../fitting/bob.ts';
import type { WorkStep } from '../../fitting/step.ts';
import { stopPoints } from '../../fitting/stop-points.ts';
import { openStops, type Stop, stopsBefore, type Wrong } from '../../fitting/stops.ts';
import { feetInUse, type Place } from '../../order/feet.ts';
import { underHolesOf } from '../../order/under-holes.ts';
import { inputNamed } from '../../plan/book.ts';
import type { InputName } from '../../plan/names.ts';
import { isStandIn } from '../../plan/stand-ins.ts';
import { formatValue } from '../../units/format-value.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { limitSentence, roomWords } from '../../workbook/limit-words.ts';
import type { Session } from '../session.ts';
import { standingOf } from '../standing.ts';

/** What a tube is cut by, once it is measured from pin to pin. */
const UNDER_A_CUT: readonly InputName[] = ['strut_end_allowance'];

function under(session: Session, { gate, holes }: WorkStep): readonly InputName[] {
  if (gate === 'cut') return UNDER_A_CUT;
  if (gate !== 'drill') return [];
  const places: readonly Place[] = holes === 'lower' ? ['lower'] : feetInUse((name) => session.value(name));
  return [...new Set(places.flatMap(underHolesOf))];
}

function standInWrongs(session: Session, step: WorkStep): readonly Wrong[] {
  const { plan } = session;
  return under(session, step)
    .filter((name) => isStandIn(plan, name) && !plan.fit.fitted.has(name))
    .map((name) => {
      const cell = inputNamed(name);
      const value = formatValue(session.value(name), cell?.unit ?? '–', { unit: plan.units });
      return {
        about: name,
        cell: name,
        says: `${cell?.label ?? name}: ${value} is a made-up value until you enter yours.`,
      };
    });
}

function limitWrongs(session: Session, limits: readonly LimitAnswer[]): readonly Wrong[] {
  const { units } = session.plan;
  const { outside, unanswered } = standingOf(limits);
  return [...outside, ...unanswered].map((it) => {
    const { room } = it.verdict;
    const distance = it.graded && it.verdict.state === 'outside' ? ` ${roomWords(it, units)}.` : '';
    return {
      about: it.name,
      cell: it.result,
      says: `${limitSentence(it, units)}${distance}`,
      ...(room === undefined ? {} : { by: Math.max(0, -room) }),
    };
  });
}

/** What stops a step now and has not been gone on with; `limits` as they are with what was fitted. */
export function stopsNow(
  session: Session,
  step: WorkStep,
  steps: readonly WorkStep[],
  limits: readonly LimitAnswer[],
  now: Date,
): readonly Stop[] {
  if (step.gate === undefined) return [];
  const { fit, units } = session.plan;
  const leans = stands(fit.steps);
  const leanMax = session.value('lean_max');
  const stops = stopsBefore(step, {
    steps,
    points: stopPoints((name) => session.value(name), units),
    done: fit.steps,
    units,
    now,
    limits: limitWrongs(session, limits),
    standIns: standInWrongs(session, step),
    ...(leans instanceof NoAnswer ? {} : { leans }),
    ...(typeof leanMax === 'number' ? { leanMax } : {}),
  });
  return openStops(stops, fit.wentOn);
}
