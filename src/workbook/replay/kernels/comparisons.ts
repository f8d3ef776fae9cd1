import { OPTIONS } from '../../engine-options.ts';
import { compare, compared, HOLDS } from '../compare.ts';
import { type Lane, write } from '../lanes.ts';
import { NOT_FINITE, type Scalar } from '../scalar.ts';
import { type Fast, inEights, type Kernel, tell } from './kernel.ts';

const WIDER = 1 + OPTIONS.precisionEpsilon;

const notFinite = () => NOT_FINITE;

/** Numbers against numbers, or yes/no against yes/no, which as 1 and 0 compare alike. */
function compareTyped(sign: string, out: Lane, args: readonly [Lane, Lane]): Kernel {
  const holds = HOLDS[sign] as (order: number) => boolean;
  const [less, same, more] = [Number(holds(-1)), Number(holds(0)), Number(holds(1))];
  const r = out.numbers;
  const [first, second] = args;
  const a = first.numbers;
  const b = second.numbers;
  const outcome = (left: number, right: number): number => {
    const alike =
      right >= 0
        ? left * WIDER >= right && left <= right * WIDER
        : left * WIDER <= right && left >= right * WIDER;
    return alike ? same : left > right ? more : less;
  };
  return (count) => {
    const end = inEights(count);
    for (let i = 0; i < end; i += 4) {
      r[i] = outcome(a[i] as number, b[i] as number);
      r[i + 1] = outcome(a[i + 1] as number, b[i + 1] as number);
      r[i + 2] = outcome(a[i + 2] as number, b[i + 2] as number);
      r[i + 3] = outcome(a[i + 3] as number, b[i + 3] as number);
    }
    out.clean = first.clean && second.clean;
    if (out.clean) return;
    for (let i = 0; i < count; i++) if (a[i] !== a[i] || b[i] !== b[i]) r[i] = Number.NaN;
    tell(count, out, args, notFinite);
  };
}

/** Texts against texts; the same pair is often met many times running. */
function compareTexts(sign: string, out: Lane, a: Scalar[], b: Scalar[]): Kernel {
  const holds = HOLDS[sign] as (order: number) => boolean;
  const r = out.numbers;
  let lastLeft = '';
  let lastRight = '';
  let lastAnswer = Number(holds(0));
  return (count) => {
    out.clean = true;
    for (let i = 0; i < count; i++) {
      const left = a[i] as Scalar;
      const right = b[i] as Scalar;
      if (typeof left !== 'string' || typeof right !== 'string') {
        write(out, i, compared(sign, left, right));
        continue;
      }
      if (left !== lastLeft || right !== lastRight) {
        lastLeft = left;
        lastRight = right;
        lastAnswer = Number(holds(compare(left, right)));
      }
      r[i] = lastAnswer;
    }
  };
}

const comparison =
  (sign: string): Fast =>
  (out, [a, b]) => {
    if (a === undefined || b === undefined) return undefined;
    if (a.kind === 'text' && b.kind === 'text' && a.any !== undefined && b.any !== undefined) {
      return compareTexts(sign, out, a.any, b.any);
    }
    if (a.any !== undefined || b.any !== undefined) return undefined;
    const alike = a.kind === b.kind || a.kind === 'fault' || b.kind === 'fault';
    return alike ? compareTyped(sign, out, [a, b]) : undefined;
  };

export const comparisonKernels: Readonly<Record<string, Fast>> = Object.fromEntries(
  Object.keys(HOLDS).map((sign) => [sign, comparison(sign)]),
);
