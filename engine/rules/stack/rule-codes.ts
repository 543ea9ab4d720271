import type { RuleDeclaration } from '../rule.ts';

export const STACK_RULES = [
  {
    code: 'STK-001',
    title: 'Stack higher than the usable rod',
    levels: ['stop'],
    source: 'trade formula; length of the rod by house rule',
    cites: 'C6',
    says:
      'The stack of {plates} plates stands {measured} high; the usable rod is {limit}, ' +
      '{excess} too short.',
  },
  {
    code: 'STK-002',
    title: 'Stack near the end of the usable rod',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C6',
    says: 'The stack stands {measured} high on a usable rod of {rod}: no room for a change.',
  },
  {
    code: 'STK-003',
    title: 'Top of the stack reached from no gallery with the batten in',
    levels: ['caution'],
    source: 'trade formula; reach of a loader by house rule',
    cites: 'C4',
    says:
      'With {plates} plates on, no gallery reaches the top of the stack at the low stop of ' +
      '{lowStop} or at the working height of {working}. It is first reached at {first}, from ' +
      '{from}.',
  },
  {
    code: 'STK-004',
    title: 'Spreader plates not listed',
    levels: ['caution'],
    source:
      'common practice: an operating guide (“Insert spreader plates every two feet”) and a ' +
      'school’s crew guide',
    cites: 'C7',
    says:
      'The stack stands {measured} high and the house lists no spreader plates; usual is one ' +
      'for every {limit}. Their mass and thickness are missing from all results of this set.',
  },
] as const satisfies readonly RuleDeclaration[];
