import { useId, useLayoutEffect, useRef, useSyncExternalStore } from 'react';
import { questionWords } from '../../session/unit-question/question-words.ts';
import { type UnitQuestion, unitQuestionsOf } from '../../session/unit-question/unit-questions.ts';
import { useSession } from '../use-session.ts';
import { Action } from './action.tsx';
import './unit-plate.css';

/** Asks which unit a length was meant in, over whatever page it was typed on. */
export function UnitPlate() {
  const questions = unitQuestionsOf(useSession());
  const question = useSyncExternalStore(questions.subscribe, questions.now);
  return question === undefined ? null : <Plate question={question} />;
}

function Plate({ question }: { readonly question: UnitQuestion }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  const { title, says, choices } = questionWords(question);
  /** The field that gets the focus back reads what was put in, so it is put in before. */
  const close = (then: () => void): void => {
    then();
    dialog.current?.close();
  };
  useLayoutEffect(() => {
    const element = dialog.current;
    if (element === null) return;
    // What is pressed here is for no table or page behind it.
    const keep = (event: Event): void => event.stopPropagation();
    for (const kind of ['keydown', 'mousedown']) element.addEventListener(kind, keep);
    // A field that is just being left has handed its focus on by then, and the next one gets it back.
    const timer = setTimeout(() => element.showModal());
    return () => {
      clearTimeout(timer);
      element.close();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className="unit-plate"
      aria-labelledby={`${id}title`}
      aria-describedby={`${id}says`}
      data-view="unit-question"
      onCancel={(event) => {
        event.preventDefault();
        close(question.leave);
      }}
    >
      <h2 className="type-section" id={`${id}title`}>
        {title}
      </h2>
      <p id={`${id}says`}>{says}</p>
      <div className="unit-plate-choices">
        {choices.map(({ unit, words }, at) => (
          <Action key={unit} plate={at === 0} onPress={() => close(() => question.answer(unit))}>
            {words}
          </Action>
        ))}
        <Action onPress={() => close(question.leave)}>Leave it as it was</Action>
      </div>
    </dialog>
  );
}
