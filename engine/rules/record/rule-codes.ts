import type { RuleDeclaration } from '../rule.ts';

export const RECORD_RULES = [
  {
    code: 'STA-001',
    title: 'Recorded stack differs from the plan',
    levels: ['caution', 'note'],
    source: 'trade formula',
    cites: 'C85',
    says: '{tag} on the arbor, as recorded: {recorded}. As planned: {planned}.',
  },
  {
    code: 'STA-002',
    title: 'Record out of date',
    levels: ['caution'],
    source: 'house rule',
    cites: 'C84',
    says: 'Last confirmed {confirmed}; {age}. The house asks again after {limit}.',
  },
  {
    code: 'STA-003',
    title: 'Lock-out',
    levels: ['stop'],
    source: 'house rule',
    cites: '',
    says: 'Locked out, tag {tag}: {reason}. Not for use.',
  },
  {
    code: 'STA-004',
    title: 'Recorded imbalance past all that holds it',
    levels: ['stop'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C15',
    says: 'As recorded, {measured} at {height}, and {holder} holds {limit}.',
  },
  {
    code: 'STA-005',
    title: 'State not known',
    levels: ['note'],
    source: 'house rule',
    cites: 'C84',
    says: 'Not known: {what}. What is said here is the plan.',
  },
] as const satisfies readonly RuleDeclaration[];
