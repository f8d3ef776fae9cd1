import type { Profile } from '../../calc/transom/profile.ts';
import type { Ask } from '../ask.ts';
import { feetInUse } from '../feet.ts';
import { footPart, platePart, shimPart, wedgeParts } from './flange-parts.ts';
import { layoutParts } from './layout-parts.ts';
import type { TemplatePart } from './part.ts';

export interface Templates {
  readonly parts: readonly TemplatePart[];
  /** Why a part is missing, one sentence each. */
  readonly unanswered: readonly string[];
}

/** Everything there is a template of, at true size: what is cut first, then what is marked on the boat. */
export function templateParts(ask: Ask, profile: Profile = []): Templates {
  const [side] = feetInUse(ask);
  const found = [
    shimPart(ask),
    ...wedgeParts(ask),
    footPart(ask),
    platePart(ask, 'lower', 'plate-lower', 'Backing plate, lower bracket'),
    ...(side === undefined ? [] : [platePart(ask, side, 'plate-foot', 'Backing plate, foot')]),
    ...layoutParts(ask, profile),
  ].filter((it) => it !== undefined);
  return {
    parts: found.filter((it) => typeof it !== 'string'),
    unanswered: [...new Set(found.filter((it) => typeof it === 'string'))],
  };
}
