import { memo } from 'react';
import type { Mark } from './marks.ts';

const CROSS = 5;

function Sign({ kind, x, y }: Mark) {
  switch (kind) {
    case 'now':
      return <circle className="map-now" cx={x} cy={y} r={6} />;
    case 'widest':
      return (
        <>
          <circle className="map-widest" cx={x} cy={y} r={9} />
          <circle className="map-widest" cx={x} cy={y} r={4.5} />
        </>
      );
    case 'scenario':
      return (
        <path
          className="map-cross"
          d={`M${x - CROSS} ${y - CROSS}l${2 * CROSS} ${2 * CROSS}m0 ${-2 * CROSS}l${-2 * CROSS} ${2 * CROSS}`}
        />
      );
  }
}

/** The points marked on a map, with their names. */
export const MapMarks = memo(function MapMarks({ marks }: { readonly marks: readonly Mark[] }) {
  return (
    <g>
      {marks.map((mark) => (
        <g key={`${mark.kind} ${mark.text}`}>
          <Sign {...mark} />
          {mark.letter !== undefined && (
            <text
              className={mark.kind === 'now' ? 'map-letter map-letter-now' : 'map-letter'}
              x={mark.letter.x}
              y={mark.letter.y}
              dy="0.35em"
              textAnchor={mark.letter.anchor}
            >
              {mark.text}
            </text>
          )}
        </g>
      ))}
    </g>
  );
});
