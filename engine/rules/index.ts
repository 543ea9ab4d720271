export type { CallAsked, CallFacts } from './call/call-case.ts';
export type { CallFinding } from './call/finding.ts';
export { type CallJudgement, judgeCall, judgeNow, type SetJudged } from './call/judge-call.ts';
export { postOf } from './call/posts.ts';
export { RULES, type RuleCode, ruleOf } from './declared.ts';
export { type JudgeMemory, judge, judgeSet } from './judge.ts';
export { planningLimitN } from './order/holds.ts';
export type {
  OneStops,
  PairToJudge,
  PairVerdict,
} from './order/pair/pair-verdict.ts';
export { verifyPair } from './order/pair/verify-pair.ts';
export { REFUSALS as ORDER_REFUSALS } from './order/refusal-codes.ts';
export type {
  Breach,
  OrderOptions,
  OrderState,
  OrderVerdict,
  ProofDue,
} from './order/verdict.ts';
export { verifyOrder } from './order/verify-order.ts';
export { momentMs } from './record/moment.ts';
export { momentToJudge } from './record/moment-to-judge.ts';
export { bearsLine, type LineBearing } from './restraint/bears-line.ts';
export type { RuleDeclaration } from './rule.ts';
