import type { Answers } from './questions.ts';

const SIGN = /^\s*([-−+])\s*/;

const isZero = (text: string): boolean => /^[0.,]*0[0.,]*\s*(?:deg|degrees?|°)?$/.test(text.trim());

export type Signed =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: string };

/** The slope as asked for, without a sign, put on the side the transom leans to. A sign that says otherwise is refused. */
export function signedSlope(text: string, lean: Answers['lean']): Signed {
  const typed = text.trim();
  if (typed === '' || typed.startsWith('=') || lean === undefined) return { ok: true, text: typed };
  const sign = SIGN.exec(typed)?.[1];
  const size = typed.replace(SIGN, '');
  if (lean === 'upright') {
    if (isZero(size)) return { ok: true, text: size };
    return {
      ok: false,
      why: `You said the transom stands upright, so its slope is 0. With “${typed}” it leans: say which way first.`,
    };
  }
  const minus = sign === '-' || sign === '−';
  if (lean === 'aft' && minus) {
    return {
      ok: false,
      why: `You said the top is further aft, which is a slope with plus; “${typed}” has a minus. Write it without a sign, or say that it leans forward.`,
    };
  }
  if (lean === 'forward' && sign === '+') {
    return {
      ok: false,
      why: `You said the top is further forward, which is a slope with minus; “${typed}” has a plus. Write it without a sign, or say that it leans aft.`,
    };
  }
  return { ok: true, text: lean === 'forward' && !isZero(size) ? `-${size}` : size };
}
