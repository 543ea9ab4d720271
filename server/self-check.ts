/**
 * The self-check of this server: begun at its start, one case between requests, kept in memory.
 * A restart runs it again, and a report of another build is never shown.
 */
import { localMoment } from '#print';
import {
  CASES,
  type Installation,
  type SelfCheckRecord,
  type SelfCheckState,
  selfCheckSteps,
  type ValidationCase,
} from '#selfcheck';

export type SelfCheck = {
  /** How far it is, and then what it found. */
  readonly record: () => SelfCheckRecord;
  /** Resolves when the last case is run, or when it is stopped. */
  readonly ended: Promise<void>;
  readonly stop: () => void;
};

type Parts = {
  readonly installation: Installation;
  readonly now: () => Date;
  readonly cases?: readonly ValidationCase[];
};

export const startSelfCheck = ({ installation, now, cases = CASES }: Parts): SelfCheck => {
  const steps = selfCheckSteps(cases);
  let state: SelfCheckState = { is: 'running', done: 0, total: cases.length };
  let isStopped = false;
  const ended = new Promise<void>((resolve) => {
    const next = (): void => {
      if (isStopped) {
        resolve();
        return;
      }
      const step = steps.next();
      if (step.done === true) {
        state = { is: 'done', at: localMoment(now()), report: step.value };
        resolve();
        return;
      }
      state = { is: 'running', ...step.value };
      setImmediate(next);
    };
    setImmediate(next);
  });
  return {
    record: () => ({ installation, state }),
    ended,
    stop: () => {
      isStopped = true;
    },
  };
};
