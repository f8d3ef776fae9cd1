import { useMemo, useRef, useState } from 'react';
import { layout } from '../../drawings/layout/layout.ts';
import type { SceneOptions } from '../../drawings/options.ts';
import { planView } from '../../drawings/plan/plan-view.ts';
import type { Scene } from '../../drawings/scene.ts';
import { sideView } from '../../drawings/side/side-view.ts';
import { sternView } from '../../drawings/stern/stern-view.ts';
import type { Values } from '../../drawings/values.ts';
import { pointAt, usePointed } from '../parts/pointed.ts';
import { useBox } from '../parts/use-box.ts';
import { useLook, usePlan, useReady, useSession } from '../use-session.ts';
import { SceneSvg } from './scene-svg.tsx';
import { sessionLimits, sessionValues } from './session-values.ts';
import './side-drawing.css';

const judgementOf = (session: { readonly judgement: object }): object => session.judgement;

type View = (values: Values, options: SceneOptions) => Scene;

const VIEWS: readonly (readonly [words: string, view: View])[] = [
  ['From the side', sideView],
  ['From astern', sternView],
  ['From above', planView],
];

/** The mount to scale, moving with every edit, from the side that is asked for. */
export function SideDrawing() {
  const session = useSession();
  const lit = usePointed();
  const { units } = usePlan();
  const ready = useReady();
  const judgement = useLook(judgementOf);
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const [shown, setShown] = useState(0);
  // The judgement is a new object after every edit, so it stands for all values.
  const drawn = useMemo(() => {
    if (box === undefined || judgement === undefined || !ready) return undefined;
    try {
      const view = VIEWS[shown]?.[1] ?? sideView;
      const scene = view(sessionValues(session), {
        unit: units,
        limits: sessionLimits(session),
        ...(lit === undefined ? {} : { lit }),
      });
      return layout(scene, box);
    } catch (error) {
      return error instanceof Error ? error.message : 'The drawing failed.';
    }
  }, [session, judgement, ready, units, box, lit, shown]);
  return (
    <div className="drawing" data-view="drawing">
      <fieldset className="drawing-views">
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
      <div
        className="drawing-sheet"
        ref={frame}
        onPointerMove={(event) => {
          const part = event.target instanceof Element ? event.target.getAttribute('data-part') : null;
          pointAt(part ?? undefined);
        }}
        onPointerLeave={() => pointAt(undefined)}
      >
        {typeof drawn === 'string' ? (
          <p className="drawing-failed type-small">The drawing could not be made: {drawn}</p>
        ) : (
          drawn !== undefined && <SceneSvg layout={drawn} ids="side-" />
        )}
      </div>
    </div>
  );
}
