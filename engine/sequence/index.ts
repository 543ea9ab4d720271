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
