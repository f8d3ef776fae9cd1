import { useEffect, useMemo, useRef, useState } from 'react';
import { layout } from '../../drawings/layout/layout.ts';
import { readingPicture } from '../../drawings/reading/reading-picture.ts';
import type { Scene } from '../../drawings/scene.ts';
import { sideView } from '../../drawings/side/side-view.ts';
import type { Session } from '../../session/session.ts';
import { useBox } from '../parts/use-box.ts';
import { useLook, usePlan, useReady, useSession } from '../use-session.ts';
import { SceneSvg } from './scene-svg.tsx';
import { sessionValues } from './session-values.ts';
import './reading-picture.css';

const judgementOf = (session: { readonly judgement: object }): object => session.judgement;

/** Pictures are drawn a screen before they are scrolled to. */
const AHEAD = '100% 0px';

/** What an input measures, drawn small; nothing for an input that has no place on the boat. */
export function ReadingPicture({ name }: { readonly name: string }) {
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const observer = new IntersectionObserver(([entry]) => setSeen(entry?.isIntersecting === true), {
      rootMargin: AHEAD,
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <div className="reading-picture" ref={frame}>
      {seen && box !== undefined && <Picture name={name} width={box.width} height={box.height} />}
    </div>
  );
}

/** The reading's own picture, or the side view through a window on the part that a choice moves. */
function sceneFor(name: string, session: Session): Scene | undefined {
  const values = sessionValues(session);
  const unit = session.plan.units;
  const picture = readingPicture(name, values, { unit });
  if (picture !== null) return picture;
  const side = sideView(values, { unit, part: name, lit: name });
  return side.cropped ? side : undefined;
}

interface Props {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

function Picture({ name, width, height }: Props) {
  const session = useSession();
  const { units } = usePlan();
  const ready = useReady();
  const judgement = useLook(judgementOf);
  const drawn = useMemo(() => {
    if (!ready || judgement === undefined || units === undefined) return undefined;
    try {
      const scene = sceneFor(name, session);
      return scene === undefined ? undefined : layout(scene, { width, height });
    } catch {
      // A small picture that cannot be drawn is left out; the large drawing says why.
      return undefined;
    }
  }, [session, judgement, ready, units, name, width, height]);
  return drawn === undefined ? null : <SceneSvg layout={drawn} ids={`reading-${name}-`} />;
}
