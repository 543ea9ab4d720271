/** A wrong number that goes on is worse than a screen that says it stopped. */
import { Component, type ReactNode } from 'react';
import { Notice } from './notice.tsx';

type Props = { readonly children: ReactNode };
type State = { readonly fault: Error | null };

/** A part of the program that was replaced on the server while this page stood open. */
const isMissingPart = ({ message }: Error): boolean => /import|module|fetch/i.test(message);

export class Defect extends Component<Props, State> {
  override state: State = { fault: null };

  static getDerivedStateFromError(fault: unknown): State {
    return { fault: fault instanceof Error ? fault : new Error(String(fault)) };
  }

  override render(): ReactNode {
    const { fault } = this.state;
    if (fault === null) return this.props.children;
    const title = isMissingPart(fault)
      ? 'this screen could not be fetched'
      : 'this screen stopped: a fault of the program';
    return (
      <Notice degree="caution" title={title} isNews>
        <p>
          Nothing of the documents was changed; edits not yet saved are on this device. Work from
          the last printed sheets until it is mended.
        </p>
        <p className="code">{fault.message}</p>
        <p className="buttons">
          <button type="button" onClick={() => location.reload()}>
            Open it again
          </button>
        </p>
      </Notice>
    );
  }
}
