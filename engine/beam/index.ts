export { answerBatten, type BattenReply } from './answer.ts';
export { type BattenLimits, type Heaviest, heaviestAt } from './heaviest-load.ts';
export { type PickPlaces, type PickTask, placePicks } from './place-picks.ts';
export { BEAM_REFUSALS } from './refusal-codes.ts';
export { solveBatten } from './solve-batten.ts';
export { type Turning, turnsToEven, turnsToLevel } from './turn-lines.ts';
export type {
  Allowable,
  At,
  BattenAnswer,
  BattenCase,
  BattenSolution,
  Extremes,
  HungPiece,
  LiftLine,
  Load,
  Pick,
  Pipe,
  PointLoad,
  Shared,
  Splice,
  SpreadLoad,
  Station,
  Support,
  Unstable,
  Utilisation,
} from './types.ts';
