import type { Argument } from '../../calc/record.ts';

/** What an argument may be and what it is when left out, to stand after its meaning; nothing when anything goes. */
export function boundWordsOf({ above, least, default: left }: Argument): string {
  const words = [
    ...(above === undefined ? [] : [`above ${above}`]),
    ...(least === undefined ? [] : [`${least} or more`]),
    ...(left === undefined ? [] : [typeof left === 'object' ? 'may be left out' : `${left} when left out`]),
  ];
  return words.length === 0 ? '' : ` (${words.join('; ')})`;
}
