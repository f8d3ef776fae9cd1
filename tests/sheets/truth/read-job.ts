import { styles } from '../../../src/sheets/lettering/styles.ts';
import type { LimitAnswer } from '../../../src/workbook/judged.ts';
import { limitTitle } from '../../../src/workbook/limit-words.ts';
import type { ReadPage, ReadText } from '../../support/read-pdf.ts';
import { textOf } from '../../support/read-pdf.ts';
import { plain, type Told, told } from './told.ts';

const JOB = 'job sheet';
const MARKS = 'job sheet’s drawing';

const MM = '−?\\d+';
const IN = '−?(?:\\d+ )?\\d+⁄\\d+|−?\\d+';
const OFF = '[+−]?\\d+\\.\\d';
const LENGTH = '−?[\\d.]+ mm(?: (?:−?(?:\\d+ )?\\d+⁄\\d+|−?\\d+) in)?|−?(?:(?:\\d+ )?\\d+⁄\\d+|\\d+) in';

export type Units = 'mm' | 'in' | 'both';

/** `194.8 mm 7 11⁄16 in` as everything else writes it. */
const bracketed = (words: string): string => words.replace(/ mm (.+ in)$/, ' mm ($1)');

/** Texts that stand on one line and touch are one. */
function runs({ texts }: ReadPage): { readonly text: string; readonly size: number }[] {
  const found: { text: string; size: number }[] = [];
  let last: ReadText | undefined;
  for (const it of texts) {
    const joined =
      last !== undefined && Math.abs(last.y - it.y) < 0.01 && Math.abs(last.x + last.width - it.x) < 0.3;
    const before = found.at(-1);
    // Numbers of holes have no fractions: two that touch are two.
    const isNumbers = /^[\d, ]+$/.test(it.text) && /^[\d, ]+$/.test(before?.text ?? '');
    if (joined && before !== undefined && !isNumbers) before.text += it.text;
    else found.push({ text: it.text, size: it.size });
    last = it;
  }
  return found.map(({ text, size }) => ({ text: plain(text), size }));
}

function boltsOf(text: string): Told[] {
  const rows =
    /(Lower bracket|Each foot|Port foot|Single foot) (\d+) (M\d+ (?:× \d+|rod, \d+ mm)) or (\S+ (?:× (?:\d+ )?[\d⁄]+ in|rod)) ((?:Bolt head|Thin nut).*?(?:· locking nut|nut, and a thin second nut))/g;
  return [...text.matchAll(rows)].flatMap(([, name, count = '', size = '', inch = '', layers = '']) => {
    const which = name === 'Lower bracket' ? 'lower' : 'foot';
    return [
      told(JOB, `${which} bolts, count`, count),
      told(JOB, `${which} bolts, size`, size),
      told(JOB, `${which} bolts, inch size`, inch),
      told(JOB, `${which} bolts, stack`, layers.toLowerCase()),
      told(JOB, `${which} bolts, lock`, layers.split(' · ').at(-1) ?? ''),
    ];
  });
}

function holesOf(text: string, units: Units): Told[] {
  const mark =
    units === 'mm'
      ? `(${MM}) (${OFF})`
      : units === 'in'
        ? `(${IN}) (${OFF})`
        : `(${MM}) (${IN}) (${OFF}), (${OFF})`;
  const row = new RegExp(
    `(\\d+) ((?:Lower bracket|Port foot|Starboard foot|Single foot), (?:port|starboard)(?:, row \\d+)?) (to port|to starboard|on the centreline) ${mark} ${mark}`,
    'g',
  );
  return [...text.matchAll(row)].flatMap(([, number, name = '', side = '', ...figures]) => {
    const half = figures.length / 2;
    const say = (what: string, its: readonly string[]): Told[] => {
      const [first = '', second = '', third = '', fourth = ''] = its;
      const marks: readonly (readonly [string, string, string])[] =
        units === 'both'
          ? [
              ['mm', `${first} mm`, third],
              ['in', `${second} in`, fourth],
            ]
          : [[units, `${first} ${units}`, second]];
      return marks.flatMap(([unit, words, off]) => [
        told(JOB, `hole ${number}, ${what}, ${unit}`, words),
        told(JOB, `hole ${number}, ${what}, ${unit} rounded by`, String(Number(off.replace('−', '-')))),
      ]);
    };
    return [
      told(JOB, `hole ${number}, name`, name),
      told(JOB, `hole ${number}, side`, side),
      ...say('across', figures.slice(0, half)),
      ...say('up', figures.slice(half)),
    ];
  });
}

