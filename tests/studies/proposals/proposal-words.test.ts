import { expect, it } from 'vitest';
import { studyWords } from '../../../src/session/study-words.ts';
import type { Mount } from '../../../src/studies/proposals/ask.ts';
import {
  changeWords,
  conflictSentence,
  failingWords,
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
    'The fewest shims and the shortest bolts of the mounts tried that meet every limit; tightest limit: rudder gap, 6.9 mm room.',
  );
  const odds = { value: 0.933, low: 0.922, high: 0.944 };
  expect(proposalSentence({ ...mount, odds, best: ['odds'] }, words)).toBe(
    'The best odds of the mounts tried that meet every limit; tightest limit: rudder gap, 6.9 mm room; all limits are met in 93.3 % (92.2 % to 94.4 %) of all cases.',
  );
  expect(nearestWords({ ...mount, room: -5.3 }, words)).toBe('furthest outside: rudder gap, by 5.3 mm');
  expect(nearestWords({ ...mount, limit: 'stock_utilisation', room: 0.214 }, words)).toBe(
    'tightest limit: stock, 21 % in hand',
  );
  expect(proposalSentence({ ...mount, best: [] }, words)).toBe(
    'Between the others; tightest limit: rudder gap, 6.9 mm room.',
  );
});

it('says what conflicts, and what would free it', () => {
  const conflict = { nearest: mount, loosenings: [], isSmallest: true, shownBy: 'a search' } as const;
  expect(conflictSentence({ ...conflict, limits: ['rudder_gap', 'bolt_utilisation'] }, words)).toBe(
    'No mount tried meets the limits on rudder gap and lower bolts together; without any one of them the others can be met.',
  );
  expect(conflictSentence({ ...conflict, limits: ['rudder_gap'] }, words)).toBe(
    'No mount tried meets the limit on rudder gap, whatever else is given up.',
  );
  const many = ['rudder_gap', 'bolt_utilisation', 'shim_stack'];
  expect(conflictSentence({ ...conflict, limits: many, isSmallest: false, shownBy: 'chance' }, words)).toBe(
    'No mount tried meets the limits on rudder gap, lower bolts and shim stack together; without any one of them the others can be met. There may be a smaller conflict among other limits. This is not proved: a mount that meets them may lie between those tried.',
  );
  expect(conflictSentence({ ...conflict, limits: ['rudder_gap'], shownBy: 'every mount' }, words)).toBe(
    'No mount meets the limit on rudder gap, whatever else is given up.',
  );
  expect(failingWords({ failing: ['rudder_gap', 'stock_utilisation'] }, words)).toBe('rudder gap; stock');
  expect(failingWords({ failing: ['stock_utilisation', 'rudder_gap', 'port_foot_edge'] }, words)).toBe(
    'port foot edge; rudder gap; stock',
  );
  const five = ['rudder_gap', 'stock_utilisation', 'bolt_utilisation', 'shim_stack', 'bearing_gap'];
  expect(failingWords({ failing: five }, words)).toBe('rudder gap; shim stack; bearing to clamp; and 2 more');
  expect(looseningSentence({ name: 'rudder_gap_min', from: 50, to: 44, mount }, words)).toBe(
    'Least clearance between the two rudders: with 44 mm instead of 50 mm, all limits can be met.',
  );
});
