import type { StudyState } from './use-study.ts';
import './study-wait.css';

interface Props {
  /** What is being worked out, at the start of a sentence. */
  readonly says: string;
  readonly state: Pick<StudyState<unknown>, 'value' | 'stale' | 'progress' | 'why'>;
}

/** How far a study has come, why there is no answer, or that the answer shown is being worked out again. */
export function StudyWait({ says, state: { value, stale, progress, why } }: Props) {
  if (why !== undefined) {
    return (
      <p className="study-wait type-small" role="status">
        {says} could not be worked out: {why}
      </p>
    );
  }
  if (!stale) return null;
  const count =
    progress === undefined
      ? ''
      : ` ${progress.done.toLocaleString('en-GB')} of ${progress.of.toLocaleString('en-GB')}.`;
  return (
    <p
      className={value === undefined ? 'study-wait type-small' : 'study-wait study-late type-small base-soft'}
    >
      {value === undefined ? 'Being worked out.' : 'Being worked out again.'}
      {count}
    </p>
  );
}
