/** Function that puts a reason where a number is missing: an input left empty, a limit that does not apply. */
export const NO_ANSWER = 'NO_ANSWER';

/** A formula whose only answer is a reason. */
export const reasonFormula = (why: string): string => `=${NO_ANSWER}("${why.replaceAll('"', '""')}")`;
