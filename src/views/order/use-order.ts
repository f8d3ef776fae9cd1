import { useMemo } from 'react';
import { stopWords } from '../../order/cautions.ts';
import { type ListedSection, orderList } from '../../order/list/order-list.ts';
import { profileOf } from '../../order/profile-of.ts';
import { type Templates, templateParts } from '../../order/template/template-parts.ts';
import { underHoles } from '../../order/under-holes.ts';
import { standIns } from '../../plan/stand-ins.ts';
import type { Session } from '../../session/session.ts';
import { beforeDrilling } from '../../workbook/before-drilling.ts';
import { useLook, usePlan, useReady, useSession } from '../use-session.ts';

// A new set with every change of any answer.
const lookAtChanged = (session: Session): ReadonlySet<string> => session.changed;

export interface Order {
  readonly sections: readonly ListedSection[];
  readonly templates: Templates;
  /** Why nobody drills by it; undefined when the plan can be built. */
  readonly stop: string | undefined;
}

/** The order as the plan stands, worked out again with every change. */
export function useOrder(): Order {
  const session = useSession();
  const plan = usePlan();
  const ready = useReady();
  const changed = useLook(lookAtChanged);
  // Answers are read off the session, and `ready` and `changed` say when
  return useMemo(() => {
    const ask = (name: string) => session.value(name);
    const cautions = beforeDrilling(session.judgement, plan, plan.active, plan.units, underHoles(ask));
    const given = { ask, units: plan.units, profile: profileOf(ask, plan) };
    return {
      sections: orderList(given, standIns(plan), cautions),
      templates: templateParts(given),
      stop: stopWords(cautions, 'list'),
    };
  }, [session, plan, ready, changed]);
}
