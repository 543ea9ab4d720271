/**
 * Stopping. Ctrl-C in a terminal reaches every program of its group, our child included, so it
 * only has to be waited for; passed on as well, it would hit a server twice while it closes its
 * database. A signal sent to us alone is passed on, so that no child is left behind.
 */
import type { ChildProcess } from 'node:child_process';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

let stopped = false;

/** Whether we were told to stop: a command of several steps does not begin another. */
export const wasStopped = (): boolean => stopped;

/** Until the answer is called, signals go to the child. */
export const passSignalsTo = (child: ChildProcess): (() => void) => {
  const hands = SIGNALS.map((signal) => {
    const hand = (): void => {
      stopped = true;
      const sentByTerminal = signal === 'SIGINT' && process.stdin.isTTY === true;
      if (!sentByTerminal) child.kill(signal);
    };
    process.on(signal, hand);
    return { signal, hand };
  });
  return () => {
    for (const { signal, hand } of hands) process.off(signal, hand);
  };
};
