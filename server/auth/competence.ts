/**
 * What a person is trained to do, by task: its level, how long a sign-off holds, who may give it.
 * Common practice, no source; the rules of the house and local codes come first. A sign-off here is
 * a record of what a named person said, and certifies nothing.
 */

import type { Task } from '#events';

type Terms = {
  /** Signed by one who holds a higher level; null where the owner records what others gave. */
  readonly level: number | null;
  /** Longest time it holds; null where it lapses by no rule of ours. */
  readonly monthsMax: number | null;
  /** Whether the day on which it lapses must be said, since only its paper says it. */
  readonly needsDay: boolean;
};

const TERMS: Readonly<Record<Task, Terms>> = {
  induct: { level: 0, monthsMax: 12, needsDay: false },
  deck: { level: 1, monthsMax: 12, needsDay: false },
  loader: { level: 2, monthsMax: 12, needsDay: false },
  rail: { level: 3, monthsMax: 12, needsDay: false },
  outOfBalance: { level: 4, monthsMax: 12, needsDay: false },
  lead: { level: 5, monthsMax: 24, needsDay: false },
  headFly: { level: 6, monthsMax: null, needsDay: false },
  inspector: { level: null, monthsMax: null, needsDay: true },
  motor: { level: null, monthsMax: 12, needsDay: false },
};

export const TASKS = Object.keys(TERMS) as readonly Task[];

export const taskFrom = (value: unknown): Task => {
  const task = TASKS.find((each) => each === value);
  if (task === undefined) throw new Error(`defect: no task is called ${String(value)}`);
  return task;
};

/** Whether one who holds `held` may sign or revoke `task`. */
export const isAbove = (held: readonly Task[], task: Task): boolean => {
  const { level } = TERMS[task];
  return level !== null && held.some((each) => (TERMS[each].level ?? -1) > level);
};

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/** The end of a day, UTC, in milliseconds; null where there is no such day. */
export const endOfDayMs = (day: string): number | null => {
  const [, year = '', month = '', date = ''] = DAY.exec(day) ?? [];
  const startMs = Date.UTC(Number(year), Number(month) - 1, Number(date));
  const isDay = Number.isFinite(startMs) && new Date(startMs).toISOString().startsWith(day);
  return year !== '' && isDay ? startMs + 86_400_000 : null;
};

/** So many months on, on the same day, or on the last of a month that is shorter. */
export const monthsOnMs = (fromMs: number, months: number): number => {
  const from = new Date(fromMs);
  const first = Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + months, 1);
  const { year, month } = {
    year: new Date(first).getUTCFullYear(),
    month: new Date(first).getUTCMonth(),
  };
  const last = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  return Date.UTC(year, month, Math.min(from.getUTCDate(), last) + 1);
};

export type Lapse =
  | { readonly is: 'at'; readonly lapsesAtMs: number | null }
  | { readonly is: 'notADay' | 'needsDay' | 'past' }
  | { readonly is: 'tooLate'; readonly latestMs: number };

/** When a sign-off given now lapses. A person may say an earlier day, never a later one. */
export const lapseOf = (task: Task, nowMs: number, day: string | null): Lapse => {
  const { monthsMax, needsDay } = TERMS[task];
  const latestMs = monthsMax === null ? null : monthsOnMs(nowMs, monthsMax);
  if (day === null) return needsDay ? { is: 'needsDay' } : { is: 'at', lapsesAtMs: latestMs };
  const askedMs = endOfDayMs(day);
  if (askedMs === null) return { is: 'notADay' };
  if (askedMs <= nowMs) return { is: 'past' };
  if (latestMs !== null && askedMs > latestMs) return { is: 'tooLate', latestMs };
  return { is: 'at', lapsesAtMs: askedMs };
};
