import type { RuleDeclaration } from '../rule.ts';

export const LOAD_RULES = [
  {
    code: 'LOD-001',
    title: 'More on the batten than its live limit',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C14',
    says:
      'At {height} the batten carries {measured}: {hung} hung, {loom} of loom, and {tolerance} ' +
      'of tolerance. Its live limit is {limit}; {excess} too much.',
  },
  {
    code: 'LOD-002',
    title: 'Near the live limit of the batten',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C14',
    says:
      'At {height} the batten carries {measured}: {hung} hung, {loom} of loom, and {tolerance} ' +
      'of tolerance. Its live limit is {full}.',
  },
  {
    code: 'LOD-003',
    title: 'Even shared equally, the load is too much for the lift lines',
    levels: ['stop'],
    source: 'trade formula; limit of a line by house rule',
    cites: 'C14',
    says:
      'Shared equally by {lines} lines, each carries {measured}; a line may carry {limit}. ' +
      'Some line always carries more than the equal share. How much cannot be worked out: what ' +
      'is missing is listed as unknown.',
  },
  {
    code: 'LOD-004',
    title: 'More stands on a stop than it is rated for',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C15',
    says:
      'On the {stop} stop stands {measured}, {when}, tolerance counted in; what holds there is ' +
      'rated {limit}.',
  },
  {
    code: 'LOD-005',
    title: 'More at one place of the batten than its point limit',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C14',
    says:
      'At one place, {distance} {side}, hang {measured} ({items}; {state}, batten at {height}), ' +
      '{tolerance} of tolerance counted in. The point limit of the batten is {limit}.',
  },
  {
    code: 'LOD-006',
    title: 'More along the batten than its limit for the length',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C14',
    says:
      'From {distance} {side} on, {measured} are spread along the batten ({items}; {state}, ' +
      'batten at {height}), {tolerance} of tolerance counted in. Its limit is {limit}.',
  },
] as const satisfies readonly RuleDeclaration[];
