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
  /** µs that the thread itself worked, without the times when another had its processor. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
};

/** The least that tells tasks from idle time: what is traced more closely is slowed by it. */
const CATEGORIES = ['toplevel', 'blink.user_timing'];
const MARKS = { key: 'edit ends', shown: 'answer is shown' } as const;

export type Work = {
  /** Until the answer stands on the screen, painted; null where none was asked for. */
  readonly answeredMs: number | null;
  /** The same by the clock: the processor may be with another program meanwhile. */
  readonly answeredClockMs: number | null;
  readonly allMs: number;
  /** The longest task: as long as that the page answers to no hand. */
  readonly longestMs: number;
};

const tasksFrom = (events: readonly TraceEvent[], mark: TraceEvent): readonly TraceEvent[] =>
  events
    .filter(
      ({ name, ph, pid, tid }) =>
        name === 'ThreadControllerImpl::RunTask' &&
        ph === 'X' &&
        pid === mark.pid &&
        tid === mark.tid,
    )
    .filter(({ ts, dur = 0 }) => ts + dur >= mark.ts);

const clockMs = (tasks: readonly TraceEvent[]): number =>
  tasks.reduce((sum, { dur = 0 }) => sum + dur, 0) / 1000;

const workMs = (tasks: readonly TraceEvent[]): number =>
  tasks.reduce((sum, { dur = 0, tdur = dur }) => sum + tdur, 0) / 1000;

/** Tasks of the thread on which the mark was set, from the task with the mark in it. */
const workAfterMark = (events: readonly TraceEvent[], isAnswerAsked: boolean): Work => {
  const mark = events.find(({ name }) => name === MARKS.key);
  if (mark === undefined) throw new Error('the trace has no mark: the key came to no page');
  const shown = events.find(({ name }) => name === MARKS.shown);
  if (isAnswerAsked && shown === undefined) throw new Error('no answer came to the screen');
  const tasks = tasksFrom(events, mark);
  const before = tasks.filter(({ ts, dur = 0 }) => ts + dur <= (shown?.ts ?? 0));
  return {
    answeredMs: shown === undefined ? null : workMs(before),
    answeredClockMs: shown === undefined ? null : clockMs(before),
    allMs: workMs(tasks),
    longestMs: Math.max(...tasks.map((task) => workMs([task]))),
  };
};

/** Sets the marks: at the first key, and once the picture with another text in the cell is made. */
const setMarks = (page: Page, answer: string | null): Promise<void> =>
  page.evaluate(
    ({ marks, cell }) => {
      const opts = { capture: true, once: true };
      addEventListener('keydown', () => performance.mark(marks.key), opts);
      if (cell === null) return;
      const textNow = (): string | null => {
        const found = document.querySelector(cell);
        return found === null || found.querySelector('input') !== null ? null : found.textContent;
      };
      const before = textNow();
      const watch = new MutationObserver(() => {
        if (textNow() === null || textNow() === before) return;
        watch.disconnect();
        requestAnimationFrame(() => {
          // A message comes after the picture for which the frame was asked.
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => performance.mark(marks.shown);
          port2.postMessage(null);
        });
      });
      const looked = { subtree: true, childList: true, characterData: true };
      watch.observe(document.body, looked);
    },
    { marks: MARKS, cell: answer },
  );

/**
 * Work from the first key that `act` sends until `forMs` later: all tasks of the main thread,
 * idle time left out. The page does nothing else in between, and no other program asks it anything.
 * `answer` names the cell whose new text is the answer.
 */
export const mainThreadWork = async (
  page: Page,
  act: () => Promise<void>,
  { forMs, answer = null }: { readonly forMs: number; readonly answer?: string | null },
): Promise<Work> => {
  const browser = page.context().browser();
  if (browser === null) throw new Error('the page has no browser to trace');
  await setMarks(page, answer);
  await browser.startTracing(page, { categories: CATEGORIES });
  await act();
  await new Promise((resolve) => setTimeout(resolve, forMs));
  const trace = JSON.parse((await browser.stopTracing()).toString()) as {
    readonly traceEvents: readonly TraceEvent[];
  };
  return workAfterMark(trace.traceEvents, answer !== null);
};

/** The value below which a share of them lies: 0.5 is the median. */
export const atShare = (values: readonly number[], share: number): number => {
  const sorted = values.toSorted((one, other) => one - other);
  const at = Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1);
  return sorted[Math.max(0, at)] ?? Number.NaN;
};
