import { type Answers, QUESTIONS } from '../../session/own-boat/questions.ts';

interface Props {
  readonly lean: Answers['lean'];
  readonly onLean: (lean: string) => void;
}

const lean = QUESTIONS.find((it) => it.id === 'lean');

/** Which way the transom leans, as answered before; it gives the slope its sign, and can be mended here. */
export const LeanPick = ({ lean: given, onLean }: Props) => (
  <fieldset className="own-boat-lean">
    <legend className="type-small base-soft">It leans</legend>
    {lean?.answers.map(({ word, label }) => (
      <button
        key={word}
        type="button"
        className="own-boat-way type-label"
        aria-pressed={given === word}
        onClick={() => onLean(word)}
      >
        {label}
      </button>
    ))}
  </fieldset>
);
