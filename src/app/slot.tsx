import { Component, type ReactNode, Suspense } from 'react';
import { Action } from '../views/parts/action.tsx';
import { Attempt } from './attempt.ts';
import { loadFault } from './load-fault.ts';

interface Props {
  readonly name: string;
  /** Shown while the part loads. */
  readonly opening?: ReactNode;
  readonly children: ReactNode;
}

interface State {
  readonly attempt: number;
  readonly why: string | undefined;
}

/** The attempt that parts shown from now on belong to: what failed in an earlier one is loaded again. */
let attempts = 0;

/** Style sheets that a part could not fetch are fetched again; those that came stay. */
function fetchStylesAgain(): void {
  for (const link of document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')) {
    if (link.sheet === null) link.replaceWith(link.cloneNode());
  }
}

/** A place on the page for a part that loads later. Where the part fails, its place says what and why, and offers to try again. */
export class Slot extends Component<Props, State> {
  override state: State = { attempt: attempts, why: undefined };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { why: loadFault(error) };
  }

  readonly #again = (): void => {
    fetchStylesAgain();
    this.setState({ attempt: ++attempts, why: undefined });
  };

  override render(): ReactNode {
    const { name, opening, children } = this.props;
    const { attempt, why } = this.state;
    if (why !== undefined) {
      return (
        <div className="page-stub type-small" role="alert">
          The {name} {why} <Action onPress={this.#again}>Try again</Action>{' '}
          <a href="#/mount">Everything goes on in the form.</a>
        </div>
      );
    }
    const fallback =
      opening === undefined ? <p className="page-stub type-small base-soft">Opening the {name}.</p> : opening;
    return (
      <Attempt value={attempt}>
        <Suspense fallback={fallback}>{children}</Suspense>
      </Attempt>
    );
  }
}
