import { NOTES, type Piece } from '../../session/not-judged/notes.ts';
import type { Session } from '../../session/session.ts';
import { cellHref } from '../parts/cell-href.ts';
import { bareUnit } from '../parts/length-style.ts';
import { shown, unitOf } from '../parts/show.ts';
import { useUnits } from '../parts/use-units.ts';
import { useLook, useSession } from '../use-session.ts';
import './not-judged.css';

const judgementOf = (session: Session): object => session.judgement;

/** What the limits do not say, with the numbers that go with it. */
export function NotJudged() {
  useLook(judgementOf);
  return (
    <div className="not-judged" data-view="not-judged">
      <h2 className="type-page">Not covered</h2>
      <p className="type-lead">
        The limits say nothing about what follows. Any of it can spoil the job or hurt someone.
      </p>
      {NOTES.map(({ title, pieces }) => (
        <section key={title} className="not-judged-note" aria-label={title}>
          <h3 className="type-section">{title}</h3>
          <p className="type-text">
            {pieces.map((piece, at) => (
              <NotePiece key={at} piece={piece} />
            ))}
          </p>
        </section>
      ))}
    </div>
  );
}

function NotePiece({ piece }: { readonly piece: Piece }) {
  const session = useSession();
  const unit = bareUnit(useUnits());
  if (typeof piece === 'string') return piece;
  if ('works' in piece) return piece.works((name) => session.value(name));
  const value = session.value(piece.cell);
  return (
    <a href={cellHref(piece.cell)}>
      {value === null ? 'no answer' : shown(value, unitOf(piece.cell, session.plan), unit)}
    </a>
  );
}
