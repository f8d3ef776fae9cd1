import { Component, type ReactNode, Suspense } from 'react';

interface Props {
  readonly name: string;
  /** Shown while the part loads. */
  readonly opening?: ReactNode;
  readonly children: ReactNode;
}

interface State {
  readonly why: string | undefined;
}

/** A place on the page for a part that loads later. Where the part fails, its place says what and why. */
export class Slot extends Component<Props, State> {
  override state: State = { why: undefined };

  static getDerivedStateFromError(error: unknown): State {
    return { why: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { name, opening, children } = this.props;
    const { why } = this.state;
    if (why !== undefined) {
      return (
        <p className="page-stub type-small" role="alert">
          The {name} could not be shown: {why} <a href="#/mount">Everything goes on in the form.</a>
        </p>
      );
    }
    const fallback =
      opening === undefined ? <p className="page-stub type-small base-soft">Opening the {name}.</p> : opening;
    return <Suspense fallback={fallback}>{children}</Suspense>;
  }
}
