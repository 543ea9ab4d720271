/** What the page shows of its documents: an edit that stands on its row already follows gently. */
import { startTransition, useCallback, useEffect, useRef, useState } from 'react';
import type { KeeperState } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { afterPicture } from './after-picture.ts';
import type { RowsAhead } from './rows-ahead.ts';

const NOTHING = (): void => undefined;

export const useShownState = (rows: RowsAhead): KeeperState => {
  const keeper = useKeeper();
  const [shown, show] = useState<KeeperState>(keeper.state);
  useEffect(() => {
    let stop = NOTHING;
    const hear = (): void => {
      stop();
      const state = keeper.state();
      const isAnswered = state.phase === 'open' && rows.answer(state);
      if (!isAnswered) show(state);
      else stop = afterPicture(() => startTransition(() => show(keeper.state())));
    };
    // What came before anybody listened.
    hear();
    const leave = keeper.subscribe(hear);
    return () => {
      stop();
      leave();
    };
  }, [keeper, rows]);
  return shown;
};

/** The same call, gently, once what is being drawn stands on the screen; only the last counts. */
export const useGently = <T>(call: (value: T) => void): ((value: T) => void) => {
  const stop = useRef(NOTHING);
  return useCallback(
    (value) => {
      stop.current();
      stop.current = afterPicture(() => startTransition(() => call(value)));
    },
    [call],
  );
};
