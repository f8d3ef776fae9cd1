import type { CellName } from '../plan/names.ts';
import type { Value } from '../plan/plan.ts';

type Look = (name: CellName) => Value;

interface Rule {
  readonly names: readonly string[];
  readonly unused: (valueAt: Look) => boolean;
  readonly says: string;
}

const RULES: readonly Rule[] = [
  {
    names: [
      'port_foot_y',
      'port_foot_height',
      'starboard_foot_y',
      'starboard_foot_height',
      'pin_half_width',
      'strut_od',
      'strut_wall',
      'spread_min',
      'spread_max',
    ],
    unused: (valueAt) => valueAt('strut_count') === 1,
    says: 'counts with two struts',
  },
  {
    names: [
      'single_foot_y',
      'single_foot_height',
      'single_strut_od',
      'single_strut_wall',
      'single_strut_max',
    ],
    unused: (valueAt) => valueAt('strut_count') === 2,
    says: 'counts with one strut',
  },
  {
    names: ['wedge_edge'],
    unused: (valueAt) => valueAt('lower_flange_hinged') === true,
    says: 'counts without a hinge',
  },
  {
    names: ['inner_skin'],
    unused: (valueAt) => valueAt('transom_build') !== 'cored' || valueAt('core_removed') === true,
    says: 'counts with a core',
  },
  {
    names: ['core_removed'],
    unused: (valueAt) => valueAt('transom_build') !== 'cored',
    says: 'counts with a core',
  },
];

const ruleOf = new Map(RULES.flatMap((rule) => rule.names.map((name) => [name, rule] as const)));

/** When an input counts, while it does not; undefined while it does. */
export function unusedWords(name: string, valueAt: Look): string | undefined {
  const rule = ruleOf.get(name);
  return rule?.unused(valueAt) ? rule.says : undefined;
}
