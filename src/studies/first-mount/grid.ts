import { nextStep, type Step } from '../../units/next-step.ts';

const MM_PER_INCH = 25.4;

const sizeOf = (step: Step): number =>
  typeof step === 'number' ? step : (step.inch[0] / step.inch[1]) * MM_PER_INCH;

/** Multiples of a step, each the very number that a press of a stepper gives. */
export class Grid {
  /** The step, mm. */
  readonly size: number;
  readonly #step: Step;
  readonly #known = new Map<number, number>();

  constructor(step: Step) {
    this.#step = step;
    this.size = sizeOf(step);
  }

  #at(n: number): number {
    const known = this.#known.get(n);
    if (known !== undefined) return known;
    const exact = n === 0 ? 0 : nextStep((n - 0.5) * this.size, this.#step, 1);
    this.#known.set(n, exact);
    return exact;
  }

  /** The multiple nearest to a value. */
  near(value: number): number {
    return this.#at(Math.round(value / this.size));
  }

  /** The multiple nearest to a value that lies between two ends, where there is one. */
  between(value: number, low: number, high: number): number {
    const nearest = this.near(value);
    if (nearest < low) return this.#at(Math.ceil(low / this.size));
    return nearest > high ? this.#at(Math.floor(high / this.size)) : nearest;
  }

  /** The value so many steps on. */
  step(value: number, by: number): number {
    return this.near(value + by * this.size);
  }
}
