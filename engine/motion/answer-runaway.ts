import type { Reckoned } from '#findings';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { runawayRefusals } from './refusals.ts';
import { type Run, type RunawayCase, runaway, type Still } from './runaway.ts';
import {
  type Impact,
  impact,
  type LinesThatTakeIt,
  type Snatch,
  type StopGives,
  snatch,
} from './stopped.ts';

export type RunawayAsked = Omit<RunawayCase, 'hold'> & {
  readonly hold?: number;
  readonly liftLines?: LinesThatTakeIt;
  readonly stop?: StopGives;
};

export type RunawayAnswer =
  | Still
  | (Run & {
      /** Where it meets its stop: what the lines carry, and the force on the stop. */
      readonly snatch?: Reckoned<Snatch>;
      readonly impact?: Reckoned<Impact>;
    });

/** Everything that `compute runaway` says of one set. What it was not told it names. */
export const answerRunaway = (asked: RunawayAsked): Result<RunawayAnswer, readonly Refusal[]> => {
  const { liftLines = {}, stop, hold = 0, ...the } = asked;
  const refusals = runawayRefusals(the);
  if (refusals.length > 0) return fail(refusals);
  const run = runaway({ ...the, hold });
  if (!run.moves || run.end !== 'stop') return ok(run);
  return ok({
    ...run,
    snatch: snatch(the.moves, run, liftLines),
    impact: impact(the.moves, run, stop),
  });
};
