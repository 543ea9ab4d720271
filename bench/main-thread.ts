/** How long the main thread of a page works after an input, from the browser's own trace. */
import type { Page } from 'playwright-core';

type TraceEvent = {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** µs */
  readonly ts: number;
  /** µs */
  readonly dur?: number;
  readonly args?: { readonly name?: string };
};

/** The least that tells tasks from idle time: what is traced more closely is slowed by it. */
const CATEGORIES = ['toplevel', 'blink.user_timing'];
const MARK = 'edit ends';

export type Work = {
  readonly allMs: number;
  /** The longest task: as long as that the page answers to no hand. */
  readonly longestMs: number;
};

/** Tasks of the thread on which the mark was set, from the task with the mark in it. */
const workAfterMark = (events: readonly TraceEvent[]): Work => {
  const mark = events.find(({ name }) => name === MARK);
  if (mark === undefined) throw new Error('the trace has no mark: the key came to no page');
  const tasks = events
    .filter(({ name, ph, pid, tid }) => {
      return (
        name === 'ThreadControllerImpl::RunTask' &&
        ph === 'X' &&
        pid === mark.pid &&
        tid === mark.tid
      );
    })
    .filter(({ ts, dur = 0 }) => ts + dur >= mark.ts)
    .map(({ dur = 0 }) => dur / 1000);
  return { allMs: tasks.reduce((sum, ms) => sum + ms, 0), longestMs: Math.max(...tasks) };
};

/**
 * Work from the first key that `act` sends until `forMs` later: all tasks of the main thread,
 * idle time left out. The page does nothing else in between, and no other program asks it anything.
 */
export const mainThreadWork = async (
  page: Page,
  act: () => Promise<void>,
  forMs: number,
): Promise<Work> => {
  const browser = page.context().browser();
  if (browser === null) throw new Error('the page has no browser to trace');
  await page.evaluate((name) => {
    addEventListener('keydown', () => performance.mark(name), { capture: true, once: true });
  }, MARK);
  await browser.startTracing(page, { categories: CATEGORIES });
  await act();
  await new Promise((resolve) => setTimeout(resolve, forMs));
  const trace = JSON.parse((await browser.stopTracing()).toString()) as {
    readonly traceEvents: readonly TraceEvent[];
  };
  return workAfterMark(trace.traceEvents);
};

/** The value below which a share of them lies: 0.5 is the median. */
export const atShare = (values: readonly number[], share: number): number => {
  const sorted = values.toSorted((one, other) => one - other);
  const at = Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1);
  return sorted[Math.max(0, at)] ?? Number.NaN;
};
