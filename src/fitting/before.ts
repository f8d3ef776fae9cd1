import { type Ask, numberOf } from '../order/ask.ts';
import { feetInUse } from '../order/feet.ts';

export interface Question {
  readonly title: string;
  /** Words that an owner may look for it by, beside those that stand in it. */
  readonly asked?: string;
  readonly text: string;
}

/** What an owner asks before the first hole. Hours and tools are common practice, no source. */
export function beforeYouStart(ask: Ask): readonly Question[] {
  const bolts = numberOf(ask, 'hull_bolt_count');
  const diameter = numberOf(ask, 'bolt_diameter');
  const feet = feetInUse(ask).length;
  return [
    {
      title: 'Manual and workbook disagree',
      text: 'The gear’s manual wins. Then the yard, the surveyor, and the rules that apply where the boat is used.',
    },
    {
      title: 'Hands and hours',
      asked: 'how long time helper crew tools',
      text: `Two people, one of them inside, and a third for an hour while the shaft is held${feet === 1 ? ' on its one strut' : ''}. Two days of work: one to mark, drill and try, one to bed and tighten; between them the epoxy hardens and the sealant cures, as long as their makers give. Common practice, no source; a first mount takes longer.`,
    },
    {
      title: 'Tools',
      text: `Drill, a pilot bit and one for ${diameter === undefined ? 'the bolts' : `M${diameter}`}, countersink, saw with a guide, file, two spanners (wrenches), torque wrench, plumb bob, level, two tapes, square, transfer punch, lamp and mirror, clamps, light line, two lines for the shaft and the bracket, drop cloth, vacuum cleaner, strong tape, rags. Eye protection, gloves, a line on everything that can fall.`,
    },
    {
      title: 'Can the nuts be reached',
      text: `Try it now: ${bolts === undefined ? 'at every place' : `at all ${bolts} places`}, put a hand with a spanner where the nut will be, and somebody’s eye where the hand is. A locker, stringer, tank or wiring there moves the bracket in the plan, not the hole on the day.`,
    },
    {
      title: 'When to stop',
      text: 'At every stop point whose reading is not met; when dust comes out wet or dark, or a core where you planned none; when a hole meets something; when wind, wash or light no longer let you read a bob; when one of you is tired. Tape over every open hole. A boat with a taped pilot hole keeps out water; a boat with a wrong hole does not.',
    },
    {
      title: 'Loaded or light',
      text: 'Heights count from the waterline of the boat loaded as it sails. Use the mark you made then, not the water of the day. Ashore, the mark is all you have: make it before lifting out.',
    },
    {
      title: 'Is 0.9 bad',
      asked: 'utilisation near enough margin',
      text: '0.9 means that 90 % of the part’s strength is used, after the factors you chose. The limit is met, with little in hand for a reading that was wrong or a harder sea. See which reading moves it most before you accept it.',
    },
    {
      title: 'If the boat touches bottom',
      asked: 'run aground grounding rock sand keel',
      text: 'The auxiliary rudder may touch first. Know how its blade breaks away or lifts, and lift it in shoal water; nothing here covers a blow from below.',
    },
  ];
}
