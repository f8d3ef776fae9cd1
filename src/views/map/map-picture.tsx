import { memo, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Units } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { MapReader } from '../../studies/map/look-at.ts';
import type { Mapped } from '../../studies/map/map.ts';
import { groundWords, placeWords } from '../../studies/map/map-words.ts';
import { capital, type Words } from '../../studies/words.ts';
import { Action } from '../parts/action.tsx';
import { niceTicks } from '../parts/ticks.ts';
import { useBox } from '../parts/use-box.ts';
import { useLook, useSession } from '../use-session.ts';
import { isCells } from './cells.ts';
import type { MapChoice, NamedPlace } from './map-ask.ts';
import { MapAxes } from './map-axes.tsx';
import { boxOf } from './map-box.ts';
import { MapMarks } from './map-marks.tsx';
import { marksOf } from './marks.ts';
import type { Attempt } from './use-attempt.ts';
import { useGround } from './use-ground.ts';
import { useMapTry } from './use-map-try.ts';

const MM_PER_INCH = 25.4;
/** Contours drawn, about. */
const LEVELS = 7;
/** Height over width of the picture, and its bounds, px. */
const SHAPE = 0.55;
const [LOWEST, HIGHEST] = [300, 470];

interface Props {
  readonly mapped: Mapped;
  readonly choice: MapChoice;
  /** Unit of the result whose contours are drawn. */
  readonly unit: string;
  readonly units: Units;
  readonly words: Words;
  readonly scenarios: readonly NamedPlace[];
  readonly tries: Attempt;
}

const numberOf = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined);

/** The map itself: ground, contours and marks, where a spot can be pointed at and tried. */
export const MapPicture = memo(function MapPicture(props: Props) {
  const { mapped, choice, unit, units, words, scenarios, tries } = props;
  const { x, y } = choice;
  const session = useSession();
  const frame = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const width = useBox(frame)?.width ?? 0;
  const letter = useLetter();
  const height = Math.round(Math.min(HIGHEST, Math.max(LOWEST, width * SHAPE)));
  const presentX = useLook(useCallback((it: Session) => numberOf(it.value(x.name)), [x]));
  const presentY = useLook(useCallback((it: Session) => numberOf(it.value(y.name)), [y]));

  const box = useMemo(
    () => (width > 120 ? boxOf(mapped, width, height, letter / 12) : undefined),
    [mapped, width, height, letter],
  );
  const levels = useMemo(() => levelsOf(mapped, unit, units, words), [mapped, unit, units, words]);
  const reader = useMemo(() => new MapReader(mapped), [mapped]);
  const present = presentX === undefined || presentY === undefined ? undefined : { x: presentX, y: presentY };
  const { marks, taken } = useMemo(
    () =>
      box === undefined
        ? { marks: [], taken: [] }
        : marksOf(
            mapped,
            presentX === undefined || presentY === undefined ? undefined : { x: presentX, y: presentY },
            scenarios,
            box,
            letter,
          ),
    [mapped, presentX, presentY, scenarios, box, letter],
  );
  const nameless = useGround(canvas, { mapped, box, levels, taken, words, height, width });
  const { cursor, on } = useMapTry({ x, y, units, box, frame, tries });

  const unlettered = marks.filter((it) => it.letter === undefined);
  const at = cursor ?? present;
  const read = at === undefined ? '' : readWords(at);
  function readWords(spot: { readonly x: number; readonly y: number }): string {
    const value = reader.read(mapped.results[0] ?? [], spot.x, spot.y);
    const result = words.cell(choice.result);
    const about = isCells(mapped) ? '' : 'about ';
    const told = Number.isNaN(value) ? 'no answer' : `${about}${result.figure(value)}`;
    const ground = groundWords(reader.ground(spot.x, spot.y), words);
    return `${capital(placeWords(mapped, spot, words))}: ${ground}; ${result.short} ${told}.`;
  }

  return (
    <>
      <div
        className="map-frame"
        ref={frame}
        style={{ height }}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes keys
        tabIndex={0}
        aria-label={`Map of ${words.cell(x.name).short} and ${words.cell(y.name).short}. Arrow keys move over it, Enter tries the spot.`}
        aria-describedby="map-read"
        {...on}
      >
        <canvas ref={canvas} className="map-canvas" />
        {box !== undefined && (
          <svg className="map-layer" width={width} height={height} aria-hidden="true" focusable="false">
            <MapAxes mapped={mapped} x={x} y={y} units={units} box={box} letter={letter} />
            {cursor !== undefined && (
              <path
                className="map-cursor"
                d={`M${box.x(cursor.x)} ${box.top}V${box.bottom}M${box.left} ${box.y(cursor.y)}H${box.right}`}
              />
            )}
            <MapMarks marks={marks} />
          </svg>
        )}
      </div>
      <p className="map-read type-small" id="map-read" aria-live="polite">
        {read} {tries.why}
        {tries.isTried && (
          <Action icon="undo" says="Undo the spot tried on the map" onPress={() => session.undo()}>
            Undo
          </Action>
        )}
      </p>
      {nameless.length > 0 && (
        <p className="type-small base-soft">
          Hatched without a name, for lack of room: {nameless.join(', ')}.
        </p>
      )}
      {unlettered.length > 0 && (
        <p className="type-small base-soft">
          Crosses without a name, for lack of room: {unlettered.map((it) => it.text).join(', ')}.
        </p>
      )}
    </>
  );
});

/** Round levels of the result, with their figures. */
function levelsOf(mapped: Mapped, unit: string, units: Units, words: Words) {
  const values = (mapped.results[0] ?? new Float64Array()).filter((it) => Number.isFinite(it));
  if (values.length === 0) return [];
  const [low, high] = [values.reduce((a, b) => Math.min(a, b)), values.reduce((a, b) => Math.max(a, b))];
  const of = unit === 'mm' && units === 'in' ? MM_PER_INCH : 1;
  const cell = words.cell(mapped.ask.results[0] ?? '');
  return niceTicks(low, high, LEVELS, { of })
    .filter((it) => it > low && it < high)
    .map((value) => ({ value, text: cell.bare(value).replace(/\.0+$/, '') }));
}

const LETTER = 0.75;

/** Size of the picture's letters, px, which follows the page's text. */
function useLetter(): number {
  const [letter, setLetter] = useState(16 * LETTER);
  useEffect(() => {
    const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    if (root > 0) setLetter(root * LETTER);
  }, []);
  return letter;
}
