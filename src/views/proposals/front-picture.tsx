import { useId, useRef } from 'react';
import { chanceWords } from '../../studies/chance-words.ts';
import type { Mount, Proposals } from '../../studies/proposals/ask.ts';
import { niceTicks, tickText } from '../parts/ticks.ts';
import { useBox } from '../parts/use-box.ts';

const HEIGHT = 260;
const ROOM = { left: 52, right: 120, top: 24, bottom: 34 } as const;
const CROSS = 5;
/** From this width on there is room for a chance beside every number, px. */
const WIDE = 560;
/** Past by more than this share of a bound is drawn at the foot. */
const DEEPEST = -0.5;

interface Named {
  readonly kind: 'proposal' | 'now' | 'scenario';
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

const at = (mount: Mount, byShims: boolean): { readonly x: number; readonly y: number } => ({
  x: byShims ? mount.shims : mount.bolts,
  y: Math.max(DEEPEST, mount.least),
});

/** A proposal's number, and the chance that everything holds there once that is known. */
const lettering = ({ odds }: Mount, n: number, isWide: boolean): string =>
  odds === undefined || !isWide ? String(n + 1) : `${n + 1}, holds in ${chanceWords(odds.value)}`;

/** Everything that is placed in the picture; what stands at one place is named once. */
function placed(
  { proposals, present, scenarios }: Proposals,
  byShims: boolean,
  isWide: boolean,
): readonly Named[] {
  const all: Named[] = [
    ...proposals.map(
      (it, n): Named => ({ kind: 'proposal', text: lettering(it, n, isWide), ...at(it, byShims) }),
    ),
    { kind: 'now', text: 'now', ...at(present, byShims) },
    ...scenarios.map(({ name, mount }): Named => ({ kind: 'scenario', text: name, ...at(mount, byShims) })),
  ];
  const found: Named[] = [];
  for (const it of all) {
    if (!Number.isFinite(it.x) || !Number.isFinite(it.y)) continue;
    const twin = found.findIndex((other) => other.kind === it.kind && other.x === it.x && other.y === it.y);
    const there = found[twin];
    if (there === undefined) found.push(it);
    else found[twin] = { ...there, text: `${there.text}, ${it.text}` };
  }
  return found;
}

interface Props {
  readonly found: Proposals;
  /** Whether the shims can be counted across; else the bolts are measured. */
  readonly byShims: boolean;
}

/** Proposals and the owner's scenarios by what they cost and how much room they keep; below the edge something fails. */
export function FrontPicture({ found, byShims }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useBox(frame)?.width ?? 0;
  const id = useId();
  const points = placed(found, byShims, width >= WIDE);
  const xs = points.map((it) => it.x);
  const ys = points.map((it) => it.y);
  const pad = byShims ? 0.5 : 5;
  const [lowX, highX] = [Math.min(...xs) - pad, Math.max(...xs) + pad];
  const [lowY, highY] = [Math.min(-0.08, ...ys) - 0.04, Math.max(0.15, ...ys) + 0.04];
  const right = width - ROOM.right;
  const bottom = HEIGHT - ROOM.bottom;
  const x = (value: number): number => ROOM.left + ((value - lowX) / (highX - lowX)) * (right - ROOM.left);
  const y = (value: number): number => bottom - ((value - lowY) / (highY - lowY)) * (bottom - ROOM.top);
  const inX = niceTicks(lowX, highX, 8, { whole: byShims }).filter((it) => it >= lowX && it <= highX);
  const inY = niceTicks(lowY, highY, 4).filter((it) => it >= lowY && it <= highY);
  return (
    <div className="proposals-picture" ref={frame} style={{ minHeight: HEIGHT }}>
      {width > ROOM.left + ROOM.right + 60 && points.length > 0 && (
        <svg width={width} height={HEIGHT} aria-hidden="true" focusable="false">
          <defs>
            <pattern
              id={`${id}hatch`}
              width="7"
              height="7"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <line className="proposals-hatch" x1="0.5" y1="0" x2="0.5" y2="7" />
            </pattern>
          </defs>
          <rect
            x={ROOM.left}
            y={y(0)}
            width={right - ROOM.left}
            height={bottom - y(0)}
            fill={`url(#${id}hatch)`}
          />
          <path className="proposals-edge" d={`M${ROOM.left} ${y(0)}H${right}`} />
          <path className="proposals-axis" d={`M${ROOM.left} ${ROOM.top}V${bottom}H${right}`} />
          <text className="proposals-letter" x={right + 8} y={y(0)} dy="0.35em">
            fails below
          </text>
          {inX.map((value) => (
            <g key={value}>
              <path className="proposals-axis" d={`M${x(value)} ${bottom}v-5`} />
              <text className="proposals-tick" x={x(value)} y={bottom + 15} textAnchor="middle">
                {tickText(value)}
              </text>
            </g>
          ))}
          {inY.map((value) => (
            <g key={value}>
              <path className="proposals-axis" d={`M${ROOM.left} ${y(value)}h5`} />
              <text className="proposals-tick" x={ROOM.left - 6} y={y(value)} dy="0.35em" textAnchor="end">
                {tickText(Math.round(value * 100))} %
              </text>
            </g>
          ))}
          <text className="proposals-tick" x={right} y={bottom + 29} textAnchor="end">
            {byShims ? 'shims' : 'mm of bolts'}
          </text>
          <text className="proposals-tick" x={ROOM.left - 44} y={ROOM.top - 10}>
            least room, share of its bound
          </text>
          {points.map((it) => (
            <Sign key={`${it.kind} ${it.text}`} named={it} x={x(it.x)} y={y(it.y)} />
          ))}
        </svg>
      )}
    </div>
  );
}

function Sign({ named, x, y }: { readonly named: Named; readonly x: number; readonly y: number }) {
  const { kind, text } = named;
  const isNow = kind === 'now';
  return (
    <g>
      {kind === 'proposal' && <circle className="proposals-point" cx={x} cy={y} r={5} />}
      {isNow && <circle className="proposals-now" cx={x} cy={y} r={6} />}
      {kind === 'scenario' && (
        <path
          className="proposals-cross"
          d={`M${x - CROSS} ${y - CROSS}l${2 * CROSS} ${2 * CROSS}m0 ${-2 * CROSS}l${-2 * CROSS} ${2 * CROSS}`}
        />
      )}
      <text
        className={isNow ? 'proposals-letter proposals-letter-now' : 'proposals-letter'}
        x={x + 11}
        y={y}
        dy="0.35em"
      >
        {text}
      </text>
    </g>
  );
}
