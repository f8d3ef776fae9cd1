import type { Answer } from '../../../calc/answer.ts';

/** A library function as it is run: positional numbers. */
export type Run = (...given: (number | undefined)[]) => Answer;

/** The arguments' numbers, filled up to the most that any function takes. */
export type Columns = readonly [
  a1: Float64Array,
  a2: Float64Array,
  a3: Float64Array,
  a4: Float64Array,
  a5: Float64Array,
  a6: Float64Array,
  a7: Float64Array,
  a8: Float64Array,
  a9: Float64Array,
  a10: Float64Array,
  a11: Float64Array,
  a12: Float64Array,
  a13: Float64Array,
  a14: Float64Array,
  a15: Float64Array,
  a16: Float64Array,
  a17: Float64Array,
  a18: Float64Array,
  a19: Float64Array,
  a20: Float64Array,
  a21: Float64Array,
  a22: Float64Array,
  a23: Float64Array,
  a24: Float64Array,
  a25: Float64Array,
  a26: Float64Array,
];

/** Takes an answer that is no finite number. */
type Put = (i: number, answer: Answer) => void;

/** Runs a function at the points told in `at`: finite numbers go into `out`, other answers to `put`. */
export type Invoke = (
  run: Run,
  columns: Columns,
  at: Int32Array,
  count: number,
  out: Float64Array,
  put: Put,
) => void;

/** Most answers are numbers, which need no further call. Adding 0 turns a negative zero into 0. */
function keep(out: Float64Array, put: Put, i: number, answer: Answer): void {
  if (typeof answer === 'number' && answer - answer === 0) out[i] = answer + 0;
  else put(i, answer);
}

/**
 * One loop for each count of arguments: spreading an array over a call costs more than most of the functions called.
 * The place in the list is the count.
 */
export const INVOKE: readonly Invoke[] = [
  (run, _, at, count, out, put) => {
    for (let k = 0; k < count; k++) keep(out, put, at[k] as number, run());
  },
  (run, [a1], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i]));
    }
  },
  (run, [a1, a2], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i]));
    }
  },
  (run, [a1, a2, a3], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i]));
    }
  },
  (run, [a1, a2, a3, a4], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i], a8[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i], a8[i], a9[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i], a8[i], a9[i], a10[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(out, put, i, run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i], a8[i], a9[i], a10[i], a11[i]));
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i], a8[i], a9[i], a10[i], a11[i], a12[i]),
      );
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(a1[i], a2[i], a3[i], a4[i], a5[i], a6[i], a7[i], a8[i], a9[i], a10[i], a11[i], a12[i], a13[i]),
      );
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
        ),
      );
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
        ),
      );
    }
  },
  (run, [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16], at, count, out, put) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
        ),
      );
    }
  },
  (
    run,
    [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
        ),
      );
    }
  },
  (
    run,
    [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17, a18],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
        ),
      );
    }
  },
  (
    run,
    [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17, a18, a19],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
        ),
      );
    }
  },
  (
    run,
    [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17, a18, a19, a20],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
        ),
      );
    }
  },
  (
    run,
    [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17, a18, a19, a20, a21],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
          a21[i],
        ),
      );
    }
  },
  (
    run,
    [a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15, a16, a17, a18, a19, a20, a21, a22],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
          a21[i],
          a22[i],
        ),
      );
    }
  },
  (
    run,
    [
      a1,
      a2,
      a3,
      a4,
      a5,
      a6,
      a7,
      a8,
      a9,
      a10,
      a11,
      a12,
      a13,
      a14,
      a15,
      a16,
      a17,
      a18,
      a19,
      a20,
      a21,
      a22,
      a23,
    ],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
          a21[i],
          a22[i],
          a23[i],
        ),
      );
    }
  },
  (
    run,
    [
      a1,
      a2,
      a3,
      a4,
      a5,
      a6,
      a7,
      a8,
      a9,
      a10,
      a11,
      a12,
      a13,
      a14,
      a15,
      a16,
      a17,
      a18,
      a19,
      a20,
      a21,
      a22,
      a23,
      a24,
    ],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
          a21[i],
          a22[i],
          a23[i],
          a24[i],
        ),
      );
    }
  },
  (
    run,
    [
      a1,
      a2,
      a3,
      a4,
      a5,
      a6,
      a7,
      a8,
      a9,
      a10,
      a11,
      a12,
      a13,
      a14,
      a15,
      a16,
      a17,
      a18,
      a19,
      a20,
      a21,
      a22,
      a23,
      a24,
      a25,
    ],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
          a21[i],
          a22[i],
          a23[i],
          a24[i],
          a25[i],
        ),
      );
    }
  },
  (
    run,
    [
      a1,
      a2,
      a3,
      a4,
      a5,
      a6,
      a7,
      a8,
      a9,
      a10,
      a11,
      a12,
      a13,
      a14,
      a15,
      a16,
      a17,
      a18,
      a19,
      a20,
      a21,
      a22,
      a23,
      a24,
      a25,
      a26,
    ],
    at,
    count,
    out,
    put,
  ) => {
    for (let k = 0; k < count; k++) {
      const i = at[k] as number;
      keep(
        out,
        put,
        i,
        run(
          a1[i],
          a2[i],
          a3[i],
          a4[i],
          a5[i],
          a6[i],
          a7[i],
          a8[i],
          a9[i],
          a10[i],
          a11[i],
          a12[i],
          a13[i],
          a14[i],
          a15[i],
          a16[i],
          a17[i],
          a18[i],
          a19[i],
          a20[i],
          a21[i],
          a22[i],
          a23[i],
          a24[i],
          a25[i],
          a26[i],
        ),
      );
    }
  },
];
