import type { Finding } from '#findings';
import { ruleOf } from '../declared.ts';
import type { OrderRuleCode } from '../order/rule-codes.ts';
import { raise, type Seen } from '../raise.ts';
import type { CallRuleCode } from './rule-codes.ts';

/** One rule that keeps a step from being given leave, or that how a set stands breaks. */
export type CallFinding = {
  /** `CAL-005`, or the rule of an order of work that the step breaks. */
  readonly rule: string;
  /** The rule in plain words. */
  readonly says: string;
  /**
   * No override covers it: a weight would be held by nothing, people would be under it, or somebody
   * said stop.
   */
  readonly isHold: boolean;
  readonly finding: Finding | null;
};

/**
 * What two people with a reason may do all the same: nothing falls by it. A loader can see whether
 * they reach a brick, and that a brick is no pipe weight; that what was carried over is still so;
 * and that what hangs weighs what is written.
 */
const COVERABLE: ReadonlySet<CallRuleCode | OrderRuleCode> = new Set([
  'ORD-014',
  'ORD-017',
  'CAL-022',
  'CAL-024',
]);

const titleOf = (code: string): string => ruleOf(code)?.title ?? code;

export const callFinding = (rule: CallRuleCode, seen: Seen): CallFinding => ({
  rule,
  says: titleOf(rule),
  isHold: !COVERABLE.has(rule),
  finding: raise(rule, seen),
});

export const orderFinding = (rule: OrderRuleCode, finding: Finding): CallFinding => ({
  rule,
  says: titleOf(rule),
  isHold: !COVERABLE.has(rule),
  finding,
});
