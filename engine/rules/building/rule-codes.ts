import type { RuleDeclaration } from '../rule.ts';

export const BUILDING_RULES = [
  {
    code: 'STL-001',
    title: 'More on a bay of the head-block beam than it may carry',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C41',
    says:
      'All {sets} sets of {carrier}, {when}: {measured}. It may carry {limit}; {excess} too ' +
      'much. Most is from set {most}, {mostForce}.',
  },
  {
    code: 'STL-002',
    title: 'A bay of the head-block beam near what it may carry',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C41',
    says:
      'All {sets} sets of {carrier}, {when}: {measured}, {share} of the {full} that it may ' +
      'carry. With every batten out their lines add up to {wire}: {what}. Most is from set ' +
      '{most}, {mostForce}.',
  },
  {
    code: 'STL-003',
    title: 'A bay past its limit when a set starts or stops',
    levels: ['caution'],
    source: 'house rule',
    cites: 'C38, C41',
    says:
      'When set {moving} moves, {carrier}: {measured}, with {share} on top of that set for ' +
      'starts and stops. The bay may carry {limit}.',
  },
  {
    code: 'STL-004',
    title: 'More on a loft well than it may carry',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C42',
    says:
      'The lines of {sets} sets on {carrier}, {when}: {measured}. It may carry {limit}; {excess} ' +
      'too much. Most is from set {most}, {mostForce}.',
  },
  {
    code: 'STL-005',
    title: 'A loft well near what it may carry',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C42',
    says:
      'The lines of {sets} sets on {carrier}, {when}: {measured}, {share} of the {full} that it ' +
      'may carry. Most is from set {most}, {mostForce}.',
  },
  {
    code: 'STL-006',
    title: 'Lift lines that stand on no listed loft well',
    levels: ['note'],
    source: 'house rule',
    cites: 'C42',
    says:
      '{measured} lines stand on no loft well that the house lists, on sets {sets}. What carries ' +
      'them in the grid is not added up.',
  },
  {
    code: 'FLR-001',
    title: 'More on a gallery than its floor may take',
    levels: ['stop', 'caution'],
    source: 'house rule',
    cites: 'C43, C44',
    says:
      '{gallery}, {when} ({bricks} of bricks): {what}, {measured}. Allowed is {limit}; {excess} ' +
      'too much.',
  },
  {
    code: 'FLR-002',
    title: 'A gallery near what its floor may take',
    levels: ['caution', 'note'],
    source: 'common practice, no source',
    cites: 'C43, C44',
    says: '{gallery}, {when} ({bricks} of bricks): {what}, {measured}. Allowed is {full}.',
  },
] as const satisfies readonly RuleDeclaration[];
