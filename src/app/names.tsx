import type { Place } from './route.ts';
import { hasGrid } from './slots.tsx';

const PAGES: readonly (readonly [Place, string])[] = [
  ['survey', 'Survey'],
  ['boat', 'Boat'],
  ['gear', 'Gear'],
  ['mount', 'Mount'],
  ['checks', 'Checks'],
  ['loads', 'Loads'],
  ['parts', 'Parts'],
  ['fit-up', 'Fit-up'],
  ['own-cells', 'Own cells'],
];

const DOORS: readonly (readonly [Place, string])[] = [
  ['own-boat', 'Plan my own boat'],
  ...(hasGrid ? ([['workbook', 'Workbook']] as const) : []),
  ['studies', 'Studies'],
  ['scenarios', 'Scenarios'],
  ['plan', 'Plan'],
  ['paper', 'Paper'],
];

const BAR: readonly (readonly [Place, string, readonly Place[]])[] = [
  ['boat', 'Readings', ['survey', 'boat', 'gear']],
  ['mount', 'Choices', ['mount']],
  ['drawing', 'Drawing', ['drawing']],
  ['board', 'Board', ['board']],
];

const Word = ({ to, word, here }: { to: Place; word: string; here: boolean }) => (
  <a className="names-link type-label" href={`#/${to}`} aria-current={here ? 'page' : undefined}>
    {word}
  </a>
);

const READINGS: readonly Place[] = ['survey', 'boat', 'gear'];

interface Props {
  readonly place: Place;
  /** Every name; else only those the four words at the foot do not lead to. */
  readonly all: boolean;
}

/** The pages' names in one line of words; the present one heavier, with a rule under it. */
export function Names({ place, all }: Props) {
  if (!all && (place === 'mount' || place === 'drawing')) return null;
  const isReadings = READINGS.includes(place);
  const pages = all ? PAGES : PAGES.filter(([to]) => isReadings === READINGS.includes(to) && to !== 'mount');
  const doors = all || !isReadings ? DOORS : [];
  return (
    <nav className="names" aria-label="Pages">
      {pages.map(([to, word]) => (
        <Word key={to} to={to} word={word} here={to === place} />
      ))}
      {doors.length > 0 && (
        <span className="names-doors">
          {doors.map(([to, word]) => (
            <Word key={to} to={to} word={word} here={to === place} />
          ))}
        </span>
      )}
    </nav>
  );
}

/** The phone's four words. */
export const Bar = ({ place }: { readonly place: Place }) => (
  <nav className="page-bar" aria-label="Readings, choices, drawing, board">
    {BAR.map(([to, word, places]) => (
      <a
        key={to}
        className="page-bar-item type-label"
        href={`#/${to}`}
        aria-current={places.includes(place) ? 'page' : undefined}
      >
        {word}
      </a>
    ))}
  </nav>
);
