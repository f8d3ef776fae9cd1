import { memo, useId } from 'react';
import type { Edge } from './edges.ts';
import type { Plot } from './plot-box.ts';

interface Props {
  readonly plot: Plot;
  readonly edges: readonly Edge[];
  /** Ends of what is swept. */
  readonly low: number;
  readonly high: number;
  readonly width: number;
  readonly height: number;
}

/** An edge that reaches an end of the range goes on to the plot's own end. */
function drawn({ spots }: Edge, plot: Plot, low: number, high: number): { x: number; y: number }[] {
  const found = spots.map(({ x, y }) => ({ x: plot.x(x), y: plot.y(y) }));
  const [first, last] = [found[0], found.at(-1)];
  if (first !== undefined && spots[0]?.x === low) first.x = plot.left;
  if (last !== undefined && spots.at(-1)?.x === high) last.x = plot.right;
  return found;
}

const pathOf = (spots: readonly { x: number; y: number }[]): string =>
  spots.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');

/** The ground that a bound forbids: from its edge to the plot's own. */
function forbidden(spots: readonly { x: number; y: number }[], side: Edge['forbids'], plot: Plot): string {
  const end = side === 'below' ? plot.bottom : plot.top;
  return `${pathOf(spots)}L${spots.at(-1)?.x} ${end}L${spots[0]?.x} ${end}Z`;
}

/** What the limits forbid, hatched, with the edge an ink line; what they allow stays clear. */
export const Ground = memo(function Ground({ plot, edges, low, high, width, height }: Props) {
  const id = useId();
  const shown = edges.map((edge) => ({
    key: `${edge.limit} ${edge.forbids} ${edge.spots[0]?.x}`,
    forbids: edge.forbids,
    spots: drawn(edge, plot, low, high),
  }));
  return (
    <svg className="sweep-layer" width={width} height={height} aria-hidden="true" focusable="false">
      <defs>
        <pattern
          id={`${id}hatch`}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line className="sweep-hatch" x1="0.5" y1="0" x2="0.5" y2="7" />
        </pattern>
        <clipPath id={`${id}plot`}>
          <rect x={plot.left} y={plot.top} width={plot.right - plot.left} height={plot.bottom - plot.top} />
        </clipPath>
      </defs>
      <g clipPath={`url(#${id}plot)`}>
        {shown.map(({ key, forbids, spots }) => (
          <path key={key} d={forbidden(spots, forbids, plot)} fill={`url(#${id}hatch)`} />
        ))}
      </g>
      {shown.map(({ key, spots }) => (
        <path key={key} className="sweep-edge" d={pathOf(spots)} />
      ))}
    </svg>
  );
});
