import type { Outline } from '../scene.ts';
import { arcPath } from './arc-path.ts';
import { hatchLines } from './hatch-lines.ts';
import { line, pathThrough } from './path.ts';
import type { Primitive } from './primitive.ts';
import { place, type Rect, round, type Transform } from './px.ts';

/** Where it belongs and what cuts it off, carried over from the shape. */
function tags(shape: Outline, clip: string | undefined): { part?: string; lit?: true; clip?: string } {
  return {
    ...(shape.part === undefined ? {} : { part: shape.part }),
    ...(shape.lit === undefined ? {} : { lit: true as const }),
    ...(clip === undefined ? {} : { clip }),
  };
}

/** One outline on the page; water fills `sheet` below its level. Nothing when none of it is to be seen. */
export function drawOutline(shape: Outline, t: Transform, sheet: Rect, clip?: string): Primitive[] {
  const { role } = shape;
  const more = tags(shape, clip);
  switch (shape.kind) {
    case 'water': {
      const surface = t.y - shape.level * t.scale;
      const top = Math.max(sheet.y, surface);
      const right = sheet.x + sheet.width;
      const height = sheet.y + sheet.height - top;
      if (height <= 0) return [];
      const body = { x: round(sheet.x), y: round(top), width: round(sheet.width), height: round(height) };
      const drawn: Primitive[] = [{ kind: 'rect', role, ...body, ...more }];
      if (surface >= sheet.y) {
        const d = line({ x: sheet.x, y: surface }, { x: right, y: surface });
        drawn.push({ kind: 'path', role: 'waterline', d, ...more });
      }
      return drawn;
    }
    case 'circle': {
      const at = place(t, shape.at);
      return [
        { kind: 'circle', role, cx: round(at.x), cy: round(at.y), r: round(shape.radius * t.scale), ...more },
      ];
    }
    case 'arc': {
      const d = arcPath(
        place(t, shape.at),
        shape.radius * t.scale,
        shape.from,
        shape.to,
        shape.sector === true,
      );
      return [{ kind: 'path', role, d, ...more }];
    }
    case 'hatch': {
      const d = hatchLines(
        shape.points.map((p) => place(t, p)),
        shape.other === true,
      );
      return d === '' ? [] : [{ kind: 'path', role, d, ...more }];
    }
    default: {
      const points = shape.points.map((p) => place(t, p));
      return [{ kind: 'path', role, d: pathThrough(points, shape.kind === 'polygon'), ...more }];
    }
  }
}
