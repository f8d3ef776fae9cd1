import { expect, it } from 'vitest';
import { studyWords } from '../../../src/session/study-words.ts';
import type { Mount } from '../../../src/studies/proposals/ask.ts';
import {
  changeWords,
  conflictSentence,
  looseningSentence,
  nearestWords,
  proposalSentence,
} from '../../../src/studies/proposals/proposal-words.ts';
import { free, stepsOf } from './plain-ask.ts';

const words = studyWords({ units: 'mm', ownCells: [], limits: [] });

const mount: Mount = {
  values: [4, 815, 200, -200],
  least: 0.138,
  limit: 'rudder_gap',
  room: 6.9,
  failing: [],
  shims: 4,
  bolts: 170,
};

const freed = [
  free('shim_count', stepsOf(0, 10, 1), true),
  free('upper_bracket_height', stepsOf(400, 1200, 5)),
  {
    name: 'feet_aside',
    moves: [
      { input: 'starboard_foot_y', sign: 1 as const },
      { input: 'port_foot_y', sign: -1 as const },
    ],
    values: stepsOf(0, 600, 5),
    whole: false,
  },
];
const inputs = ['shim_count', 'upper_bracket_height', 'starboard_foot_y', 'port_foot_y'];

it('says what a proposal changes, and nothing that stays', () => {
  expect(changeWords(mount, [3, 815, 170, -170], freed, inputs, words)).toBe(
    '4 shims and both feet 200 mm from the centreline',
  );
  expect(changeWords(mount, [3, 800, 200, -200], freed, inputs, words)).toBe(
    '4 shims and the upper bracket at 815 mm',
  );
  expect(changeWords(mount, mount.values, freed, inputs, words)).toBe('As it stands now');
});

it('says why a proposal is told', () => {
  expect(proposalSentence({ ...mount, best: ['shims', 'bolts'] }, words)).toBe(
    'The fewest shims and the shortest bolts of all mounts found that keep every limit; the nearest limit, rudder gap, keeps 6.9 mm.',
  );
  const odds = { value: 0.933, low: 0.922, high: 0.944 };
  expect(proposalSentence({ ...mount, odds, best: ['odds'] }, words)).toBe(
    'The best odds of all mounts found that keep every limit; the nearest limit, rudder gap, keeps 6.9 mm; everything holds in 93.3 % (92.2 % to 94.4 %) of all cases.',
  );
  expect(nearestWords({ ...mount, room: -5.3 }, words)).toBe(
    'the worst of them, rudder gap, is 5.3 mm outside',
  );
  expect(proposalSentence({ ...mount, best: [] }, words)).toBe(
    'Between the others; the nearest limit, rudder gap, keeps 6.9 mm.',
  );
});

it('says what conflicts, and what would free it', () => {
  const conflict = { nearest: mount, loosenings: [], isSmallest: true, shownBy: 'a search' } as const;
  expect(conflictSentence({ ...conflict, limits: ['rudder_gap', 'bolt_utilisation'] }, words)).toBe(
    'No mount found keeps the limits on rudder gap and lower bolts together; any fewer of them can be kept.',
  );
  expect(conflictSentence({ ...conflict, limits: ['rudder_gap'] }, words)).toBe(
    'No mount found keeps the limit on rudder gap, whatever else is given up.',
  );
  const many = ['rudder_gap', 'bolt_utilisation', 'shim_stack'];
  expect(conflictSentence({ ...conflict, limits: many, isSmallest: false, shownBy: 'chance' }, words)).toBe(
    'No mount found keeps the limits on rudder gap, lower bolts and shim stack together; any fewer of them can be kept. Whether fewer limits than these conflict was not looked into. That is not proved: a mount that keeps them may lie where nothing was looked at.',
  );
  expect(conflictSentence({ ...conflict, limits: ['rudder_gap'], shownBy: 'every mount' }, words)).toBe(
    'No mount at all keeps the limit on rudder gap, whatever else is given up.',
  );
  expect(looseningSentence({ name: 'rudder_gap_min', from: 50, to: 44, mount }, words)).toBe(
    'Least clearance between the two rudders: 44 mm in place of 50 mm, and everything holds.',
  );
});
