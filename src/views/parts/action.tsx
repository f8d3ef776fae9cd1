import type { ReactNode } from 'react';
import { Icon, type IconName } from './icon.tsx';
import './action.css';

interface Props {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  /** Sends the form it stands in, as Enter in a field does. */
  readonly submits?: boolean;
  /** The one thing to do next on this screen. */
  readonly plate?: boolean;
  readonly icon?: IconName;
  readonly disabled?: boolean;
  /** What a screen reader says instead of the words alone, such as the name of what would be deleted. */
  readonly says?: string;
  readonly expanded?: boolean;
  /** Leaves the focus where it is when pressed with a pointer. */
  readonly leavesFocus?: boolean;
  /** Takes the focus when it appears. */
  readonly focused?: boolean;
}

/** Something to do, as words; the next thing to do as an ink plate. */
export const Action = ({
  children,
  onPress,
  submits = false,
  plate = false,
  icon,
  disabled = false,
  says,
  expanded,
  leavesFocus = false,
  focused,
}: Props) => (
  <button
    className={plate ? 'action action-plate base-on-ink' : 'action'}
    type={submits ? 'submit' : 'button'}
    disabled={disabled}
    aria-label={says}
    aria-expanded={expanded}
    // biome-ignore lint/a11y/noAutofocus: only where what had the focus is gone
    autoFocus={focused}
    onMouseDown={leavesFocus ? (event) => event.preventDefault() : undefined}
    onClick={onPress}
  >
    {icon !== undefined && <Icon name={icon} />}
    <span className="action-word">{children}</span>
  </button>
);