/** The drawing letters the distance across first, over and under it, then the one up, beside it. */
function marksOf(page: ReadPage): Told[] {
  const texts = runs(page);
  const seen = new Set<string>();
  const found: Told[] = [];
  for (const [i, it] of texts.entries()) {
    // Numbers of holes are heavier and larger than those of the rule.
    if (!/^\d+(, \d+)*$/.test(it.text) || Math.abs(it.size - styles.strong.size) > 0.01) continue;
    const lengths: string[] = [];
    for (let k = i + 1; /^−?[\d⁄ ]+ (mm|in)$/.test(texts[k]?.text ?? ''); k++)
      lengths.push(texts[k]?.text ?? '');
    if (lengths.length === 0) continue;
    for (const number of it.text.split(', ')) {
      const what = seen.has(number) ? 'up' : 'across';
      seen.add(number);
      for (const words of lengths)
        found.push(told(MARKS, `hole ${number}, ${what}, ${words.slice(-2)}`, words));
    }
  }
  return found;
}

function cutsOf(text: string): Told[] {
  const row = new RegExp(`(Port|Starboard|Single) strut (${LENGTH}) (${LENGTH})`, 'g');
  const cuts = [...text.matchAll(row)].flatMap(([, side = '', trial = '', cut = '']) => [
    told(JOB, `${side.toLowerCase()} strut, cut`, bracketed(cut)),
    told(JOB, `${side.toLowerCase()} strut, trial`, bracketed(trial)),
  ]);
  const nest = /Planned lengths take (\d+) tubes? of/.exec(text)?.[1];
  const left = /Longest piece left: (.+?), less what/.exec(text)?.[1];
  return [
    ...cuts,
    ...(nest === undefined ? [] : [told(JOB, 'tubes', nest)]),
    ...(left === undefined ? [] : [told(JOB, 'longest piece left', left)]),
  ];
}

/** What the job sheet says, read off its pages. */
export function readJob(pages: readonly ReadPage[], units: Units, limits: readonly LimitAnswer[]): Told[] {
  const text = plain(pages.map(textOf).join(' '));
  const one = (what: string, pattern: RegExp): Told[] => {
    const words = pattern.exec(text)?.[1];
    return words === undefined ? [] : [told(JOB, what, words)];
  };
  return [
    ...boltsOf(text),
    ...holesOf(text, units),
    ...pages.slice(0, 1).flatMap(marksOf),
    ...cutsOf(text),
    ...one('torque to begin with', /([\d.]+ N·m \(\d+ lbf·ft\))/),
    ...one('drill', /then (\d[\d.]* mm for M\d+ \([\d⁄]+ in for [\d⁄-]+\))/),
    ...limits
      .filter((it) => it.verdict.state !== 'inside' && it.verdict.state !== 'does not apply')
      .map((it) => {
        const isThere = text.includes(`${it.verdict.state} ${plain(limitTitle(it))} `);
        return told(JOB, `limit ${it.name}`, isThere ? it.verdict.state : 'not there');
      }),
    ...pages.flatMap((page) => {
      const here = plain(textOf(page));
      const stop = /Do not drill from this sheet: (.*?)\. (?=Job sheet)/.exec(here)?.[1] ?? 'it can be built';
      const count = /Rests on (no|\d+) stand-ins?/.exec(here)?.[1] ?? '?';
      return [told(JOB, 'stop', stop), told(JOB, 'stand-ins', count)];
    }),
  ];
}
