import { type Align, type Block, blockRect, drawBlock, type Letterings } from './block.ts';
import { AXIS, DETAIL, HATCH, LINES, Occupancy, SURFACE, TEXT } from './occupancy.ts';
import type { Clip, PageRole, Primitive } from './primitive.ts';
import { crosses, grown, meet, overlap, type Px, type Rect, type Segment } from './px.ts';

/** A label's place, for whoever wants to know that none covers another. */
export interface PlacedLabel {
  readonly name: string;
  readonly rect: Rect;
}

const EVERYTHING = HATCH | AXIS | DETAIL | LINES | SURFACE | TEXT;

/** What it costs a leader, in px, to cross a cell that is taken, and another thin line. */
const PRICES = { lines: 4, text: 60, detail: 200 };
const OVER_LINE = 120;

/** A page being filled: what is drawn so far, and what is taken. */
export class Board {
  /** Where the page begins: right of the rule. */
  readonly left: number;
  readonly width: number;
  readonly height: number;
  readonly letterings: Letterings;
  readonly taken: Occupancy;
  readonly drawn: Primitive[] = [];
  readonly clips: Clip[] = [];
  readonly labels: PlacedLabel[] = [];
  /** Outlines of parts, and thin lines: lettering keeps clear of both. */
  readonly edges: Segment[] = [];
  readonly lines: Segment[] = [];
  /** Enlarged views: nothing else is lettered over them. */
  readonly discs: Rect[] = [];
  readonly dropped: string[] = [];

  constructor(width: number, height: number, letterings: Letterings, left = 0) {
    this.left = left;
    this.width = width;
    this.height = height;
    this.letterings = letterings;
    this.taken = new Occupancy(width, height);
  }

  #clearOfLettering(r: Rect): boolean {
    return (
      !this.labels.some((label) => overlap(grown(label.rect, 1), r)) &&
      !this.lines.some((segment) => crosses(segment, r)) &&
      !this.discs.some((disc) => overlap(disc, r))
    );
  }

  /** Whether a label may stand here, told by cells: quick, and a little strict. */
  clear(r: Rect, mask = EVERYTHING): boolean {
    return this.taken.free(r, mask) && this.#clearOfLettering(r);
  }

  /** The same, told by the lines themselves: for the few places where a pixel counts. */
  clearOfLines(r: Rect): boolean {
    const onPage =
      r.x >= this.left && r.y >= 0 && r.x + r.width <= this.width && r.y + r.height <= this.height;
    if (!onPage || !this.taken.free(r, HATCH) || !this.#clearOfLettering(r)) return false;
    return !this.edges.some((segment) => crosses(segment, r));
  }

  /** Letters a block and keeps its place. */
  letter(name: string, block: Block, x: number, y: number, align: Align = 'left'): Rect {
    const rect = blockRect(block, x, y);
    this.drawn.push(...drawBlock(block, x, y, align, this.letterings));
    this.keep(name, rect);
    return rect;
  }

  /** Letters a block where it was planned, unless that is off the page or on other lettering: then it is dropped. */
  letterIfFree(name: string, block: Block, x: number, y: number, align: Align = 'left'): Rect | null {
    const rect = blockRect(block, x, y);
    const onPage = x >= 0 && y >= 0 && x + rect.width <= this.width && y + rect.height <= this.height;
    if (onPage && !this.labels.some((label) => overlap(label.rect, rect)))
      return this.letter(name, block, x, y, align);
    this.dropped.push(name);
    return null;
  }

  keep(name: string, rect: Rect): void {
    this.labels.push({ name, rect });
    this.taken.markRect(rect, TEXT);
  }

  /** A thin line; lettering and details keep clear of its segments. */
  rule(role: PageRole, d: string, ...segments: Segment[]): void {
    if (d === '') return;
    this.drawn.push({ kind: 'path', role, d });
    for (const segment of segments) {
      this.lines.push(segment);
      this.taken.markLine(segment.a, segment.b, LINES);
    }
  }

  /** Best free place for a block near a point: close, and reached by a leader that crosses little. Null when there is none. */
  nearest(block: Block, to: Px, furthest: number, mask = EVERYTHING): Px | null {
    const { width, height } = block;
    let best: (Px & { cost: number }) | null = null;
    for (let r = 14; r <= furthest; r += 6) {
      if (best !== null && best.cost <= r) break;
      const turns = Math.max(8, Math.round(r / 4));
      for (let i = 0; i < turns; i++) {
        const angle = (2 * Math.PI * i) / turns;
        const x = to.x + Math.cos(angle) * (r + width / 2) - width / 2;
        const y = to.y - Math.sin(angle) * (r + height / 2) - height / 2;
        if (!this.clear({ x: x - 2, y: y - 2, width: width + 4, height: height + 4 }, mask)) continue;
        const leader = {
          a: to,
          b: { x: Math.min(Math.max(to.x, x), x + width), y: Math.min(Math.max(to.y, y), y + height) },
        };
        const cost =
          r +
          this.taken.price(leader.a, leader.b, PRICES) +
          OVER_LINE * this.lines.filter((segment) => meet(segment, leader)).length;
        if (best === null || cost < best.cost) best = { x, y, cost };
      }
    }
    return best;
  }
}
