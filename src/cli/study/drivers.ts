import { driversAsk } from '../../session/studies/asks.ts';
import { driverWords } from '../../session/studies/driver-words.ts';
import { againSentence, moverSentence, shareSentence, soonestSentence } from '../../studies/drivers/words.ts';
import type { Kind } from './kind.ts';
import { withShare } from './share.ts';

export const drivers: Kind<'drivers'> = {
  study: 'drivers',
  options: ['limit', 'share'],
  ask: (given) =>
    driversAsk(given.plan, given.scenario, given.limits([given.worst().limit]), withShare(given)),
  says({ limits }, { plan }, ask) {
    const words = driverWords(plan);
    return limits
      .filter((it) => ask.limits.includes(it.limit))
      .flatMap((it) => [
        moverSentence(it, words),
        soonestSentence(it, words),
        shareSentence(it, words),
        againSentence(it, words) ?? '',
      ])
      .filter((it) => it !== '');
  },
};
