import { isFlag, type OptionName, typed } from './options.ts';

/** What a command was asked, or what is wrong with the asking. */
export interface Arguments {
  readonly options: ReadonlyMap<string, readonly string[]>;
  readonly flags: ReadonlySet<string>;
}

/** Whether a command is asked what it takes, whatever else it is asked. */
export const asksForHelp = (given: readonly string[]): boolean => given.includes('--help');

/** Reads `--name value` options (each may come more than once) and `--name` flags; anything else is refused. */
export function readArguments(
  given: readonly string[],
  names: readonly OptionName[],
): Arguments | { readonly why: string } {
  const found = new Map<string, string[]>();
  const flags = new Set<string>();
  for (let i = 0; i < given.length; i++) {
    const word = given[i] ?? '';
    const equals = word.indexOf('=');
    const asked = word.startsWith('--') ? word.slice(2, equals < 0 ? undefined : equals) : '';
    const name = names.find((it) => it === asked);
    if (name === undefined) {
      const what = word.startsWith('--') ? `Unknown option --${asked}.` : `“${word}” is not an option.`;
      const others = names.length === 0 ? 'there are none' : names.map(typed).join(', ');
      return { why: `${what} Options: ${others} (and --help answers).` };
    }
    if (isFlag(name)) {
      if (equals >= 0) return { why: `--${name} takes no value.` };
      flags.add(name);
      continue;
    }
    const value = equals < 0 ? given[++i] : word.slice(equals + 1);
    if (value === undefined) return { why: `--${name} needs a value after it.` };
    found.set(name, [...(found.get(name) ?? []), value]);
  }
  return { options: found, flags };
}
