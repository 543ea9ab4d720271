import type { Finding, Level, Measure, Place, Working } from '#findings';
import { assert } from '#outcome';
import { type RuleCode, ruleOf } from './declared.ts';

/** What a rule saw. Left out, the level is the rule's first and the rest is nothing. */
export type Seen = {
  readonly at: Place;
  readonly level?: Level;
  readonly measured?: Measure;
  readonly limit?: Measure;
  readonly limitSource?: string;
  readonly facts?: Finding['facts'];
  readonly working?: Working | null;
};

/** Makes the finding of a rule, and holds it to its declaration. */
export const raise = (code: RuleCode, seen: Seen): Finding => {
  const rule = ruleOf(code);
  assert(rule !== undefined, `rule ${code} is declared`);
  const level = seen.level ?? rule.levels[0];
  assert(rule.levels.includes(level), `rule ${code} may raise ${level}`);
  return {
    code,
    level,
    at: seen.at,
    measured: seen.measured ?? null,
    limit: seen.limit ?? null,
    limitSource: seen.limitSource ?? rule.source,
    facts: seen.facts ?? {},
    working: seen.working ?? null,
  };
};
