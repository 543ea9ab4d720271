import type { RuleDeclaration } from '../rule.ts';

export const ARBOR_RULES = [
  {
    code: 'ARB-001',
    title: 'Arbor heavier than its limit',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C14',
    says:
      'The {stack} arbor has {measured}, tolerance of {tolerance} counted in; its limit is ' +
      '{limit}. {excess} too much.',
  },
  {
    code: 'ARB-002',
    title: 'Arbor near its limit',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C14',
    says:
      'The {stack} arbor has {measured}, tolerance of {tolerance} counted in; its limit is ' +
      '{full}.',
  },
] as const satisfies readonly RuleDeclaration[];
