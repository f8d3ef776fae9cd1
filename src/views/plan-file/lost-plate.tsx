import { Action } from '../parts/action.tsx';
import './lost-plate.css';

interface Props {
  /** Why the plan is not kept, as sentences. */
  readonly why: string;
  readonly onSave: () => void;
  /** Present when another window stands in the way. */
  readonly onTakeOver?: () => void;
}

/** Stands above the title block when the plan is not kept: why, and the door out. */
export const LostPlate = ({ why, onSave, onTakeOver }: Props) => (
  <div className="lost-plate base-on-ink" role="alert">
    <p className="type-small">
      <strong>Not kept.</strong> {why}
    </p>
    <span className="lost-plate-doors">
      <Action onPress={onSave}>Save it as a file now</Action>
      {onTakeOver !== undefined && <Action onPress={onTakeOver}>Keep it from this window</Action>}
    </span>
  </div>
);
