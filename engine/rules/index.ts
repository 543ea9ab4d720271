export { RULES, type RuleCode, ruleOf } from './declared.ts';
export { judge } from './judge.ts';
export { momentMs } from './record/moment.ts';
export { momentToJudge } from './record/moment-to-judge.ts';
export type { RuleDeclaration } from './rule.ts';
