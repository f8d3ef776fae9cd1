import { joinPiece } from '../../units/piece.ts';
import './refused.css';

interface Props {
  readonly id: string;
  readonly why: string;
  /** The value still in use; '' when there is none. */
  readonly figure: string;
  readonly unit: string;
  readonly onDrop?: () => void;
}

/** Why a value was refused, and which one is still in use. */
export function Refused({ id, why, figure, unit, onDrop }: Props) {
  const still =
    figure === ''
      ? 'The field is still empty.'
      : `The last good value, ${joinPiece({ figure, unit })}, is still in use.`;
  return (
    <p className="refused type-small" id={id} role="alert">
      {why} {still}
      {onDrop !== undefined && (
        <>
          {' '}
          <button className="base-plain-button" type="button" onClick={onDrop}>
            Drop what was typed
          </button>
        </>
      )}
    </p>
  );
}
