import type { RuleDeclaration } from '../rule.ts';

export const BALANCE_RULES = [
  {
    code: 'BAL-001',
    title: 'Out of balance at a trim by more than the lock holds',
    levels: ['stop'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C15',
    says: 'At trim {trim}, {height}: {measured}. The lock may hold {limit}.',
  },
  {
    code: 'BAL-002',
    title: 'Out of balance elsewhere on the free travel by more than the lock holds',
    levels: ['stop', 'caution'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C15',
    says: 'At {height}, {where}: {measured}. The lock may hold {limit}.',
  },
  {
    code: 'BAL-003',
    title: 'Not held by the lock below lift-off with all bricks on',
    levels: ['caution'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C17, C20, C21',
    says:
      'With all bricks on the lock does not hold this set from {passes} in: {measured} at ' +
      '{height}, past {limit}. It leaves the deck at {liftOff}. Needs the order of work.',
  },
  {
    code: 'BAL-004',
    title: 'Past the lock if every mass is off by its tolerance',
    levels: ['caution'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C86',
    says:
      'At {height} it is {nominal}; with every mass at its worst {measured}, past the {limit} ' +
      'of the lock. Only a pull test or a weighing tells.',
  },
  {
    code: 'BAL-005',
    title: 'Other bricks would balance better',
    levels: ['note'],
    source: 'trade formula',
    cites: 'C28',
    says:
      'Worst on the free travel with {bricks}: {measured} out of balance. With {best}: {least}. ' +
      'Reason given: {reason}.',
  },
  {
    code: 'BAL-006',
    title: 'No mix of bricks keeps this set within the lock',
    levels: ['caution'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C28',
    says:
      'No mix of bricks keeps this set within the {limit} of the lock. {why} The least that a ' +
      'mix leaves: {least} ({best}).',
  },
  {
    code: 'BAL-007',
    title: 'Past the lock after something has left in view',
    levels: ['stop'],
    source: 'trade formula; limit of the lock by house rule',
    cites: 'C24',
    says: 'After {how}, at {height}: {measured}. The lock may hold {limit}.',
  },
  {
    code: 'BAL-008',
    title: 'Runs away from balance',
    levels: ['note'],
    source: 'trade formula',
    cites: 'C27',
    says:
      'From {from} out to {to} this set grows {measured} more arbor heavy, and as much more ' +
      'batten heavy on the way in: once it goes, it goes faster.',
  },
  {
    code: 'BAL-009',
    title: 'Friction hides the imbalance',
    levels: ['note'],
    source: 'trade formula',
    cites: 'C26',
    says:
      'Friction of {measured} ({basis}) holds this set still at trim {trim} with {imbalance}: ' +
      'that it stands still proves nothing.',
  },
  {
    code: 'BAL-010',
    title: 'Bricks of a double purchase set counted as for single purchase',
    levels: ['caution'],
    source: 'trade formula',
    cites: 'C29',
    says:
      'Show bricks of {measured} on a double purchase arbor balance half of that; {limit} would ' +
      'balance what hangs.',
  },
  {
    code: 'BAL-011',
    title: 'Pull test and list differ by more than the tolerance',
    levels: ['caution'],
    source: 'trade formula',
    cites: 'C25',
    says:
      'By pull test at {height}: {measured}; by the list: {listed}. They differ by {difference}, ' +
      'and the tolerance is {limit}. By this test {suspect} weighs {suggested}.',
  },
] as const satisfies readonly RuleDeclaration[];
