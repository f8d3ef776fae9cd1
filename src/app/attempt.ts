import { createContext } from 'react';

/** Counts up whenever a part that failed is tried again. */
export const Attempt = createContext(0);
