import type { Px, Rect } from './px.ts';

/** What a cell of the page is taken by. */
export const LINES = 1;
export const SURFACE = 2;
export const TEXT = 4;
/** An enlarged view: no leader may run through it. */
export const DETAIL = 8;
/** A dash-dot axis: a detail may be set over it, lettering may not. */
export const AXIS = 16;
/** Hatched ground, on which nothing can be read. */
export const HATCH = 32;

/** What a leader pays for every cell it crosses of lines, lettering and details. */
export interface Prices {
  readonly lines: number;
  readonly text: number;
  readonly detail: number;
}

const CELL = 4;

/** Which parts of the page are taken, in cells of 4 px. */
export class Occupancy {
  readonly columns: number;
  readonly rows: number;
  readonly #bits: Uint8Array;
  #kept: { readonly mask: number; readonly sums: Int32Array } | null = null;

  constructor(width: number, height: number) {
    this.columns = Math.max(1, Math.ceil(width / CELL));
    this.rows = Math.max(1, Math.ceil(height / CELL));
    this.#bits = new Uint8Array(this.columns * this.rows);
  }

  #mark(column: number, row: number, bit: number): void {
    if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) return;
    const i = row * this.columns + column;
    this.#bits[i] = (this.#bits[i] ?? 0) | bit;
  }

  markRect(r: Rect, bit: number): void {
    this.#kept = null;
    const right = Math.min(this.columns - 1, Math.ceil((r.x + r.width) / CELL) - 1);
    const bottom = Math.min(this.rows - 1, Math.ceil((r.y + r.height) / CELL) - 1);
    for (let row = Math.max(0, Math.floor(r.y / CELL)); row <= bottom; row++) {
      for (let column = Math.max(0, Math.floor(r.x / CELL)); column <= right; column++)
        this.#mark(column, row, bit);
    }
  }

  markOutline({ x, y, width, height }: Rect, bit: number): void {
    const [a, b, c, d] = [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ];
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, d],
      [d, a],
    ] as const)
      this.markLine(from, to, bit);
  }

  /** The part of a line that lies on the page. */
  markLine(a: Px, b: Px, bit: number): void {
    this.#kept = null;
    const width = this.columns * CELL;
    const height = this.rows * CELL;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    let from = 0;
    let to = 1;
    for (const [step, low, high] of [
      [dx, -a.x, width - a.x],
      [dy, -a.y, height - a.y],
    ] as const) {
      if (step === 0) {
        if (low > 0 || high < 0) return;
        continue;
      }
      const [near, far] = step > 0 ? [low / step, high / step] : [high / step, low / step];
      from = Math.max(from, near);
      to = Math.min(to, far);
    }
    if (from > to) return;
    const steps = Math.ceil((Math.hypot(dx, dy) * (to - from)) / (CELL * 0.75));
    for (let i = 0; i <= steps; i++) {
      const t = steps === 0 ? from : from + ((to - from) * i) / steps;
      this.#mark(Math.floor((a.x + dx * t) / CELL), Math.floor((a.y + dy * t) / CELL), bit);
    }
  }

  /** Inside of a polygon, by the even-odd rule along the middle of every row. */
  markPolygon(points: readonly Px[], bit: number): void {
    this.#kept = null;
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const p of points) {
      low = Math.min(low, p.y);
      high = Math.max(high, p.y);
    }
    const last = Math.min(this.rows - 1, Math.floor(high / CELL));
    for (let row = Math.max(0, Math.floor(low / CELL)); row <= last; row++) {
      const y = (row + 0.5) * CELL;
      const hits: number[] = [];
      for (let i = 0; i < points.length; i++) {
        const a = points[i];
        const b = points[(i + 1) % points.length];
        if (a === undefined || b === undefined || a.y < y === b.y < y) continue;
        hits.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
      }
      hits.sort((a, b) => a - b);
      for (let i = 0; i + 1 < hits.length; i += 2) {
        const left = Math.max(0, Math.floor((hits[i] ?? 0) / CELL));
        const right = Math.min(this.columns - 1, Math.floor((hits[i + 1] ?? 0) / CELL));
        for (let column = left; column <= right; column++) this.#mark(column, row, bit);
      }
    }
  }

  /** Whether the rectangle lies on the page and nothing of the mask is in it. */
  free(r: Rect, mask: number): boolean {
    if (r.x < 0 || r.y < 0 || r.x + r.width > this.columns * CELL || r.y + r.height > this.rows * CELL)
      return false;
    const right = Math.ceil((r.x + r.width) / CELL) - 1;
    const bottom = Math.ceil((r.y + r.height) / CELL) - 1;
    for (let row = Math.floor(r.y / CELL); row <= bottom; row++) {
      for (let column = Math.floor(r.x / CELL); column <= right; column++) {
        if (((this.#bits[row * this.columns + column] ?? 0) & mask) !== 0) return false;
      }
    }
    return true;
  }

  /** What a leader along a line would cost: the sum over its cells of the price of what they are taken by. */
  price(a: Px, b: Px, prices: Prices): number {
    const steps = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / CELL);
    const dx = (b.x - a.x) / steps / CELL;
    const dy = (b.y - a.y) / steps / CELL;
    let sum = 0;
    for (let i = 1; i < steps; i++) {
      const column = Math.floor(a.x / CELL + dx * i);
      const row = Math.floor(a.y / CELL + dy * i);
      if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) continue;
      const bits = this.#bits[row * this.columns + column] ?? 0;
      if (bits === 0) continue;
      if ((bits & LINES) !== 0) sum += prices.lines;
      if ((bits & TEXT) !== 0) sum += prices.text;
      if ((bits & DETAIL) !== 0) sum += prices.detail;
    }
    return sum;
  }

  /** Sums of taken cells above and left of every corner, for one mask; kept until something is marked. */
  #sums(mask: number): Int32Array {
    if (this.#kept !== null && this.#kept.mask === mask) return this.#kept.sums;
    const stride = this.columns + 1;
    const sums = new Int32Array(stride * (this.rows + 1));
    for (let row = 0; row < this.rows; row++) {
      let across = 0;
      const above = row * stride + 1;
      const from = row * this.columns;
      for (let column = 0; column < this.columns; column++) {
        if (((this.#bits[from + column] ?? 0) & mask) !== 0) across++;
        sums[above + stride + column] = (sums[above + column] ?? 0) + across;
      }
    }
    this.#kept = { mask, sums };
    return sums;
  }

  /** Calls back with every place, `step` cells apart, at which a rectangle of this size is free: its top left corner, px. */
  places(
    width: number,
    height: number,
    mask: number,
    step: number,
    found: (x: number, y: number) => void,
  ): void {
    const wide = Math.ceil(width / CELL);
    const tall = Math.ceil(height / CELL);
    const stride = this.columns + 1;
    const sums = this.#sums(mask);
    for (let row = 0; row + tall <= this.rows; row += step) {
      const top = row * stride;
      const bottom = (row + tall) * stride;
      for (let left = 0, right = wide; right <= this.columns; left += step, right += step) {
        const taken =
          (sums[bottom + right] ?? 0) -
          (sums[top + right] ?? 0) -
          (sums[bottom + left] ?? 0) +
          (sums[top + left] ?? 0);
        if (taken === 0) found(left * CELL, row * CELL);
      }
    }
  }
}
