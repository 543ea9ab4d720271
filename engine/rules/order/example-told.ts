/** A breach in full as plain lines, for the tests that read every number and word of one. */
import { inFull } from '../example-finding.ts';
import { breachOf, type Trial } from './example-order.ts';
import type { OrderRuleCode } from './rule-codes.ts';

export const told = (rule: OrderRuleCode, trial: Trial): string => {
  const { step, where, byN, finding } = breachOf(rule, trial);
  const by = byN === null ? 'no limit in newtons' : `${Number(byN.toPrecision(9))} N past it`;
  return `step ${step} at ${Number(where.toPrecision(9))} m, ${by}\n${inFull(finding)}`;
};
