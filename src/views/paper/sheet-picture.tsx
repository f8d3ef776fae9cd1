import type { ReactNode } from 'react';

export type ShownShape =
  | {
      readonly kind: 'path';
      readonly d: string;
      readonly fill: string;
      readonly line: number;
      readonly dash?: string;
      readonly clip?: string;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly weight: number;
      readonly stretch: number;
      readonly width: number;
      readonly fill: string;
      readonly clip?: string;
    };

/** A page to look at, in mm. */
export interface SheetShown {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly ShownShape[];
  readonly headings: readonly string[];
}

const element = (it: ShownShape, key: number): ReactNode =>
  it.kind === 'path' ? (
    <path
      key={key}
      d={it.d}
      fill={it.fill}
      {...(it.line > 0 ? { stroke: 'black', strokeWidth: it.line } : {})}
      {...(it.dash === undefined ? {} : { strokeDasharray: it.dash })}
    />
  ) : (
    <text
      key={key}
      x={it.x}
      y={it.y}
      fill={it.fill}
      fontSize={it.size}
      fontWeight={it.weight}
      fontStretch={`${it.stretch}%`}
      textLength={it.width}
      lengthAdjust="spacingAndGlyphs"
    >
      {it.text}
    </text>
  );

interface Run {
  readonly clip: string | undefined;
  readonly items: ReactNode[];
}

/** Neighbours with the same clip share it. */
function runsOf(shapes: readonly ShownShape[]): Run[] {
  const runs: Run[] = [];
  for (const [i, it] of shapes.entries()) {
    const last = runs.at(-1);
    if (last !== undefined && last.clip === it.clip) last.items.push(element(it, i));
    else runs.push({ clip: it.clip, items: [element(it, i)] });
  }
  return runs;
}

interface Props {
  readonly sheet: SheetShown;
  readonly title: string;
  readonly id: string;
}

/** A printed page as it will come out. What is on it is said as a list of its headings. */
export function SheetPicture({ sheet, title, id }: Props) {
  return (
    <figure className="paper-sheet">
      <svg viewBox={`0 0 ${sheet.width} ${sheet.height}`} aria-hidden="true" className="paper-picture">
        <rect width={sheet.width} height={sheet.height} fill="white" />
        {runsOf(sheet.shapes).map(({ clip, items }, i) => {
          const name = `${id}-${i}`;
          return clip === undefined ? (
            <g key={name}>{items}</g>
          ) : (
            <g key={name}>
              <clipPath id={name}>
                <path d={clip} />
              </clipPath>
              <g clipPath={`url(#${name})`}>{items}</g>
            </g>
          );
        })}
      </svg>
      <figcaption className="type-small">
        <span className="paper-number">{title}</span>
        {sheet.headings.length > 0 && `: ${sheet.headings.join('; ')}.`}
      </figcaption>
    </figure>
  );
}
