import type { Answers, QuestionId } from './questions.ts';
import { type Step, stepsOf } from './steps.ts';

/** How far somebody has come in planning an own boat. Texts stay as typed, also where a stand-in was taken instead. */
export interface OwnBoatState {
  readonly answers: Answers;
  readonly typed: ReadonlyMap<string, string>;
  /** Readings left to their stand-in. */
  readonly left: ReadonlySet<string>;
  readonly at: number;
}

export const nothingYet: OwnBoatState = { answers: {}, typed: new Map(), left: new Set(), at: 0 };

/** The step being shown; undefined past the last one. */
export const stepNow = (state: OwnBoatState): Step | undefined => stepsOf(state.answers)[state.at];

const SLOPE = 'transom_rake';
const UPRIGHT = '0';

/** An upright transom has a slope of 0 from the start; leaning after all, it has none yet. */
function slopeFor(lean: string, typed: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const slope = typed.get(SLOPE) ?? '';
  if (lean === 'upright' && slope === '') return new Map(typed).set(SLOPE, UPRIGHT);
  if (lean === 'upright' || slope !== UPRIGHT) return typed;
  const without = new Map(typed);
  without.delete(SLOPE);
  return without;
}

export const withAnswer = (state: OwnBoatState, id: QuestionId, word: string): OwnBoatState => ({
  ...state,
  answers: { ...state.answers, [id]: word },
  typed: id === 'lean' ? slopeFor(word, state.typed) : state.typed,
});

/** Typing takes a reading back from its stand-in. */
export function withTyped(state: OwnBoatState, name: string, text: string): OwnBoatState {
  const left = new Set(state.left);
  left.delete(name);
  return { ...state, typed: new Map(state.typed).set(name, text), left };
}

export const leftToStandIn = (state: OwnBoatState, name: string): OwnBoatState => ({
  ...state,
  left: new Set(state.left).add(name),
});

export const forward = (state: OwnBoatState): OwnBoatState => ({ ...state, at: state.at + 1 });

export const back = (state: OwnBoatState): OwnBoatState => ({ ...state, at: Math.max(0, state.at - 1) });
