export type { BalanceAnswer } from './answer.ts';
export { answerBalance, answerMix, answerPullTest } from './answer.ts';
export type { BalanceSet } from './balance-set.ts';
export type { FoundMix, MixResult, RankedMix } from './bricks/mix-for-set.ts';
export { mixForSet } from './bricks/mix-for-set.ts';
export type { MixTask } from './bricks/mix-task.ts';
export type { BrickStock, SpreaderPlates } from './bricks/problem.ts';
export type { StackInput, StackResult } from './bricks/stack-to-target.ts';
export { stackToTarget } from './bricks/stack-to-target.ts';
export type { CarriedMass } from './carried-mass.ts';
export {
  carriedMass,
  contactHeight,
  fullMass,
  loomTooShort,
  loopLowPoint,
} from './carried-mass.ts';
export type { BalanceCurve, CurveNode, Equilibrium, Extremes, Jump } from './curve.ts';
export { balanceCurve, extremesOf, slopeAt } from './curve.ts';
export type { ImbalanceParts } from './imbalance.ts';
export {
  contactInterval,
  imbalanceAt,
  imbalanceBelow,
  imbalanceParts,
  imbalanceUncertainty,
  linesMass,
} from './imbalance.ts';
export type { BalanceItem } from './item.ts';
export type { Friction } from './pulls.ts';
export { assumedFriction, correctedMass, handLinePulls, pullTest } from './pulls.ts';
