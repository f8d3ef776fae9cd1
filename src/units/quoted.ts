const LONGEST_QUOTE = 40;

const visible = (sign: string): string =>
  /[\p{C}\p{Zl}\p{Zp}]/u.test(sign)
    ? `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`
    : sign;

/** What was typed, fit to stand in a sentence: invisible characters by their number, long texts cut. */
export const quoted = (typed: string): string => {
  const signs = Array.from(typed.replace(/\p{Zs}+/gu, ' '));
  const shown = signs.slice(0, LONGEST_QUOTE).map(visible).join('');
  return signs.length > LONGEST_QUOTE ? `${shown}...` : shown;
};
