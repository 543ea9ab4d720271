import type { RuleDeclaration } from '../rule.ts';

export const TRAVEL_RULES = [
  {
    code: 'TRV-001',
    title: 'Room above the arbor with the batten in',
    levels: ['stop', 'caution'],
    source: 'trade formula; clearance by house rule',
    cites: 'C2',
    says:
      'With the batten in at {lowStop} the top of the arbor is {measured} below the head block; ' +
      'wanted is {limit}.',
  },
  {
    code: 'TRV-002',
    title: 'Room below the arbor with the batten out',
    levels: ['stop', 'caution'],
    source: 'trade formula; clearance by house rule',
    cites: 'C2',
    says:
      'With the batten out at {highStop} the bottom of the arbor is at {measured}; wanted is ' +
      '{limit}. Listed as {purchase} purchase: look whether that is so.',
  },
  {
    code: 'TRV-003',
    title: 'Trim outside the travel',
    levels: ['stop'],
    source: 'trade formula',
    cites: 'C1',
    says: 'Trim {trim} is at {measured}; the batten travels from {lowStop} to {highStop}.',
  },
  {
    code: 'TRV-004',
    title: 'Stops and working height out of order',
    levels: ['stop'],
    source: 'trade formula',
    cites: 'C1',
    says: 'The {upper} at {measured} is not above the {lower} at {limit}.',
  },
] as const satisfies readonly RuleDeclaration[];
