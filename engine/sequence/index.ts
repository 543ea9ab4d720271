export { type DrillMass, drillMass } from './drill/drill-mass.ts';
export { planDrill } from './drill/plan-drill.ts';
export type {
  Drill,
  DrillAsked,
  DrillEase,
  DrillPlan,
  MassRange,
  NoDrill,
  PlateLimit,
} from './drill/types.ts';
export { type PairOptions, planPair } from './pair/plan-pair.ts';
export type {
  Pair,
  PairBand,
  PairJob,
  PairNone,
  PairPlan,
  PairState,
  SharedPiece,
} from './pair/types.ts';
export { planOrder } from './plan-order.ts';
export type {
  BrokenRule,
  HeightRange,
  Hold,
  Holder,
  OrderGoal,
  OrderOptions,
  OrderPlan,
  OrderState,
  RestraintNeeded,
  SmallestChange,
} from './types.ts';
