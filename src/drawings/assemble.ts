import type { CellName } from '../plan/names.ts';
import { faceOf, type MeasuredProfile } from './face.ts';
import type { SceneOptions } from './options.ts';
import type { Ground, Part } from './part.ts';
import { partOf } from './parts.ts';
import { point } from './point.ts';
import type { Label, Outline, Role } from './scene.ts';
import { shaftOf } from './shaft.ts';
import { boxOfShapes } from './shapes.ts';
import { number, type Values } from './values.ts';
import { captionOf, partTitle } from './words.ts';

export const groundOf = (values: Values, profile?: MeasuredProfile): Ground => ({
  face: faceOf(values, profile),
  shaft: shaftOf(values),
});

/** The first thing a part is missing, or null when it can be drawn. */
const missing = (part: Part, values: Values): CellName | null =>
  part.needs.find((name) => number(values, name) === null) ?? null;

const applies = (part: Part, values: Values): boolean => part.applies?.(values) ?? true;

/** Only its outline, in one role: a part seen behind or one that cannot be placed. */
const bare = (shapes: readonly Outline[], role: Role): Outline[] =>
  shapes
    .filter((shape) => shape.kind !== 'hatch' && shape.role !== 'break' && shape.role !== 'fastener')
    .map((shape) => ({ ...shape, role: shape.role === 'axis' ? shape.role : role }));

const REASON_WIDTH = 26;

/** Breaks a sentence into short lines at its blanks. */
function wrapped(text: string, width = REASON_WIDTH): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function reasonLabel(part: Part, shapes: readonly Outline[], lack: string, options: SceneOptions): Label[] {
  const box = boxOfShapes(shapes);
  if (box === null) return [];
  const reason = options.reasons?.[lack] ?? `${captionOf(lack)}: no value.`;
  return [
    {
      kind: 'label',
      role: 'reason',
      lines: wrapped(`${partTitle(part.name)}: ${reason}`),
      at: point(box.x1, (box.y0 + box.y1) / 2),
      part: part.name,
    },
  ];
}

const key = (shape: Outline): string => JSON.stringify(shape);

/** What differs in the scenario behind, outlines only. */
function behind(parts: readonly Part[], values: Values, options: SceneOptions): Outline[] {
  const other = options.ghost;
  if (other === undefined) return [];
  const here = groundOf(values, options.profile);
  const there = groundOf(other, options.profile);
  const shapes: Outline[] = [];
  for (const part of parts) {
    if (!applies(part, other) || missing(part, other) !== null) continue;
    const drawn = new Set(
      applies(part, values) && missing(part, values) === null ? part.draw(values, here).map(key) : [],
    );
    shapes.push(
      ...bare(
        part.draw(other, there).filter((shape) => !drawn.has(key(shape))),
        'ghost',
      ),
    );
  }
  return shapes;
}

export interface Assembled {
  readonly shapes: Outline[];
  readonly labels: Label[];
}

/** Draws the parts in order: what is behind first, lost parts dotted where they last were, the lit one marked. */
export function assemble(parts: readonly Part[], values: Values, options: SceneOptions): Assembled {
  const ground = groundOf(values, options.profile);
  const shapes = behind(parts, values, options);
  const labels: Label[] = [];
  const told = new Set<string>();
  const lit = options.lit === undefined ? undefined : partOf(options.lit);
  const last = options.lastGood;
  for (const part of parts) {
    const lack = missing(part, values);
    if (lack === null) {
      if (!applies(part, values)) continue;
      const drawn = part.draw(values, ground);
      shapes.push(...(part.name === lit ? drawn.map((shape) => ({ ...shape, lit: true as const })) : drawn));
      continue;
    }
    if (last === undefined || missing(part, last) !== null || !applies(part, last)) continue;
    const lost = bare(part.draw(last, groundOf(last, options.profile)), 'lost');
    shapes.push(...lost);
    if (told.has(lack)) continue;
    told.add(lack);
    labels.push(...reasonLabel(part, lost, lack, options));
  }
  return { shapes, labels };
}
