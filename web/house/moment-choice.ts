/** Which moment of the house is shown, as it stands in the address. */
import { unreachable } from '#outcome';
import type { Show } from '#show';
import { JOBS, type OrderJobName, type OrderStartName, STARTS } from '../address/address.ts';

export type MomentChoice =
  | { readonly of: 'record' }
  | { readonly of: 'trim'; readonly name: string }
  /** After so many cues; 0 is before the first. */
  | { readonly of: 'cue'; readonly done: number }
  /** After so many steps of an order of work on one set; 0 is how the work begins. */
  | {
      readonly of: 'order';
      readonly set: string;
      readonly job: OrderJobName;
      readonly from: OrderStartName;
      readonly done: number;
    };

const wholeOf = (text: string): number | null => (/^\d{1,4}$/.test(text) ? Number(text) : null);

const orderOf = (words: readonly string[]): MomentChoice | null => {
  // A set may have a colon in its name; what follows has none.
  const [jobName, fromName, step = ''] = words.slice(-3);
  const set = words.slice(0, -3).join(':');
  const job = JOBS.find((each) => each === jobName);
  const from = STARTS.find((each) => each === fromName);
  const done = wholeOf(step);
  return set === '' || job === undefined || from === undefined || done === null
    ? null
    : { of: 'order', set, job, from, done };
};

/** Null where the address asks for a moment that there is not. */
export const readMoment = (at: string | null): MomentChoice | null => {
  if (at === null) return { of: 'record' };
  const [first = '', ...words] = at.split(':');
  const rest = words.join(':');
  switch (first) {
    case 'trim':
      return rest === '' ? null : { of: 'trim', name: rest };
    case 'cue': {
      const done = wholeOf(rest);
      return done === null ? null : { of: 'cue', done };
    }
    case 'order':
      return orderOf(words);
    default:
      return null;
  }
};

/** How a sheet calls the moment; null where there is none of it. */
export const sheetMoment = (choice: MomentChoice, { cues }: Show): string | null => {
  switch (choice.of) {
    case 'record':
      return 'record';
    case 'trim':
      return `trim:${choice.name}`;
    case 'cue': {
      const last = cues[choice.done - 1];
      return last === undefined ? null : `cue:${last.number}`;
    }
    case 'order':
      return null;
    default:
      return unreachable(choice);
  }
};

export const writeMoment = (choice: MomentChoice): string | null => {
  switch (choice.of) {
    case 'record':
      return null;
    case 'trim':
      return `trim:${choice.name}`;
    case 'cue':
      return `cue:${choice.done}`;
    case 'order':
      return `order:${choice.set}:${choice.job}:${choice.from}:${choice.done}`;
    default:
      return unreachable(choice);
  }
};
