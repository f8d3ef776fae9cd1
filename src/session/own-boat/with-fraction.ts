const SIGN = /^\s*[-−]\s*/;
const MARK = /\s*(?:"|″|in\.?|inch(?:es)?)\s*$/i;
const SET_BEFORE = /(?:(?:^|[\s-])\s*\d+\s*[/⁄]\s*\d*|[¼½¾⅛⅜⅝⅞]|\.\d*)\s*$/;

/** A typed text with its fraction of an inch set, or taken for another; whole inches and the sign stay. */
export function withFraction(text: string, over: number, under: number): string {
  const sign = SIGN.test(text) ? '-' : '';
  const whole = text.replace(SIGN, '').replace(MARK, '').replace(SET_BEFORE, '').trim();
  return `${sign}${whole}${whole === '' ? '' : ' '}${over}/${under}`;
}

/** A typed text with the other sign. */
export function withOtherSign(text: string): string {
  return SIGN.test(text) ? text.replace(SIGN, '') : `-${text.trimStart().replace(/^\+\s*/, '')}`;
}
