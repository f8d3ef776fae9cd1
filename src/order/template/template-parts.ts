import { feetInUse } from '../feet.ts';
import type { OrderGiven } from '../section.ts';
import { footPart, platePart, shimPart, wedgeParts } from './flange-parts.ts';
import { layoutParts } from './layout-parts.ts';
import type { TemplatePart } from './part.ts';

export interface Templates {
  readonly parts: readonly TemplatePart[];
  /** Why a part is missing, one sentence each. */
  readonly unanswered: readonly string[];
}

/** Everything there is a template of, at true size: what is cut first, then what is marked on the boat. */
export function templateParts(given: OrderGiven): Templates {
  const [side] = feetInUse(given.ask);
  const found = [
    shimPart(given),
    ...wedgeParts(given),
    footPart(given),
    platePart(given, 'lower', 'plate-lower', 'Backing plate, lower bracket'),
    ...(side === undefined ? [] : [platePart(given, side, 'plate-foot', 'Backing plate, foot')]),
    ...layoutParts(given),
  ].filter((it) => it !== undefined);
  return {
    parts: found.filter((it) => typeof it !== 'string'),
    unanswered: [...new Set(found.filter((it) => typeof it === 'string'))],
  };
}
