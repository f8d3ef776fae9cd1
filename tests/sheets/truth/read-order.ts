import type { ListedSection } from '../../../src/order/list/order-list.ts';
import { plain, type Told, told } from './told.ts';

const ORDER = 'order list';

/** Every row and sentence of the list as it stands on the page that is not on the paper. */
export const missingOnPaper = (sections: readonly ListedSection[], paper: string): string[] =>
  sections
    .flatMap((it) => [
      it.title,
      it.lead,
      ...it.notes,
      ...it.unanswered,
      ...(it.standsOn === undefined ? [] : [it.standsOn]),
      ...it.tables.flatMap(({ rows }) => rows.map((cells) => cells.filter((cell) => cell !== '').join(' '))),
    ])
    .map(plain)
    .filter((words) => !paper.includes(words));

const rowsIn = (
  sections: readonly ListedSection[],
  title: string,
  table = 0,
): readonly (readonly string[])[] => sections.find((it) => it.title === title)?.tables[table]?.rows ?? [];

const which = (place: string): string => (place.startsWith('Lower') ? 'lower' : 'foot');

function boltsOf(sections: readonly ListedSection[]): Told[] {
  return rowsIn(sections, 'Through bolts').flatMap(
    ([place = '', count = '', size = '', grip = '', past = '', , nuts = '', inch = '']) => [
      told(ORDER, `${which(place)} bolts, count`, count),
      told(ORDER, `${which(place)} bolts, size`, size),
      told(ORDER, `${which(place)} bolts, inch size`, inch),
      told(ORDER, `${which(place)} bolts, grip`, grip),
      ...(past === '' ? [] : [told(ORDER, `${which(place)} bolts, thread past the nut`, past)]),
      told(
        ORDER,
        `${which(place)} bolts, lock`,
        nuts.includes('locking') ? 'locking nut' : 'nut, and a thin second nut',
      ),
    ],
  );
}

/** The stack as the job sheet writes it: figures without their unit, in inches or millimetres. */
function stacksOf(sections: readonly ListedSection[]): Told[] {
  const section = sections.find((it) => it.title.startsWith('Order of the stack'));
  return (section?.tables ?? []).flatMap(({ heads, rows }) => {
    const name = which(heads[0]?.text ?? '');
    const layers = rows.map(([what = '', thick = '']) =>
      thick === '' ? what : `${what} ${plain(thick).replace(/ (mm|in).*$/, '')}`,
    );
    return [
      told(ORDER, `${name} bolts, stack`, layers.join(' · ').toLowerCase()),
      told(ORDER, `${name} bolts, lock`, (rows.at(-1)?.[0] ?? '').toLowerCase()),
    ];
  });
}

function holesOf(sections: readonly ListedSection[]): Told[] {
  return rowsIn(sections, 'Holes through the transom').flatMap(
    ([number, name = '', side = '', , across = '', , up = '']) => {
      const say = (what: string, words: string): Told[] =>
        [...plain(words).matchAll(/(−?[\d⁄ ]+?) (mm|in) \(([+−]?[\d.]+)\)/g)].flatMap(
          ([, figure = '', unit = '', off = '']) => [
            told(ORDER, `hole ${number}, ${what}, ${unit}`, `${figure.trim()} ${unit}`),
            told(ORDER, `hole ${number}, ${what}, ${unit} rounded by`, String(Number(off.replace('−', '-')))),
          ],
        );
      return [
        told(ORDER, `hole ${number}, name`, name),
        told(ORDER, `hole ${number}, side`, side),
        ...say('across', across),
        ...say('up', up),
      ];
    },
  );
}

function strutsOf(sections: readonly ListedSection[]): Told[] {
  const pieces = rowsIn(sections, 'Struts').flatMap(([name = '', cut = '', trial = '']) => [
    told(ORDER, `${name.toLowerCase()}, cut`, cut),
    told(ORDER, `${name.toLowerCase()}, trial`, trial),
  ]);
  const tubes = rowsIn(sections, 'Struts', 1);
  return [...pieces, ...(tubes.length === 0 ? [] : [told(ORDER, 'tubes', String(tubes.length))])];
}

function packingOf(sections: readonly ListedSection[]): Told[] {
  const rows = rowsIn(sections, 'Shims, wedge and pads');
  const row = (name: string): readonly string[] | undefined => rows.find(([first]) => first === name);
  const shims = row('Shims');
  const thick = /, ([^,]+) thick$/.exec(shims?.[2] ?? '')?.[1];
  const wedge = row('Wedge');
  const pads = rows.filter(([name, count]) => name?.endsWith('pad') && count === '1').length;
  return [
    ...(shims === undefined ? [] : [told(ORDER, 'shims', shims[1] === 'none' ? '0' : (shims[1] ?? ''))]),
    ...(thick === undefined ? [] : [told(ORDER, 'shim, thickness', thick)]),
    ...(wedge?.[1] === '1' ? [told(ORDER, 'wedge', wedge[2] ?? '')] : []),
    told(ORDER, 'pads', String(pads)),
  ];
}

function platesOf(sections: readonly ListedSection[]): Told[] {
  const rows = rowsIn(sections, 'Backing plates, bed and sealant');
  const sum = (name: string): number =>
    rows.filter(([place = '']) => which(place) === name).reduce((all, [, count]) => all + Number(count), 0);
  return ['lower', 'foot'].flatMap((name) => {
    const size = rows.find(([place = '']) => which(place) === name)?.[2];
    if (size === undefined) return [];
    return [
      told(ORDER, `${name} plates`, String(sum(name))),
      told(ORDER, `${name} plates, thickness`, /, (.+) thick$/.exec(size)?.[1] ?? '?'),
    ];
  });
}

/** What the order list says, as the page Parts shows it. */
export function readOrder(sections: readonly ListedSection[]): Told[] {
  const torque = rowsIn(sections, 'Tightening torque').map(([, words = '']) => words);
  const first = torque[0] === 'none entered' ? torque[1] : torque[0];
  const drill = sections
    .flatMap((it) => it.notes)
    .map((note) => /then (\d[\d.]* mm for M\d+ \([\d⁄]+ in for [\d⁄-]+\))/.exec(plain(note))?.[1])
    .find((it) => it !== undefined);
  const stop = sections.find((it) => it.stop !== undefined)?.stop ?? 'x: it can be built.';
  const holes = holesOf(sections);
  const levels = ['mm', 'in'].flatMap((unit) => {
    const ups = holes.filter((it) => it.what.endsWith(`, up, ${unit}`)).map((it) => it.words);
    return ups.length === 0 ? [] : [told(ORDER, `levels, ${unit}`, [...new Set(ups)].sort().join(', '))];
  });
  return [
    ...boltsOf(sections),
    ...stacksOf(sections),
    ...holes,
    ...levels,
    ...strutsOf(sections),
    ...packingOf(sections),
    ...platesOf(sections),
    ...(first === undefined
      ? []
      : [
          told(ORDER, 'torque to begin with', first),
          told(ORDER, 'torque to begin with, N·m', first.replace(/ \(.*/, '')),
        ]),
    ...(drill === undefined
      ? []
      : [told(ORDER, 'drill', drill), told(ORDER, 'hole, diameter', drill.replace(/ mm.*/, ''))]),
    told(ORDER, 'stop', stop.slice(stop.indexOf(': ') + 2, -1)),
  ];
}
