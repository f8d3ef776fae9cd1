import type { LimitAnswer } from '../../../src/workbook/judged.ts';
import { plain, type Told, told } from './told.ts';

/** Results that sheets tell too, by what they are called there. */
const RESULTS: Readonly<Record<string, string>> = {
  lower_bolt_grip: 'lower bolts, grip',
  foot_bolt_grip: 'foot bolts, grip',
  lower_thread_beyond: 'lower bolts, thread past the nut',
  foot_thread_beyond: 'foot bolts, thread past the nut',
  port_strut_cut: 'port strut, cut',
  starboard_strut_cut: 'starboard strut, cut',
  single_strut_cut: 'single strut, cut',
  port_strut_trial: 'port strut, trial',
  starboard_strut_trial: 'starboard strut, trial',
  single_strut_trial: 'single strut, trial',
  strut_tubes_needed: 'tubes',
  strut_offcut: 'longest piece left',
};

const CLI = 'command line';

/** What the command line’s table for people says: results by name, and limits with their state. */
export function readTable(table: string, diameter: unknown): Told[] {
  const rows = table
    .split('\n')
    .filter((line) => line.startsWith('  '))
    .map((line) => line.trim().split(/ {2,}/));
  return rows.flatMap(([name = '', words = '', more = '']): Told[] => {
    if (/^(outside|near|inside|no answer)$/.test(words))
      return [
        told(CLI, `limit ${name}`, words),
        // Of no answer the reason stands there, and of a yes or no nothing.
        ...(more === '' || words === 'no answer' ? [] : [told(CLI, `value ${name}`, more)]),
      ];
    if (words.startsWith('no answer')) return [];
    const what = RESULTS[name];
    if (what !== undefined) return [told(CLI, what, words)];
    const bolt = /^(lower|foot)_bolt_length$/.exec(name)?.[1];
    if (bolt !== undefined) {
      const length = /^([\d.]+) mm/.exec(words)?.[1];
      return length === undefined ? [] : [told(CLI, `${bolt} bolts, size`, `M${diameter} × ${length}`)];
    }
    if (name === 'torque_first') return [told(CLI, 'torque to begin with, N·m', words)];
    return [];
  });
}

/** What a message says of each limit, by the limit that it must be. */
export function readMail(
  lines: readonly string[],
  limits: readonly LimitAnswer[],
  labelOf: (result: string) => string,
): Told[] {
  const count = /It rests on (\d+) stand-ins?/.exec(lines.join(' '))?.[1] ?? '?';
  const said = lines.map(plain);
  return [
    told('mail', 'stand-ins', count === '0' ? 'no' : count),
    ...limits.flatMap((it) => {
      const start = `${plain(labelOf(it.result))}: `;
      const line = said.find(
        (words) => words.startsWith(start) && words.slice(start.length).startsWith(it.verdict.state),
      );
      if (line === undefined) return [];
      const [state = '', ...value] = line.slice(start.length).split(', ');
      return [
        told('mail', `limit ${it.name}`, state),
        ...(value.length === 0 || state === 'no answer'
          ? []
          : [told('mail', `value ${it.name}`, value.join(', '))]),
      ];
    }),
  ];
}
