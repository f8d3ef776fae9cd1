import { type RefObject, useEffect, useState } from 'react';
import type { Mapped } from '../../studies/map/map.ts';
import { capital, type Words } from '../../studies/words.ts';
import { inTurns } from '../parts/in-turns.ts';
import type { MapBox } from './map-box.ts';
import { groundOf, hatchPicture, isRefused, type Level, paintGround } from './paint.ts';
import { readPaint } from './read-paint.ts';
import type { Taken } from './region-letters.ts';

interface Asked {
  readonly mapped: Mapped;
  readonly box: MapBox | undefined;
  readonly levels: readonly Level[];
  readonly taken: readonly Taken[];
  readonly words: Words;
  readonly width: number;
  readonly height: number;
}

const NONE: readonly string[] = [];

/** Paints the ground onto a canvas whenever it changes; gives the names for which there was no room. */
export function useGround(canvas: RefObject<HTMLCanvasElement | null>, asked: Asked): readonly string[] {
  const { mapped, box, levels, taken, words, width, height } = asked;
  const [nameless, setNameless] = useState(NONE);
  const [fresh, setFresh] = useState(0);

  // The lettering's face may load after the first paint; sharpness and colours change with the screen.
  useEffect(() => {
    const again = (): void => setFresh((it) => it + 1);
    let isOver = false;
    if (document.fonts.status === 'loading') {
      void document.fonts.ready.then(() => {
        if (!isOver) again();
      });
    }
    const looks = new MutationObserver(again);
    looks.observe(document.documentElement, { attributes: true, attributeFilter: ['data-deck-light'] });
    const colours = window.matchMedia('(forced-colors: active)');
    colours.addEventListener('change', again);
    return () => {
      isOver = true;
      looks.disconnect();
      colours.removeEventListener('change', again);
    };
  }, []);

  useEffect(() => {
    const element = canvas.current;
    const pen = element?.getContext('2d');
    if (element === null || pen === null || pen === undefined || box === undefined) return undefined;
    const painting = function* (): Generator<void, void, void> {
      const scale = window.devicePixelRatio || 1;
      const paint = readPaint(element);
      const ground = yield* groundOf(mapped, box, levels, scale);
      const hatching = yield* hatchPicture(ground, paint.softInk, paint.more);
      yield;
      element.width = Math.round(width * scale);
      element.height = Math.round(height * scale);
      pen.setTransform(scale, 0, 0, scale, 0, 0);
      pen.clearRect(0, 0, width, height);
      const nameOf = (it: number): string => {
        const limit = mapped.limits[it - 1];
        if (isRefused(it) || limit === undefined) return 'Cannot be';
        return capital(words.limit(limit.name).short);
      };
      const figureOf = words.cell(mapped.ask.results[0] ?? '').bare;
      const painted = paintGround(pen, ground, hatching, box, { nameOf, figureOf }, taken, paint);
      setNameless((now) => {
        const next = painted.nameless.map(nameOf);
        return next.join() === now.join() ? now : next;
      });
    };
    return inTurns(painting());
  }, [canvas, mapped, box, levels, taken, words, width, height, fresh]);
  return nameless;
}
