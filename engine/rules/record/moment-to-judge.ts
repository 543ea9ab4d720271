import type { House } from '#house';
import type { HouseState } from '#state';
import { momentMs } from './moment.ts';

/**
 * The moment at which records are judged for their age, in milliseconds since 1970. An invented
 * house stands still at the hour of its record; a real one has the clock of whoever asks. Screens,
 * sheets and command line ask here, so that none calls stale what another calls fresh.
 */
export const momentToJudge = (
  { demo }: Pick<House, 'demo'>,
  state: Pick<HouseState, 'at'> | null,
  clockMs: number,
): number => (demo ? (momentMs(state?.at ?? '') ?? clockMs) : clockMs);
