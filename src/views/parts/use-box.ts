import { type RefObject, useEffect, useState } from 'react';

export interface Box {
  readonly width: number;
  readonly height: number;
}

/** The size of an element in whole px, kept up to date; undefined until it is known. */
export function useBox(ref: RefObject<HTMLElement | null>): Box | undefined {
  const [box, setBox] = useState<Box>();
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => {
      const width = Math.floor(element.clientWidth);
      const height = Math.floor(element.clientHeight);
      setBox((now) => (now?.width === width && now.height === height ? now : { width, height }));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return box;
}
