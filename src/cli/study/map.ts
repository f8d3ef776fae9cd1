import { axisOf } from '../../session/studies/map-axis.ts';
import { studyWords } from '../../session/study-words.ts';
import { mapSentence } from '../../studies/map/map-words.ts';
import { Refused } from '../exit.ts';
import type { Kind } from './kind.ts';

/** Values along each side: as on the page, fewest, most. */
const [FINENESS, FEWEST, MOST] = [101, 2, 401];

export const map: Kind<'map'> = {
  study: 'map',
  options: ['across', 'up', 'result', 'fineness'],
  ask(given) {
    const [x, y] = [given.input('across'), given.input('up')];
    if (x === y) throw new Refused(`--across and --up both name ${x.name}; a map needs two inputs.`);
    return {
      scenario: given.scenario,
      x: axisOf(x, given.workbook.answer(x.name).value),
      y: axisOf(y, given.workbook.answer(y.name).value),
      results: given.results([]),
      fineness: given.number('fineness', FEWEST, MOST, true) ?? FINENESS,
    };
  },
  says: (mapped, { plan }) => [mapSentence(mapped, studyWords(plan))],
};
