import { Refused } from './exit.ts';

/** `--set name=value`, split at its first equals sign. */
export function setOf(text: string): readonly [string, string] {
  const at = text.indexOf('=');
  if (at < 1) throw new Refused(`--set takes name=value, not “${text}”.`);
  return [text.slice(0, at).trim(), text.slice(at + 1)];
}
