import type { Counts, Filling } from './kinds.ts';

/** Below this a float in the basis is noise. */
const NOISE = 1e-9;

/**
 * The fewest tubes that cover what is wanted when tubes may be used in fractions: the basis of a linear program, kept
 * by its inverse, a row and a column for each kind still wanted. Its floats only propose; what is claimed from them is
 * proven in whole numbers elsewhere.
 */
export class CoverBasis {
  private readonly rowOf: readonly number[];
  private readonly inverse: Float64Array[];
  /** Undefined where a row only lets more of a kind be cut than is wanted, which costs no tube. */
  private readonly columns: (Filling | undefined)[];
  private readonly amounts: Float64Array;

  /** Begins with tubes of one kind each. */
  constructor(wanted: Counts, mostPerTube: Counts) {
    const kinds = wanted.flatMap((count, kind) => (count > 0 ? [kind] : []));
    this.rowOf = wanted.map((_, kind) => kinds.indexOf(kind));
    this.columns = kinds.map((kind) => Array<number>(mostPerTube[kind] as number).fill(kind));
    this.amounts = Float64Array.from(
      kinds,
      (kind) => (wanted[kind] as number) / (mostPerTube[kind] as number),
    );
    this.inverse = kinds.map((kind, r) => {
      const row = new Float64Array(kinds.length);
      row[r] = 1 / (mostPerTube[kind] as number);
      return row;
    });
  }

  /** Work of one exchange. */
  get size(): number {
    return this.columns.length * this.columns.length;
  }

  /** What one more piece of each kind would cost, in tubes. */
  prices(): number[] {
    const prices = new Float64Array(this.columns.length);
    this.inverse.forEach((row, r) => {
      if (this.columns[r] === undefined) return;
      for (let k = 0; k < row.length; k++) prices[k] = (prices[k] as number) + (row[k] as number);
    });
    return this.rowOf.map((row) => (row < 0 ? 0 : (prices[row] as number)));
  }

  /** Tubes, with their fractions, of the fillings in use. */
  total(): number {
    return this.columns.reduce(
      (sum, it, r) => (it === undefined ? sum : sum + (this.amounts[r] as number)),
      0,
    );
  }

  /** The fillings in use, most used first. */
  inUse(): { readonly filling: Filling; readonly amount: number }[] {
    return this.columns
      .flatMap((filling, r) =>
        filling === undefined ? [] : [{ filling, amount: this.amounts[r] as number }],
      )
      .filter((it) => it.amount > NOISE)
      .sort((a, b) => b.amount - a.amount);
  }

  /** Takes in a filling that is worth more than a tube at the present prices. */
  takeFilling(filling: Filling): void {
    const step = new Float64Array(this.columns.length);
    for (const kind of filling) {
      const k = this.rowOf[kind] as number;
      for (let r = 0; r < step.length; r++) step[r] = (step[r] as number) + (this.inverse[r]?.[k] as number);
    }
    this.enter(filling, step);
  }

  /** Lets more of a kind be cut than is wanted, where its price is below nothing. */
  takeTooMany(kind: number): void {
    const k = this.rowOf[kind] as number;
    this.enter(
      undefined,
      Float64Array.from(this.inverse, (row) => -(row[k] as number)),
    );
  }

  private enter(column: Filling | undefined, step: Float64Array): void {
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let r = 0; r < step.length; r++) {
      const rate = step[r] as number;
      if (rate <= NOISE) continue;
      const ratio = Math.max(0, this.amounts[r] as number) / rate;
      // Of rows that run out together the one with the greatest rate leaves, for the sake of the floats.
      if (ratio > least + NOISE || (ratio > least - NOISE && rate <= (step[leaving] as number))) continue;
      least = Math.min(least, ratio);
      leaving = r;
    }
    if (leaving < 0) return;
    this.exchange(leaving, step);
    this.columns[leaving] = column;
  }

  private exchange(leaving: number, step: Float64Array): void {
    const row = this.inverse[leaving] as Float64Array;
    const rate = step[leaving] as number;
    for (let k = 0; k < row.length; k++) row[k] = (row[k] as number) / rate;
    const amount = (this.amounts[leaving] as number) / rate;
    this.inverse.forEach((other, r) => {
      const by = step[r] as number;
      if (r === leaving || by === 0) return;
      for (let k = 0; k < row.length; k++) other[k] = (other[k] as number) - by * (row[k] as number);
      this.amounts[r] = (this.amounts[r] as number) - by * amount;
    });
    this.amounts[leaving] = amount;
  }
}
