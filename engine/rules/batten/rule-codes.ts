import type { RuleDeclaration } from '../rule.ts';

export const BATTEN_RULES = [
  {
    code: 'PIP-001',
    title: 'The lines do not hold the batten',
    levels: ['stop'],
    source: 'equilibrium of the batten on its lines',
    cites: 'C30',
    says:
      'With the batten at {height} its lines do not hold it: {what}. It would move until ' +
      'something else holds it, and nothing more of it can be worked out. So in: {states}.',
  },
  {
    code: 'PIP-002',
    title: 'The batten bends more than its pipe may',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C32',
    says:
      'Bending {where}, {distance} {side}: {measured} ({state}, batten at {height}). Allowed is ' +
      '{limit}, by {method}. Tolerances of the masses come on top.',
  },
  {
    code: 'PIP-003',
    title: 'Bending of the batten near what its pipe may take',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C32',
    says:
      'Bending {where}, {distance} {side}: {measured} ({state}, batten at {height}). Allowed is ' +
      '{full}, by {method}. Tolerances of the masses come on top.',
  },
  {
    code: 'PIP-004',
    title: 'The batten sags more than the house allows',
    levels: ['caution'],
    source: 'house rule',
    cites: 'C32',
    says:
      'Between two lines {span} apart, at {distance} {side}, the batten sags by {measured} ' +
      '({state}, batten at {height}); the house allows {limit}.',
  },
  {
    code: 'PIP-005',
    title: 'Joints of the pipe that nobody has looked for',
    levels: ['note'],
    source: 'common practice, no source',
    cites: 'C32',
    says:
      'On {measured} sets nobody has looked for joints in the pipe, and none is reckoned with: ' +
      '{sets}. A joint may take less than the pipe.',
  },
  {
    code: 'PIP-006',
    title: 'Nominal or design wall not said',
    levels: ['caution'],
    source: 'published pipe tables: the two differ by about 6 %',
    cites: 'C32',
    says:
      'On {measured} sets nobody says whether the values of the pipe are for its nominal wall or ' +
      'for its design wall: {sets}. Bending may be 6 % nearer to its limit than it is shown.',
  },
] as const satisfies readonly RuleDeclaration[];
