/** What a command was asked, or what is wrong with the asking. */
export interface Arguments {
  readonly options: ReadonlyMap<string, readonly string[]>;
  readonly flags: ReadonlySet<string>;
}

/** Reads `--name value` options (each may come more than once) and `--name` flags; anything else is refused. */
export function readArguments(
  given: readonly string[],
  options: readonly string[],
  flags: readonly string[],
): Arguments | { readonly why: string } {
  const found = new Map<string, string[]>();
  const set = new Set<string>();
  for (let i = 0; i < given.length; i++) {
    const word = given[i] ?? '';
    const equals = word.indexOf('=');
    const name = word.startsWith('--') ? word.slice(2, equals < 0 ? undefined : equals) : '';
    if (flags.includes(name) && equals < 0) {
      set.add(name);
      continue;
    }
    if (!options.includes(name)) {
      const all = [...options.map((it) => `--${it} VALUE`), ...flags.map((it) => `--${it}`)];
      return { why: `“${word}” is not understood here; ${all.join(', ')} are.` };
    }
    const value = equals < 0 ? given[++i] : word.slice(equals + 1);
    if (value === undefined) return { why: `--${name} needs a value after it.` };
    found.set(name, [...(found.get(name) ?? []), value]);
  }
  return { options: found, flags: set };
}
