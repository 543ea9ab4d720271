/** What is not recorded carries a hatched frame with its word on it, on every screen and print. */

import { type ReactNode, useEffect } from 'react';
import { useTell } from '../language/use-tell.ts';

type FrameProps = {
  readonly isDemo: boolean;
  /** What is shown, for the tab of the browser. */
  readonly title: string;
  readonly children: ReactNode;
};

export const Frame = ({ isDemo, title, children }: FrameProps) => {
  const tell = useTell();
  useEffect(() => {
    document.title = `${title}${isDemo ? ', DEMO' : ''} – Counterpoise`;
  }, [isDemo, title]);
  return (
    <>
      {isDemo ? (
        <div className="demo-frame">
          <p>{tell('DEMO: an invented house and show')}</p>
        </div>
      ) : null}
      <div className={isDemo ? 'page framed' : 'page'}>{children}</div>
    </>
  );
};
