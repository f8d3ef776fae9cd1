import { useMemo, useRef } from 'react';
import { unread as question } from '../../drawings/figure.ts';
import { layout } from '../../drawings/layout/layout.ts';
import { readingPicture } from '../../drawings/reading/reading-picture.ts';
import type { Scene } from '../../drawings/scene.ts';
import type { Values } from '../../drawings/values.ts';
import type { Value } from '../../plan/plan.ts';
import type { PictureAsk } from '../../session/own-boat/picture-ask.ts';
import { useBox } from '../parts/use-box.ts';
import { SceneSvg } from './scene-svg.tsx';
import './reading-picture.css';

const valuesOf = (known: ReadonlyMap<string, Value>): Values => ({
  number(name) {
    const value = known.get(name);
    return typeof value === 'number' ? value : null;
  },
  flag(name) {
    const value = known.get(name);
    return typeof value === 'boolean' ? value : null;
  },
});

/** The scene with a question mark in place of the reading's own figure. */
const asked = (scene: Scene, name: string): Scene => ({
  ...scene,
  shapes: scene.shapes.map((it) =>
    (it.kind === 'dimension' || it.kind === 'angle') && it.name === name ? { ...it, figure: question } : it,
  ),
});

function sceneFor({ name, values, unread, units }: PictureAsk): Scene | null {
  try {
    const scene = readingPicture(name, valuesOf(values), { unit: units });
    return scene !== null && unread ? asked(scene, name) : scene;
  } catch {
    // The words say how to measure; a picture that cannot be drawn is left out.
    return null;
  }
}

/** How one reading is taken, drawn from what is known before there is a plan; nothing for what is not measured. */
export function StepPicture({ ask }: { readonly ask: PictureAsk }) {
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const scene = useMemo(() => sceneFor(ask), [ask]);
  const placed = useMemo(
    () => (scene === null || box === undefined ? undefined : layout(scene, box)),
    [scene, box],
  );
  if (scene === null) return null;
  return (
    <div className="reading-picture" ref={frame}>
      {placed !== undefined && <SceneSvg layout={placed} ids={`step-${ask.name}-`} />}
    </div>
  );
}
