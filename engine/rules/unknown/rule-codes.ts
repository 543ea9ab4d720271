import type { RuleDeclaration } from '../rule.ts';

export const UNKNOWN_RULES = [
  {
    code: 'UNK-001',
    title: 'Unknown value',
    levels: ['caution'],
    source: 'house rule',
    cites: 'C9',
    says: 'Unknown: {what}. Not worked out, and not judged: {blocks}.',
  },
] as const satisfies readonly RuleDeclaration[];
