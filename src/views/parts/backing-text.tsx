import { type BackingPiece, backingOf } from '../../session/backing.ts';
import type { Session } from '../../session/session.ts';
import { useLook, useSession } from '../use-session.ts';
import { cellHref } from './cell-href.ts';
import { bareUnit } from './length-style.ts';
import { shown } from './show.ts';
import { useUnits } from './use-units.ts';
import './backing-text.css';

const judgementOf = (session: Session): object => session.judgement;

const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\*/g, '×'],
  [/(^|\s)-(\s|$)/g, '$1−$2'],
  [/<>/g, 'is not'],
  [/<=/g, 'is at most'],
  [/>=/g, 'is at least'],
];

const read = (text: string): string => SIGNS.reduce((now, [sign, words]) => now.replace(sign, words), text);

type CellPiece = Extract<BackingPiece, { kind: 'cell' }>;

const isCell = (piece: BackingPiece): piece is CellPiece => piece.kind === 'cell';

const onceEach = (pieces: readonly BackingPiece[]) => [
  ...new Map(pieces.filter(isCell).map((piece) => [piece.name, piece])).values(),
];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

interface Props {
  readonly formula: string;
  /** The result's value, to close the sentence. */
  readonly result?: string | undefined;
}

/** What stands behind one number: its formula as a sentence with the numbers put in, and the sources it rests on. */
export function BackingText({ formula, result }: Props) {
  const session = useSession();
  const units = useUnits();
  useLook(judgementOf);
  const { pieces, functions } = backingOf(formula, session.plan, (name) => session.value(name));
  const givenOf = (piece: CellPiece): string =>
    piece.value === null ? 'no answer' : shown(piece.value, piece.unit, bareUnit(units));
  return (
    <div className="backing type-small">
      {functions.length === 0 ? (
        <p>
          {pieces.map((piece, at) =>
            isCell(piece) ? (
              <span key={at}>
                <a href={cellHref(piece.name)}>{piece.label}</a> <b>{givenOf(piece)}</b>
              </span>
            ) : (
              <span key={at}>{read(piece.text)}</span>
            ),
          )}
          {result !== undefined && (
            <>
              {' '}
              = <b>{result}</b>
            </>
          )}
        </p>
      ) : (
        <>
          {functions.map((it) => (
            <p key={it.id}>
              {capital(it.formula)}. <span className="base-soft">Source: {it.source}.</span>
            </p>
          ))}
          <dl className="backing-given">
            {onceEach(pieces).map((piece) => (
              <div key={piece.name}>
                <dt>
                  <a href={cellHref(piece.name)}>{piece.label}</a>
                </dt>
                <dd>{givenOf(piece)}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      <p className="backing-formula base-soft">{formula}</p>
    </div>
  );
}
