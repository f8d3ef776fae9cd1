import { backingOf } from '../../session/backing.ts';
import { useLook, usePlan, useSession } from '../use-session.ts';
import { shown } from './show.ts';
import './backing-text.css';

/** The formula of a cell with the numbers put in, and what its functions do and rest on. */
export function BackingText({ formula }: { readonly formula: string }) {
  const session = useSession();
  const plan = usePlan();
  useLook(judgementOf);
  const { pieces, functions } = backingOf(formula, plan, (name) => session.value(name));
  return (
    <div className="backing type-small">
      <p className="backing-formula">
        {pieces.map((piece, at) =>
          piece.kind === 'text' ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of one formula never move
            <span key={at}>{piece.text}</span>
          ) : (
            // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of one formula never move
            <span key={at} className="backing-cell">
              {piece.label}{' '}
              <b>{piece.value === null ? 'no answer' : shown(piece.value, piece.unit, plan.units === 'both' ? 'mm' : plan.units)}</b>
            </span>
          ),
        )}
      </p>
      {functions.map((it) => (
        <p key={it.id} className="base-soft">
          {it.id}: {it.formula}. Source: {it.source}.
        </p>
      ))}
    </div>
  );
}

const judgementOf = (session: { readonly judgement: object }): object => session.judgement;
