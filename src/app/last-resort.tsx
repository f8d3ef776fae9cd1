import { Component, type ReactNode } from 'react';
import { Action } from '../views/parts/action.tsx';
import { Plate } from '../views/parts/plate.tsx';

interface Props {
  readonly onSave: () => void;
  readonly children: ReactNode;
}

interface State {
  readonly why: string | undefined;
}

/** What is left when the page itself cannot be shown: why, and the plan as a file. */
export class LastResort extends Component<Props, State> {
  override state: State = { why: undefined };

  static getDerivedStateFromError(error: unknown): State {
    return { why: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { why } = this.state;
    if (why === undefined) return this.props.children;
    return (
      <Plate
        says="The page cannot be shown."
        why={`It stopped: ${why.replace(/\.?$/, '.')} The plan is still here: save it before you load the page again.`}
      >
        <Action onPress={this.props.onSave}>Save the plan as a file</Action>
        <Action onPress={() => window.location.reload()}>Load the page again</Action>
      </Plate>
    );
  }
}
