import { driversAsk } from '../../session/studies/asks.ts';
import { driverWords } from '../../session/studies/driver-words.ts';
import { leftOutSentence } from '../../session/studies/left-out.ts';
import { errorsAmong } from '../../studies/drivers/varied.ts';
import { againSentence, moverSentence, shareSentence, soonestSentence } from '../../studies/drivers/words.ts';
import { lawsSentence } from '../../studies/uncertain/laws.ts';
import type { Kind } from './kind.ts';
import { withShare } from './share.ts';

export const drivers: Kind<'drivers'> = {
  study: 'drivers',
  options: ['limit', 'share'],
  ask: (given) =>
    driversAsk(given.plan, given.scenario, given.limits([given.worst().limit]), withShare(given)),
  says({ limits }, { plan, scenario }, ask) {
    const words = driverWords(plan);
    const said = limits
      .filter((it) => ask.limits.includes(it.limit))
      .flatMap((it) => [
        moverSentence(it, words),
        soonestSentence(it, words),
        shareSentence(it, words),
        againSentence(it, words) ?? '',
      ]);
    const laws = lawsSentence(errorsAmong(ask.inputs), words);
    return [...said, laws, leftOutSentence(plan, scenario)].filter((it) => it !== '');
  },
};
