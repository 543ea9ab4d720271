/**
 * Two self-checks: of this browser, which works out the screens, and of the server, which makes the
 * prints. The one is run here in idle time, the other is asked for.
 */
import type { Installation, SelfCheckRecord, selfCheckSteps } from '#selfcheck';

export type Checks = {
  readonly browser: SelfCheckRecord;
  /** Null until the server has answered. */
  readonly server: SelfCheckRecord | null;
};

type Steps = ReturnType<typeof selfCheckSteps>;

export type WatchParts = {
  readonly installation: Installation;
  /** The cases are fetched apart from the screens, which do not wait for them. */
  readonly steps: () => Promise<Steps>;
  /** Rejects when the server is not reached. */
  readonly askServer: () => Promise<SelfCheckRecord>;
  /** Calls when nothing else is to be done; what is called goes on while there is time. */
  readonly whenIdle: (call: (hasTime: () => boolean) => void) => void;
  readonly later: (call: () => void, milliseconds: number) => void;
  readonly now: () => Date;
};

/** While the server still runs its own. */
const SOON_MS = 1000;
/** A server that was started again may be another build. */
const SELDOM_MS = 60_000;

export type Watch = {
  readonly checks: () => Checks;
  readonly subscribe: (hear: () => void) => () => void;
  readonly start: () => void;
};

export const watchChecks = (parts: WatchParts): Watch => {
  const hearers = new Set<() => void>();
  let checks: Checks = {
    browser: { installation: parts.installation, state: { is: 'notRun' } },
    server: null,
  };
  const set = (next: Partial<Checks>): void => {
    checks = { ...checks, ...next };
    for (const hear of hearers) hear();
  };
  const setBrowser = (state: SelfCheckRecord['state']): void =>
    set({ browser: { installation: parts.installation, state } });

  /** One case at least, so that it comes to an end on a busy page too. */
  const run = (steps: Steps, hasTime: () => boolean): void => {
    let step = steps.next();
    while (step.done !== true && hasTime()) step = steps.next();
    if (step.done === true) {
      setBrowser({ is: 'done', at: parts.now().toISOString(), report: step.value });
      return;
    }
    setBrowser({ is: 'running', ...step.value });
    parts.whenIdle((hasMore) => run(steps, hasMore));
  };
  const ask = async (): Promise<void> => {
    const server = await parts.askServer().catch(() => null);
    // What it found stands while it is not reached: its prints were made by it.
    if (server !== null) set({ server });
    const isRunning = server !== null && server.state.is === 'running';
    parts.later(() => void ask(), isRunning ? SOON_MS : SELDOM_MS);
  };
  let isStarted = false;
  return {
    checks: () => checks,
    subscribe: (hear) => {
      hearers.add(hear);
      return () => void hearers.delete(hear);
    },
    start: () => {
      if (isStarted) return;
      isStarted = true;
      void ask();
      // Not fetched is not run: it is said so, and no screen fails for it.
      parts.steps().then(
        (steps) => parts.whenIdle((hasTime) => run(steps, hasTime)),
        () => undefined,
      );
    },
  };
};
