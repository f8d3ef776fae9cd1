import { isTyped, type Lane, read, write } from '../lanes.ts';
import { applied } from '../rules.ts';
import type { Scalar } from '../scalar.ts';
import { fillUp, type Kernel } from './kernel.ts';

/** A step worked out point by point by its rule, for slots that may hold anything. */
export function ruleKernel(op: string, out: Lane, args: readonly Lane[]): Kernel {
  const values = new Array<Scalar>(args.length);
  return (count) => {
    out.clean = isTyped(out.kind);
    for (let i = 0; i < count; i++) {
      for (let k = 0; k < args.length; k++) values[k] = read(args[k] as Lane, i);
      write(out, i, applied(op, values));
    }
    fillUp(out, count);
  };
}
