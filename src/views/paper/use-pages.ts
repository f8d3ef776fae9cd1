import { useEffect, useRef, useState } from 'react';
import type { Asked } from './choice.ts';
import type { SheetShown } from './sheet-picture.tsx';

export interface Pages {
  readonly pages: readonly SheetShown[];
  /** What the pages show is not what is asked for any more. */
  readonly isStale: boolean;
  readonly why: string | undefined;
}

type Show = (asked: Asked) => Promise<readonly SheetShown[]>;

/** The pages of what is asked for, made after the paint and again when the answers change; the last ones stay until then. */
export function usePages(show: Show, asked: Asked, answers: object, ready: boolean): Pages {
  const [made, setMade] = useState<{ readonly pages: readonly SheetShown[]; readonly of: string }>();
  const [why, setWhy] = useState<string>();
  const latest = useRef(show);
  latest.current = show;
  const { sheet, paper, units } = asked;
  const key = `${sheet} ${paper} ${units}`;
  const [done, setDone] = useState<object>();
  useEffect(() => {
    if (!ready) return;
    let isLeft = false;
    const timer = setTimeout(() => {
      latest.current({ sheet, paper, units }).then(
        (pages) => {
          if (isLeft) return;
          setMade({ pages, of: `${sheet} ${paper} ${units}` });
          setDone(answers);
          setWhy(undefined);
        },
        (error: unknown) => {
          if (!isLeft) setWhy(error instanceof Error ? error.message : String(error));
        },
      );
    }, 30);
    return () => {
      isLeft = true;
      clearTimeout(timer);
    };
  }, [sheet, paper, units, answers, ready]);
  return { pages: made?.pages ?? [], isStale: made?.of !== key || done !== answers, why };
}
