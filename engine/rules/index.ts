export { RULES, type RuleCode, ruleOf } from './declared.ts';
export { judge } from './judge.ts';
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
export type { RuleDeclaration } from './rule.ts';
