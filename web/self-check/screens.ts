/** Which calculations each screen rests on: a failed case of one of them is said on the screen. */
import { unreachable } from '#outcome';
import type { Calculation, FailedCase, SelfCheckRecord } from '#selfcheck';
import { failedOf, sayUnfinished } from '#sheets';
import { ENGLISH, phrase, type Voice } from '#texts';
import type { Place } from '../address/address.ts';
import type { Checks } from './watch.ts';

/** The wall is on every screen. */
const WALL = ['quantities', 'house', 'takeoff', 'balance', 'bricks'] as const;
const ALL = [...WALL, 'pull-test', 'beam', 'lines'] as const;

export const restsOn = (place: Place): readonly Calculation[] => {
  switch (place.kind) {
    case 'hangList':
    case 'set':
    case 'whatIf':
    case 'compare':
    case 'anotherHouse':
      return ALL;
    case 'sheets':
    case 'whichSet':
    case 'live':
    case 'drill':
      return [...ALL, 'motion'];
    case 'order':
      return [...WALL, 'motion'];
    case 'house':
      return [...WALL, 'lines'];
    case 'bringIn':
    case 'takeOut':
    case 'documents':
    case 'selfCheck':
    case 'notes':
    case 'nowhere':
      return WALL;
    // No figure of a house is on them.
    case 'people':
    case 'thisServer':
      return [];
    default:
      return unreachable(place);
  }
};

/** For a sheet of which a screen takes parts: what failed stands above the screen, said once. */
export const SAID_ABOVE: SelfCheckRecord = {
  installation: { version: '', build: '', platform: '' },
  state: { is: 'notRun' },
};

export type Failing = {
  readonly who: 'browser' | 'server';
  readonly failed: readonly FailedCase[];
};

/** What failed of it, of the browser that draws the screen and of the server that prints. */
export const failingOn = (place: Place, { browser, server }: Checks): readonly Failing[] => {
  const rests = restsOn(place);
  const found: readonly Failing[] = [
    { who: 'browser', failed: failedOf(browser.state, rests) },
    { who: 'server', failed: server === null ? [] : failedOf(server.state, rests) },
  ];
  return found.filter(({ failed }) => failed.length > 0);
};

/** In the few words that a cell of the title block has room for. */
export const cellWords = ({ browser, server }: Checks, voice: Voice = ENGLISH): string => {
  const states = [browser.state, ...(server === null ? [] : [server.state])];
  const isFailed = states.some((state) => state.is === 'done' && state.report.failed.length > 0);
  if (isFailed) return phrase(voice, 'FAILED');
  if (server === null || states.some((state) => state.is !== 'done')) {
    return phrase(voice, 'not finished');
  }
  return phrase(voice, 'within tolerance');
};

/** How far one of them is, for the page that shows both. */
export const stateWords = ({ state }: SelfCheckRecord, voice: Voice = ENGLISH): string => {
  if (state.is === 'running') {
    const { done, total } = state;
    return phrase(voice, 'Running: {done} of {total} cases are done.', { done, total });
  }
  const words = sayUnfinished(state);
  return words === null ? '' : phrase(voice, words);
};
