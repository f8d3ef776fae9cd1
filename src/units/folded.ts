/** A word without its capitals and spare spaces, to compare it with another. */
export const folded = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();
