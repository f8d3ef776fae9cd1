import { memo } from 'react';
import type { Layout } from '../../drawings/layout/layout.ts';
import { letteringFor } from '../../drawings/layout/lettering.ts';
import type { Primitive } from '../../drawings/layout/primitive.ts';
import { penFor, textTokens } from '../../drawings/svg/pens.ts';
import type { Token } from '../../drawings/svg/tokens.ts';

const LETTERING = letteringFor('screen');

const colour = (token: Token | null): string => (token === null ? 'none' : `var(--${token})`);

interface Props {
  readonly layout: Layout;
  /** Put before every id, so that two drawings on one page keep theirs apart. */
  readonly ids: string;
}

/** A scene set on the page, as elements. */
export const SceneSvg = memo(function SceneSvg({ layout, ids }: Props) {
  const { width, height, title, primitives, clips } = layout;
  return (
    <svg
      className="scene"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label={title}
    >
      <defs>
        {clips.map((clip) => (
          <clipPath key={clip.name} id={ids + clip.name}>
            {clip.kind === 'circle' ? (
              <circle cx={clip.cx} cy={clip.cy} r={clip.r} />
            ) : (
              <rect x={clip.x} y={clip.y} width={clip.width} height={clip.height} />
            )}
          </clipPath>
        ))}
      </defs>
      {primitives.map((it, at) => (
        <PrimitiveShape key={at} it={it} ids={ids} />
      ))}
    </svg>
  );
});

const PrimitiveShape = memo(function PrimitiveShape({
  it,
  ids,
}: {
  readonly it: Primitive;
  readonly ids: string;
}) {
  const clipPath = it.clip === undefined ? undefined : `url(#${ids}${it.clip})`;
  if (it.kind === 'text') {
    const { size, weight, stretch } = LETTERING[it.style];
    return (
      <text
        x={it.x}
        y={it.y}
        clipPath={clipPath}
        fill={colour(textTokens[it.role])}
        fontSize={size}
        fontWeight={weight}
        fontStretch={`${stretch}%`}
        textLength={it.width}
        lengthAdjust="spacingAndGlyphs"
      >
        {it.text}
      </text>
    );
  }
  const { stroke, fill, width, dash } = penFor(it.role, 'screen', it.lit === true);
  const look = {
    clipPath,
    fill: colour(fill),
    stroke: colour(stroke),
    strokeWidth: width,
    strokeDasharray: dash,
    'data-part': it.part,
  };
  if (it.kind === 'path') return <path d={it.d} {...look} />;
  if (it.kind === 'circle') return <circle cx={it.cx} cy={it.cy} r={it.r} {...look} />;
  return <rect x={it.x} y={it.y} width={it.width} height={it.height} {...look} />;
}, samePrimitive);

function samePrimitive(a: { it: Primitive; ids: string }, b: { it: Primitive; ids: string }): boolean {
  if (a.ids !== b.ids) return false;
  const keys = Object.keys(b.it) as (keyof Primitive)[];
  return keys.length === Object.keys(a.it).length && keys.every((key) => a.it[key] === b.it[key]);
}
