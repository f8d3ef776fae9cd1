import type { Ink } from './hatch.ts';
import type { Paint } from './paint.ts';

/** Size of ticks and letters as a share of the page's text. */
const LETTER = 0.75;

/** The page's colours and lettering where an element stands, as a canvas needs them. */
export function readPaint(element: Element): Paint & { readonly softInk: Ink } {
  const style = getComputedStyle(element);
  const token = (name: string): string => style.getPropertyValue(name).trim();
  const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return {
    film: token('--film'),
    ink: token('--ink'),
    soft: token('--soft'),
    more: Number.parseFloat(token('--more')) || 0,
    family: style.fontFamily,
    letter: root * LETTER,
    softInk: inkOf(token('--soft')),
  };
}

/** A colour of any kind as the canvas understands it. */
function inkOf(colour: string): Ink {
  const picture = document.createElement('canvas');
  picture.width = 1;
  picture.height = 1;
  const pen = picture.getContext('2d', { willReadFrequently: true });
  if (pen === null) return [0, 0, 0];
  pen.fillStyle = colour;
  pen.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = pen.getImageData(0, 0, 1, 1).data;
  return [red, green, blue];
}
