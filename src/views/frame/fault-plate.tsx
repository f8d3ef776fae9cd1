import { Action } from '../parts/action.tsx';
import { Plate } from '../parts/plate.tsx';
import { useLook } from '../use-session.ts';

interface Props {
  readonly onSave: () => void;
}

/** Says that nothing is worked out any more, why, and what can be done; nothing while all is well. */
export function FaultPlate({ onSave }: Props) {
  const fault = useLook((session) => session.fault);
  if (fault === undefined) return null;
  return (
    <Plate
      says="Nothing is being worked out."
      why={`${fault.why} No number that it gave is shown any more. What you typed is in the plan.`}
    >
      <Action onPress={fault.again}>Try again</Action>
      <Action onPress={onSave}>Save the plan as a file</Action>
    </Plate>
  );
}
