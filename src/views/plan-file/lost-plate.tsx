import { Action } from '../parts/action.tsx';
import { Plate } from '../parts/plate.tsx';

interface Props {
  /** Why the plan is not kept, as sentences. */
  readonly why: string;
  readonly onSave: () => void;
  /** Present when another window stands in the way. */
  readonly onTakeOver?: () => void;
}

/** Says that the plan is not kept, and why. */
export const LostPlate = ({ why, onSave, onTakeOver }: Props) => (
  <Plate says="Not kept." why={why}>
    <Action onPress={onSave}>Save it as a file now</Action>
    {onTakeOver !== undefined && <Action onPress={onTakeOver}>Keep it from this window</Action>}
  </Plate>
);
