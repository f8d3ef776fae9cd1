import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** PDF files are read back with pdfjs-dist, which shares nothing with the library that writes them. */

const MM_PER_POINT = 25.4 / 72;

export interface ReadText {
  readonly text: string;
  /** Left end of the baseline, mm from the page's top left. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Size of the letters, points. */
  readonly size: number;
}

/** A stroked or filled path: its corners in order, mm from the page's top left. */
export interface ReadPath {
  readonly points: readonly (readonly [number, number])[];
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  readonly paths: readonly ReadPath[];
  /** Greys and colours that were set, as the reader names them. */
  readonly colours: ReadonlySet<string>;
}

/** Numbers that a path command takes in the reader's list: move, line, cubic, close. */
const TAKES = [2, 2, 6, 0];

function corners(list: ArrayLike<number>, height: number): ReadPath {
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i < list.length; ) {
    const takes = TAKES[list[i] ?? 3] ?? 0;
    if (takes > 0) {
      const x = list[i + takes - 1] ?? Number.NaN;
      const y = list[i + takes] ?? Number.NaN;
      points.push([x * MM_PER_POINT, height - y * MM_PER_POINT]);
    }
    i += 1 + takes;
  }
  return { points };
}

/** All that stands in a file; `drawn` false leaves out paths and colours, which takes half the time. */
export async function readPdf(bytes: Uint8Array, drawn = true): Promise<ReadPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = page.view;
    const height = (y1 - y0) * MM_PER_POINT;
    const content = await page.getTextContent({ disableNormalization: true });
    const texts = content.items.flatMap((it): ReadText[] => {
      if (!('str' in it) || it.str.trim() === '') return [];
      const [, , , size = 0, x = 0, y = 0] = it.transform as number[];
      return [
        {
          text: it.str,
          x: x * MM_PER_POINT,
          y: height - y * MM_PER_POINT,
          width: it.width * MM_PER_POINT,
          size: Math.abs(size),
        },
      ];
    });
    const paths: ReadPath[] = [];
    const colours = new Set<string>();
    const list = drawn ? await page.getOperatorList() : { fnArray: [], argsArray: [] };
    for (const [i, code] of list.fnArray.entries()) {
      const args = list.argsArray[i] as unknown[];
      if (code === OPS.constructPath) {
        const [[data]] = [args[1] as [ArrayLike<number> | null]];
        if (data) paths.push(corners(data, height));
      }
      if (code === OPS.setFillRGBColor || code === OPS.setStrokeRGBColor) colours.add(String(args));
    }
    pages.push({ width: (x1 - x0) * MM_PER_POINT, height, texts, paths, colours });
  }
  await task.destroy();
  return pages;
}

/** Two runs this near on one line are one word, mm. */
const TOUCHING = 0.3;

/** All text of a page in the order it was written, runs of one word joined. */
export function textOf(page: ReadPage): string {
  let text = '';
  let last: ReadText | undefined;
  for (const it of page.texts) {
    const joined =
      last !== undefined && Math.abs(last.y - it.y) < 0.01 && Math.abs(last.x + last.width - it.x) < TOUCHING;
    text += (joined ? '' : ' ') + it.text;
    last = it;
  }
  return text.replace(/\s+/g, ' ').trim();
}
