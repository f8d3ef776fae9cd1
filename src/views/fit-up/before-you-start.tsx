import { beforeYouStart } from '../../fitting/before.ts';
import { useWorkGiven } from './use-work.ts';

/** What an owner asks before the first hole. */
export function BeforeYouStart() {
  const { ask } = useWorkGiven();
  return (
    <>
      <p className="type-lead">
        Holes through a hull, power tools and work over water can hurt people and sink boats. Let a rigger,
        yard or surveyor look before you drill.
      </p>
      {beforeYouStart(ask).map(({ title, text }) => (
        <section key={title} className="fit-up-note" aria-label={title}>
          <h3 className="type-section">{title}</h3>
          <p className="type-text">{text}</p>
        </section>
      ))}
      <p className="type-text">
        No limit covers everything: see <a href="#/not-judged">Not covered</a>.
      </p>
    </>
  );
}
