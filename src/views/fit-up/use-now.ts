import { useEffect, useState } from 'react';

/** Milliseconds between two looks at the clock: what hardens is told to the minute. */
const LOOK = 30_000;

/** The time, looked at again while the view is shown. */
export function useNow(): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date()), LOOK);
    return () => clearInterval(timer);
  }, []);
  return now;
}
