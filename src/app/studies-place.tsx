import { Slot } from './slot.tsx';
import { STUDIES } from './studies.ts';
import '../views/frame/studies-place.css';

/** The studies of the plan: a line of words, and the one whose word is chosen. */
export function StudiesPlace({ asked }: { readonly asked: string | undefined }) {
  const { study, word, View } = STUDIES.find((it) => it.study === asked) ?? STUDIES[0];
  return (
    <div className="studies">
      <nav className="studies-names" aria-label="Studies">
        {STUDIES.map((it) => (
          <a
            key={it.study}
            className="names-link type-label"
            href={`#/studies/${it.study}`}
            aria-current={it.study === study ? 'page' : undefined}
          >
            {it.word}
          </a>
        ))}
      </nav>
      <h2 className="base-spoken">{word}</h2>
      <Slot key={study} name={word.toLowerCase()}>
        <View />
      </Slot>
    </div>
  );
}
