import { faceNeeds, type Part } from '../part.ts';
import { moved } from '../point.ts';
import { polygon, slab } from '../shapes.ts';
import { number } from '../values.ts';
import { stackOf } from './stack.ts';

/** More sheets than this are no stack anybody bolts up; a drawing of them would be solid ink. */
const MOST = 60;

/** The shim sheets under the lower flange, one by one. */
export const shims: Part = {
  name: 'shim_count',
  needs: [...faceNeeds, 'shim_count', 'shim_thickness', 'lower_bracket_height', 'lower_flange_height'],
  applies: (values) => number(values, 'shim_count') !== 0,
  draw(values, ground) {
    const stack = stackOf(values, ground);
    if (stack === null || stack.thickness === 0) return [];
    const sheets = Math.min(MOST, Math.round(stack.count));
    const each = stack.thickness / sheets;
    return Array.from({ length: sheets }, (_, i) =>
      polygon(
        'shim',
        slab(moved(stack.foot, stack.out, (i + 0.5) * each), stack.up, stack.halfLength, stack.out, each / 2),
        this.name,
      ),
    );
  },
};
