import type { Question } from '../../session/own-boat/questions.ts';

interface Props {
  readonly question: Question;
  /** The answer given before. */
  readonly given: string | undefined;
  readonly onAnswer: (word: string) => void;
}

/** A question whose answers are as many rows: a tap answers and goes on. */
export const QuestionStep = ({ question, given, onAnswer }: Props) => (
  <>
    <p>{question.help}</p>
    <ul className="own-boat-answers" data-question={question.id}>
      {question.answers.map(({ word, label, means }) => (
        <li key={word}>
          <button
            type="button"
            className="own-boat-answer"
            data-answer={word}
            aria-pressed={given === word}
            onClick={() => onAnswer(word)}
          >
            <span className="own-boat-word">{label}</span>
            <span className="type-small base-soft">{means}</span>
          </button>
        </li>
      ))}
    </ul>
  </>
);
