import { measuredFirst } from '../../session/nothing-read.ts';
import { cellHref } from '../parts/cell-href.ts';
import { pointAt } from '../parts/pointed.ts';

const lowered = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

/** The lead of a plan in which nothing is read yet: the first reading to take, and where the others are taken. */
export function FirstReadings() {
  const [first] = measuredFirst;
  if (first === undefined) return null;
  return (
    <>
      <p className="type-lead">
        Nothing is read yet; every value is a stand-in. Begin with the{' '}
        <a href={cellHref(first.name)}>{lowered(first.label)}</a>.
      </p>
      <p className="type-small">
        <a href="#/own-boat">Plan my own boat</a> asks for these one at a time, numbered as in the drawing.
      </p>
      <ol className="lead-readings type-small">
        {measuredFirst.map(({ name, label }) => (
          <li key={name} onPointerEnter={() => pointAt(name)} onPointerLeave={() => pointAt(undefined)}>
            <a href={cellHref(name)}>{label}</a>
          </li>
        ))}
      </ol>
    </>
  );
}
