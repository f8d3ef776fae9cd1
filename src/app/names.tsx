import type { Place } from './route.ts';

const PAGES: readonly (readonly [Place, string])[] = [
  ['boat', 'Boat'],
  ['gear', 'Gear'],
  ['mount', 'Mount'],
  ['checks', 'Checks'],
  ['loads', 'Loads'],
  ['parts', 'Parts'],
  ['own-cells', 'Own cells'],
];

const DOORS: readonly (readonly [Place, string])[] = [
  ['workbook', 'Workbook'],
  ['scenarios', 'Scenarios'],
  ['plan', 'Plan'],
];

const BAR: readonly (readonly [Place, string, readonly Place[]])[] = [
  ['boat', 'Readings', ['boat', 'gear']],
  ['mount', 'Choices', ['mount']],
  ['drawing', 'Drawing', ['drawing']],
  ['board', 'Board', ['board']],
];

const Word = ({ to, word, here, apart }: { to: Place; word: string; here: boolean; apart?: boolean }) => (
  <a
    className={`names-link type-label ${apart === true ? 'names-apart' : ''}`}
    href={`#/${to}`}
    aria-current={here ? 'page' : undefined}
  >
    {word}
  </a>
);

/** The pages' names in one line of words; the present one heavier, with a rule under it. */
export const Names = ({ place }: { readonly place: Place }) => (
  <nav className="names" aria-label="Pages">
    <h1 className="names-brand type-section">Sternmount</h1>
    {PAGES.map(([to, word]) => (
      <Word key={to} to={to} word={word} here={to === place} />
    ))}
    {DOORS.map(([to, word], at) => (
      <span key={to} className={at === 0 ? 'names-apart names-wide' : ''}>
        <Word to={to} word={word} here={to === place} />
      </span>
    ))}
  </nav>
);

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
