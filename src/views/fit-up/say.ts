import { createContext, useContext } from 'react';

/** Says something to a screen reader, politely. */
export const SayContext = createContext<(words: string) => void>(() => {});

export const useSay = (): ((words: string) => void) => useContext(SayContext);
