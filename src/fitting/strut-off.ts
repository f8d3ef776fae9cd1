import { combined, worstSum } from '../calc/uncertainty/law.ts';

/** One reading that a length rests on. */
export interface Off {
  readonly name: string;
  readonly value: number;
  /** Half-width, or one standard deviation when normal; base units. */
  readonly offBy: number;
  readonly normal?: boolean;
}

export interface LengthOff {
  readonly value: number;
  /** Twice the combined standard uncertainty (JCGM 100:2008, 5.1.2 and 6.2.1, k = 2), mm. */
  readonly give: number;
  /** The most it can be off, to first order, when every reading is off by all it may, mm. */
  readonly most: number;
  /** Cut longer by this and trim, whole mm. */
  readonly long: number;
}

/** Works lengths out with some readings put over those in use; undefined where there is no answer. */
export type LengthsAt = (over: ReadonlyMap<string, number>) => readonly (number | undefined)[];

const NOTHING: ReadonlyMap<string, number> = new Map();

/** Half-width to standard uncertainty of a rectangular reading (JCGM 100:2008, 4.3.7). */
const ROOT_3 = Math.sqrt(3);

/** Half-widths that a normal reading may reach; twice its deviation. */
const NORMAL_REACH = 2;

/** Lengths with what they may be off, first order, slopes by central differences over each reading's own width. */
export function lengthsOff(readings: readonly Off[], at: LengthsAt): readonly (LengthOff | undefined)[] {
  const values = at(NOTHING);
  const moves = readings
    .filter((it) => it.offBy > 0)
    .map(({ name, value, offBy, normal }) => {
      const [above, below] = [at(new Map([[name, value + offBy]])), at(new Map([[name, value - offBy]]))];
      return values.map((_, i) => {
        const [high, low] = [above[i], below[i]];
        const half = high === undefined || low === undefined ? 0 : (high - low) / 2;
        return normal === true
          ? { part: half, reach: NORMAL_REACH * half }
          : { part: half / ROOT_3, reach: half };
      });
    });
  return values.map((value, i) => {
    if (value === undefined) return undefined;
    const mine = moves.flatMap((it) => it[i] ?? []);
    const most = worstSum(mine.map((it) => it.reach));
    return { value, give: 2 * combined(mine), most, long: Math.max(0, Math.ceil(most - 1e-9)) };
  });
}
