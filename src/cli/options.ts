/** One option of a command: a flag where nothing follows its name. */
export interface Option {
  /** What follows it. */
  readonly takes?: string;
  readonly says: string;
}

/** Every option of every command, in the order in which help lists them. */
export const OPTIONS = {
  plan: {
    takes: 'FILE',
    says: 'the plan; without it, the values that a new plan starts with',
  },
  scenario: { takes: 'NAME', says: 'one of its scenarios; without it, the base values' },
  set: { takes: 'name=value', says: 'puts a value over the plan’s; may be given more than once' },
  json: { says: 'one line of JSON, in base units' },
  batch: { says: 'reads one JSON object of values a line from standard input, and answers each in one line' },
  sheet: { takes: 'NAME', says: 'the sheet to print' },
  out: { takes: 'FILE', says: 'the file to write' },
  paper: { takes: 'SIZE', says: 'the paper; without it, a4' },
  units: { takes: 'UNITS', says: 'mm, in or both; without it, the plan’s own' },
  date: { takes: 'DATE', says: 'the date on the sheet, as in 2031-04-09; without it, today' },
  input: { takes: 'NAME', says: 'the input that is varied' },
  low: { takes: 'VALUE', says: 'the least value it takes; without it, the low end of its usual range' },
  high: { takes: 'VALUE', says: 'the greatest value it takes; without it, the high end of its usual range' },
  points: { takes: 'NUMBER', says: 'how many values are tried' },
  across: { takes: 'NAME', says: 'the input along the map’s foot' },
  up: { takes: 'NAME', says: 'the input along the map’s side' },
  fineness: { takes: 'NUMBER', says: 'how many values are tried along each side' },
  result: { takes: 'NAME', says: 'a result to work out; may be given more than once' },
  limit: { takes: 'NAME', says: 'a limit to judge; may be given more than once' },
  share: { takes: 'NUMBER', says: 'how much of their errors the readings share, from 0 to 1' },
  free: { takes: 'NAME', says: 'a choice that may change; may be given more than once' },
} as const satisfies Readonly<Record<string, Option>>;

export type OptionName = keyof typeof OPTIONS;

const optionOf = (name: OptionName): Option => OPTIONS[name];

export const isFlag = (name: OptionName): boolean => optionOf(name).takes === undefined;

/** An option as one types it. */
export const typed = (name: OptionName): string => {
  const { takes } = optionOf(name);
  return takes === undefined ? `--${name}` : `--${name} ${takes}`;
};

/** What a command does, how it is typed, and what each of its options says. */
export function helpText(does: string, begins: string, names: readonly OptionName[]): string {
  const widest = Math.max(...names.map((name) => typed(name).length), '--help'.length);
  const lines = [...names.map((name) => [typed(name), optionOf(name).says]), ['--help', 'this page']].map(
    ([option = '', says]) => `  ${option.padEnd(widest)}  ${says}`,
  );
  return [does, '', `  npm run -s ${begins} [options]`, '', ...lines, ''].join('\n');
}

/** How several plans are asked about at once, for the commands that can. */
export const PATTERN_HELP =
  "A pattern of plans in quotes, as in --plan 'DIR/*.plan.json', is answered in one line of JSON a plan.";
