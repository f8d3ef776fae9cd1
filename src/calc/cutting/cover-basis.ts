import type { Counts } from './kinds.ts';

/** Below this a float in the basis is noise. */
const NOISE = 1e-9;

interface Column {
  readonly counts: Counts;
  /** 1 tube, or 0 for a column that only gives back pieces of which there are too many. */
  readonly cost: number;
}

/**
 * The fewest tubes that cover what is wanted when tubes may be used in fractions: the basis of a linear program, kept
 * by its inverse. Its floats only propose; what is claimed from them is proven in whole numbers elsewhere.
 */
export class CoverBasis {
  private readonly inverse: Float64Array[];
  private readonly columns: Column[];
  private readonly amounts: Float64Array;

  /** Begins with tubes of one kind each. */
  constructor(wanted: Counts, mostPerTube: Counts) {
    const size = wanted.length;
    const fill = (i: number): number => mostPerTube[i] ?? 1;
    this.columns = wanted.map((_, i) => ({ counts: wanted.map((_, k) => (k === i ? fill(i) : 0)), cost: 1 }));
    this.amounts = Float64Array.from(wanted, (count, i) => count / fill(i));
    this.inverse = wanted.map((_, i) => {
      const row = new Float64Array(size);
      row[i] = 1 / fill(i);
      return row;
    });
  }

  /** What one more piece of each kind would cost, in tubes. */
  prices(): number[] {
    const prices: number[] = this.columns.map(() => 0);
    this.inverse.forEach((row, r) => {
      if (this.columns[r]?.cost === 0) return;
      for (let k = 0; k < row.length; k++) prices[k] = (prices[k] as number) + (row[k] as number);
    });
    return prices;
  }

  /** Takes in a filling that is worth more than a tube at the present prices. */
  takeFilling(counts: Counts): void {
    this.enter({ counts, cost: 1 });
  }

  /** Lets more of a kind be cut than is wanted, where its price is below nothing. */
  takeTooMany(kind: number): void {
    this.enter({ counts: this.columns.map((_, k) => (k === kind ? -1 : 0)), cost: 0 });
  }

  /** Tubes, with their fractions, of the fillings in use. */
  total(): number {
    return this.columns.reduce((sum, { cost }, r) => sum + cost * (this.amounts[r] as number), 0);
  }

  /** The fillings in use, most used first. */
  inUse(): { readonly counts: Counts; readonly amount: number }[] {
    return this.columns
      .map(({ counts, cost }, r) => ({ counts, amount: cost * (this.amounts[r] as number) }))
      .filter((it) => it.amount > NOISE)
      .sort((a, b) => b.amount - a.amount);
  }

  private enter(column: Column): void {
    const step = this.inverse.map((row) => {
      let sum = 0;
      for (let k = 0; k < row.length; k++) sum += (row[k] as number) * (column.counts[k] as number);
      return sum;
    });
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    step.forEach((rate, r) => {
      if (rate <= NOISE) return;
      const ratio = Math.max(0, this.amounts[r] as number) / rate;
      if (ratio < least - NOISE || (ratio < least + NOISE && rate > (step[leaving] as number))) {
        least = Math.min(least, ratio);
        leaving = r;
      }
    });
    if (leaving < 0) return;
    this.pivot(leaving, step);
    this.columns[leaving] = column;
  }

  private pivot(leaving: number, step: readonly number[]): void {
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
