import type { RuleDeclaration } from '../rule.ts';

export const BRICK_RULES = [
  {
    code: 'BRK-001',
    title: 'More bricks planned than the house owns',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C62',
    says:
      '{measured} bricks of kind {kind} are on the plan, pipe weight counted in; the house owns ' +
      '{limit}.',
  },
  {
    code: 'BRK-002',
    title: 'Bricks that look alike and are not',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C87',
    says:
      '{kind} and {other} look alike and differ by {measured} each, {where}. Tell them apart ' +
      'by hand before they are counted.',
  },
  {
    code: 'BRK-003',
    title: 'Brick kind without a weighed sample',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C86',
    says: 'The mass of brick {kind}, {measured}, is {basis}{missing}. Weigh a sample.',
  },
] as const satisfies readonly RuleDeclaration[];
