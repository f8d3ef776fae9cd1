import { NOTES } from './notes.ts';
import { shown, unitOf } from '../parts/show.ts';
import { useLook, usePlan, useSession } from '../use-session.ts';
import './not-judged.css';

const judgementOf = (session: { readonly judgement: object }): object => session.judgement;

/** What the limits do not say, with the numbers that go with it. */
export function NotJudged() {
  const session = useSession();
  const plan = usePlan();
  useLook(judgementOf);
  const figure = (name: string): string => {
    const value = session.value(name);
    return value === null
      ? 'no answer'
      : shown(value, unitOf(name, plan), plan.units === 'both' ? 'mm' : plan.units);
  };
  return (
    <div className="not-judged" data-view="not-judged">
      <h2 className="type-page">Not judged here</h2>
      <p className="type-lead">
        The limits say nothing about what follows. Each of it can still spoil the job or hurt someone.
      </p>
      {NOTES.map(({ title, says }) => (
        <section key={title}>
          <h3 className="type-section">{title}</h3>
          <p className="type-text">{says(figure)}</p>
        </section>
      ))}
    </div>
  );
}
