import { useMemo, useRef } from 'react';
import { layout } from '../../drawings/layout/layout.ts';
import { sideView } from '../../drawings/side/side-view.ts';
import { pointAt, usePointed } from '../parts/pointed.ts';
import { useBox } from '../parts/use-box.ts';
import { useLook, usePlan, useReady, useSession } from '../use-session.ts';
import { SceneSvg } from './scene-svg.tsx';
import { sessionLimits, sessionValues } from './session-values.ts';
import './side-drawing.css';

const judgementOf = (session: { readonly judgement: object }): object => session.judgement;

/** The mount from the side, to scale, moving with every edit. */
export function SideDrawing() {
  const session = useSession();
  const lit = usePointed();
  const { units } = usePlan();
  const ready = useReady();
  const judgement = useLook(judgementOf);
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  // The judgement is a new object after every edit, so it stands for all values.
  const drawn = useMemo(() => {
    if (box === undefined || judgement === undefined || !ready) return undefined;
    try {
      const scene = sideView(sessionValues(session), {
        unit: units,
        limits: sessionLimits(session),
        ...(lit === undefined ? {} : { lit }),
      });
      return layout(scene, box);
    } catch (error) {
      return error instanceof Error ? error.message : 'The drawing failed.';
    }
  }, [session, judgement, ready, units, box, lit]);
  return (
    <div
      className="drawing"
      ref={frame}
      data-view="drawing"
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
  );
}
