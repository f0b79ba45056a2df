import { Component, type ComponentChildren } from 'preact';
import { LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';

interface Props {
  /** The address on show: another one is another try. */
  at: string;
  children: ComponentChildren;
}

/** A figure that one screen cannot bear would leave a white page, and with it nowhere to press. */
export class ScreenFault extends Component<Props, { fault?: Error | undefined; at?: string | undefined }> {
  override componentDidCatch(fault: Error): void {
    console.error(fault);
    this.setState({ fault, at: this.props.at });
  }

  override componentDidUpdate({ at }: Props): void {
    if (this.state.fault && at !== this.props.at) this.setState({ fault: undefined, at: undefined });
  }

  override render({ at, children }: Props) {
    const { fault, at: failedAt } = this.state;
    if (!fault || failedAt !== at) return children;
    return (
      <Screen title="This screen cannot be shown" actions={<LinkButton to="/">To the bench</LinkButton>}>
        <p>
          Something it needs is not as it should be. What was written down is kept, and the other screens go
          on. To tell of it: {fault.message}
        </p>
      </Screen>
    );
  }
}
