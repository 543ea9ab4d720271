/** Every rule of the house, gathered from its subjects. */
import { ARBOR_RULES } from './arbor/rule-codes.ts';
import { BALANCE_RULES } from './balance/rule-codes.ts';
import { BATTEN_RULES } from './batten/rule-codes.ts';
import { BRICK_RULES } from './bricks/rule-codes.ts';
import { BUILDING_RULES } from './building/rule-codes.ts';
import { CALL_RULES } from './call/rule-codes.ts';
import { HANG_RULES } from './hang/rule-codes.ts';
import { LINE_RULES } from './lines/rule-codes.ts';
import { LOAD_RULES } from './load/rule-codes.ts';
import { LOCK_RULES } from './lock/rule-codes.ts';
import { ORDER_RULES } from './order/rule-codes.ts';
import { PLAUSIBLE_RULES } from './plausible/rule-codes.ts';
import { RECORD_RULES } from './record/rule-codes.ts';
import type { RuleDeclaration } from './rule.ts';
import { STACK_RULES } from './stack/rule-codes.ts';
import { TRAVEL_RULES } from './travel/rule-codes.ts';
import { UNKNOWN_RULES } from './unknown/rule-codes.ts';

const DECLARED = [
  ...TRAVEL_RULES,
  ...STACK_RULES,
  ...ARBOR_RULES,
  ...LOAD_RULES,
  ...LINE_RULES,
  ...BATTEN_RULES,
  ...BUILDING_RULES,
  ...BALANCE_RULES,
  ...LOCK_RULES,
  ...BRICK_RULES,
  ...PLAUSIBLE_RULES,
  ...UNKNOWN_RULES,
  ...HANG_RULES,
  ...RECORD_RULES,
  ...ORDER_RULES,
  ...CALL_RULES,
] as const;

export type RuleCode = (typeof DECLARED)[number]['code'];

/** All rules, in the order of their subjects. */
export const RULES: readonly RuleDeclaration[] = DECLARED;

const BY_CODE = new Map(RULES.map((rule) => [rule.code, rule]));

/** The declaration of a code; undefined where no rule has it. */
export const ruleOf = (code: string): RuleDeclaration | undefined => BY_CODE.get(code);
