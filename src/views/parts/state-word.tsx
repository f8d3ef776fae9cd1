import type { State } from '../../calc/limits/judge.ts';
import './state-word.css';

const CLASS: Readonly<Record<State, string>> = {
  inside: 'state state-inside',
  near: 'state state-near',
  outside: 'state state-outside',
  'no answer': 'state state-none',
  'does not apply': 'state state-inside',
};

/** How a result stands to its limit, in a word whose form says it too. */
export const StateWord = ({ state }: { readonly state: State }) => (
  <span className={CLASS[state]}>{state}</span>
);
