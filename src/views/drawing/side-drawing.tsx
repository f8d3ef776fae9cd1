import { useDeferredValue, useMemo, useRef, useState } from 'react';
import { layout } from '../../drawings/layout/layout.ts';
import { newPlan } from '../../drawings/new-plan.ts';
import { planView } from '../../drawings/plan/plan-view.ts';
import { sideView } from '../../drawings/side/side-view.ts';
import { sternView } from '../../drawings/stern/stern-view.ts';
import { LastGood } from '../../session/last-good.ts';
import { nothingRead } from '../../session/nothing-read.ts';
import { pointAt, usePointed } from '../parts/pointed.ts';
import { useBox } from '../parts/use-box.ts';
import { useLook, usePlan, useReady, useSession } from '../use-session.ts';
import { BehindPick } from './behind-pick.tsx';
import { drawn, type View } from './drawn.ts';
import { SceneSvg } from './scene-svg.tsx';
import { useBehind } from './use-behind.ts';
import './side-drawing.css';

const judgementOf = (session: { readonly judgement: object }): object => session.judgement;

const VIEWS: readonly (readonly [words: string, view: View])[] = [
  ['From the side', sideView],
  ['From astern', sternView],
  ['From above', planView],
];

interface Props {
  /** Shows where a boat is measured instead of the open plan. */
  readonly blank?: boolean;
  /** Lets what is typed beside it be painted first. */
  readonly patient?: boolean;
}

/** A value as it is now, or as it was when the page last had time for it. */
function useValue<T>(now: T, patient: boolean): T {
  const later = useDeferredValue(now);
  return patient ? later : now;
}

/** The mount to scale, moving with every edit, from the side that is asked for; before anything is read, where to measure. */
export function SideDrawing({ blank = false, patient = false }: Props) {
  const session = useSession();
  const lit = useValue(usePointed(), patient);
  const plan = usePlan();
  const { units } = plan;
  const ready = useReady();
  const judgement = useValue(useLook(judgementOf), patient);
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const [shown, setShown] = useState(0);
  const [behind, setBehind] = useState<string | null>();
  const ghost = useBehind(behind);
  const [lastGood] = useState(() => new LastGood());
  const isNew = useMemo(() => blank || nothingRead(plan), [blank, plan]);
  // The judgement is a new object after every edit, so it stands for all values.
  const set = useMemo(() => {
    if (box === undefined || judgement === undefined || !ready) return undefined;
    try {
      const view = VIEWS[shown]?.[1] ?? sideView;
      return layout(isNew ? newPlan(lit) : drawn(session, { view, units, lit, ghost, lastGood }), box);
    } catch (error) {
      return error instanceof Error ? error.message : 'The drawing failed.';
    }
  }, [session, judgement, ready, units, box, lit, shown, ghost, lastGood, isNew]);
  return (
    <div className="drawing" data-view="drawing">
      {isNew ? (
        <p className="drawing-views type-small">Where the boat is measured</p>
      ) : (
        <div className="drawing-views">
          <fieldset className="drawing-sides">
            <legend className="base-spoken">Drawn from</legend>
            {VIEWS.map(([words], at) => (
              <button
                key={words}
                type="button"
                className="drawing-view type-small"
                aria-pressed={shown === at}
                onClick={() => setShown(at)}
              >
                {words}
              </button>
            ))}
          </fieldset>
          <BehindPick behind={behind} onBehind={setBehind} />
        </div>
      )}
      <div
        className="drawing-sheet"
        ref={frame}
        onPointerMove={(event) => {
          const part = event.target instanceof Element ? event.target.getAttribute('data-part') : null;
          pointAt(part ?? undefined);
        }}
        onPointerLeave={() => pointAt(undefined)}
      >
        {typeof set === 'string' ? (
          <p className="drawing-failed type-small">The drawing could not be made: {set}</p>
        ) : (
          set !== undefined && <SceneSvg layout={set} ids="side-" />
        )}
      </div>
    </div>
  );
}
