import { Action } from '../parts/action.tsx';

/** Whether what is shown is also stored. */
export type KeepShown =
  | { readonly state: 'keeping' }
  /** Milliseconds since 1970. */
  | { readonly state: 'kept'; readonly when: number }
  | {
      readonly state: 'not kept';
      readonly why: string;
      /** Another window stands in the way. */
      readonly elsewhere?: true;
    };

interface Props {
  readonly keep: KeepShown | undefined;
  readonly onTakeOver: (() => void) | undefined;
  readonly onSave: () => void;
}

const clock = (when: number): string =>
  new Date(when).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });

/** Kept, being kept or not kept, with where, when and why. */
export function KeepNow({ keep, onTakeOver, onSave }: Props) {
  if (keep?.state === 'not kept') {
    return (
      <div className="plan-file-kept plan-file-lost">
        <p>
          <strong>Not kept:</strong> {keep.why}
        </p>
        <Action onPress={onSave}>Save it as a file now</Action>
        {keep.elsewhere === true && onTakeOver !== undefined && (
          <Action onPress={onTakeOver}>Keep it from this window</Action>
        )}
      </div>
    );
  }
  return (
    <div className="plan-file-kept">
      <p>
        {keep === undefined && 'The plan is being opened.'}
        {keep?.state === 'keeping' && 'Being kept in this browser.'}
        {keep?.state === 'kept' && `Kept in this browser, ${clock(keep.when)}.`}
      </p>
      <p className="type-small base-soft">
        It is in this browser alone: whoever clears its data clears the plan. A file is your second copy.
      </p>
    </div>
  );
}
