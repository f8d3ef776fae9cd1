import { profileOf } from '../../order/profile-of.ts';
import { type Templates, templateParts } from '../../order/template/template-parts.ts';
import type { CellName } from '../../plan/names.ts';
import type { SheetInput } from '../sheet-input.ts';

/** What there is a template of, on the face that the plan uses. */
export function templatesOf({ answer, plan, units }: SheetInput): Templates {
  const ask = (name: CellName) => answer(name).value;
  return templateParts({ ask, units, profile: profileOf(ask, plan) });
}
