import { type Copy, copyWords } from '../../session/plan-file/copies.ts';
import { Action } from '../parts/action.tsx';
import { usePlan } from '../use-session.ts';

interface Props {
  readonly copy: Copy | undefined;
  readonly onSave: () => void;
}

/** Saves the plan as a file, and says that a copy was saved. */
export const SaveFile = ({ copy, onSave }: Props) => {
  const plan = usePlan();
  return (
    <section className="plan-file-part">
      <h3 className="type-section">Save as a file</h3>
      <p className="type-small" role="status">
        {copyWords(copy, plan)}
      </p>
      <Action plate onPress={onSave}>
        Save as a file
      </Action>
    </section>
  );
};
