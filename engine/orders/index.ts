export type { Assumption, CountOfKind } from './assumption.ts';
export { type Bearing, whyNotBorne } from './bearing.ts';
export type { CheckedOrder, StepBetween, WorkKind } from './checked-order.ts';
export { isAccepted, stepsBetween, whyNotPrinted } from './checked-order.ts';
export { loadGoal, stateGoal, strikeGoal } from './goal.ts';
export { type OrderJob, openJob } from './job.ts';
export { freeFor } from './kept-stock.ts';
export { type OtherBricks, otherBricks } from './other-bricks.ts';
export { openPair, type PairQuestion, type WorkedPair, workOutPairBest } from './pair.ts';
export { answerPlan, type PlanAnswer, type PlannedPlain, planPlain } from './plain/answer-plan.ts';
export { answerVerify, judgePlain, type VerifyAnswer } from './plain/answer-verify.ts';
export type { PlainSet, PlanAsked, VerifyAsked } from './plain/asked.ts';
export type { Replayed } from './plain/replayed.ts';
export { WORK_REFUSALS } from './refusal-codes.ts';
export type { NotAsked, OrderSource, ShowWork } from './show-orders.ts';
export { showOrders } from './show-orders.ts';
export {
  bareStart,
  type OrderStart,
  plannedStart,
  recordedStart,
  writtenStart,
} from './start.ts';
export type { OrderQuestion, WorkedOrder } from './work-out.ts';
export { crewQuestion, judgeAsked, judgedOrder, workOut, workOutBest } from './work-out.ts';
export { isDrill, type WorkedDrill, workOutDrill } from './work-out-drill.ts';
