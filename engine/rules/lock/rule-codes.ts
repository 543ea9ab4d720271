import type { RuleDeclaration } from '../rule.ts';

export const LOCK_RULES = [
  {
    code: 'LCK-001',
    title: 'Rope locks that nobody has tested',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'V3',
    says:
      'Rope locks without a grip test on record: {measured}, on {sets}. Each is counted at the ' +
      'limit of the house until a test of its own says less. Test them, and write down the day.',
  },
  {
    code: 'LCK-002',
    title: 'Grip tests that are due again',
    levels: ['caution'],
    source: 'house rule',
    cites: 'V3',
    says:
      'Rope locks whose grip test is more than {days} days old, or has no day written down: ' +
      '{measured}, on {sets}. The oldest is of {oldest}.',
  },
  {
    code: 'LCK-003',
    title: 'Rope lock failed its last test',
    levels: ['stop'],
    source: 'common practice, no source',
    cites: 'V3',
    says:
      'The rope lock of this set failed its last test or inspection ({test}{remark}). It counts ' +
      'for nothing: only a stop, steel or a rated restraint holds this set.',
  },
  {
    code: 'LCK-004',
    title: 'Rope lock holds less than the house lets a lock hold',
    levels: ['caution'],
    source: 'house rule',
    cites: 'V3',
    says:
      'By its grip test ({test}) the lock of this set holds {measured} at the batten, less than ' +
      'the {limit} that the house lets a lock hold. The lower counts.',
  },
] as const satisfies readonly RuleDeclaration[];
