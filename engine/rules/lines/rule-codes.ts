import type { RuleDeclaration } from '../rule.ts';

export const LINE_RULES = [
  {
    code: 'LFT-001',
    title: 'A lift line carries more than it may',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C31',
    says:
      'Line {line}, {distance} {side}, carries {measured} at its loft block ({state}, batten at ' +
      '{height}; tolerance in it: {tolerance}). A line may carry {limit}. Other lines past it: ' +
      '{others}.',
  },
  {
    code: 'LFT-002',
    title: 'A lift line is near what it may carry',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C31',
    says:
      'Line {line}, {distance} {side}, carries {measured} at its loft block ({state}, batten at ' +
      '{height}; tolerance in it: {tolerance}). A line may carry {full}. Other lines as near: ' +
      '{others}.',
  },
  {
    code: 'LFT-003',
    title: 'A lift line hangs slack',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C30',
    says:
      'Slack with the batten at {height} ({state}): line {lines} of {of}. The others carry ' +
      'more for it, and it comes tight with a jerk. Slack in: {states}.',
  },
  {
    code: 'LFT-004',
    title: 'A load beyond the last line makes the next one slack',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C33',
    says:
      'Beyond line {last}, at the {end} end, hang {measured}, up to {furthest} out. Line ' +
      '{slack}, the next one in, goes slack with the batten at {height}. Slack in: {states}.',
  },
  {
    code: 'LFT-005',
    title: 'Too little strength of a lift line in reserve',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C31',
    says:
      'Line {line}, {distance} {side}, carries {measured} ({state}, batten at {height}; ' +
      'tolerance in it: {tolerance}). Its ends and sheaves leave {left} of its strength, ' +
      '{times} times that ({catalogue} times by the catalogue alone); the house asks {asked} ' +
      'times, so that it may carry {limit}. Other lines past it: {others}.',
  },
  {
    code: 'LFT-006',
    title: 'With the batten held down, the arbor loads the lift lines',
    levels: ['stop', 'caution'],
    source: 'trade formula; limit of a line by house rule',
    cites: 'C37',
    says:
      'Held down, the batten no longer counts: the arbor pulls with {arbor} on lines and blocks, ' +
      'where flying they carry {batten} at most. Shared equally by {lines} lines that is ' +
      '{measured} each, and some line carries more; a line may carry {limit}.',
  },
  {
    code: 'LFT-007',
    title: 'Lift lines end in wire-rope clips',
    levels: ['caution', 'note'],
    source: 'DGUV Vorschrift 17 section 9 permits no load-carrying end made with clips',
    cites: 'C31',
    says:
      'Lift lines of {measured} sets end in clips: {sets}. {what}. Rules differ: some let clips ' +
      'carry a load at 80 % of the strength, some not at all.',
  },
  {
    code: 'LFT-008',
    title: 'Sheaves small for their line',
    levels: ['caution'],
    source: 'house rule',
    cites: 'C31',
    says:
      'Sets {sets}, {what}: a sheave of {sheave} is {times} line diameters across at the ' +
      'groove; the house asks {asked}. The line keeps less of its strength and wears sooner.',
  },
  {
    code: 'LFT-009',
    title: 'Fleet angle wider than allowed',
    levels: ['caution'],
    source: 'house rule',
    cites: 'C31',
    says:
      'Sets {sets}, {what}: a line leaves the plane of its sheave by {measured}; the house ' +
      'allows {limit}. It wears on the side of the groove and may climb out.',
  },
  {
    code: 'LFT-010',
    title: 'Lift lines reckoned true to length',
    levels: ['note'],
    source: 'common practice, no source',
    cites: 'C34',
    says:
      'Nobody has measured how true the lift lines are on sets {sets}; they are reckoned true. ' +
      '{step} on a turnbuckle moves {measured} at most (set {most}, line {line}).',
  },
  {
    code: 'LFT-011',
    title: 'Stiff batten on lines that nobody has measured',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C34',
    says:
      '{step} on the turnbuckle of line {line}, {distance} {side}, moves {measured}, and nobody ' +
      'has measured how true the lines are. What they carry may be far from what is reckoned.',
  },
  {
    code: 'BLK-001',
    title: 'More on a block than it is rated for',
    levels: ['stop'],
    source: 'house rule',
    cites: 'C40',
    says:
      'On the {block} ({state}) the lines pull with {measured}, both sides together; it is rated ' +
      '{limit}. Other blocks past it: {others}.',
  },
  {
    code: 'BLK-002',
    title: 'A block near its rating',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'C40',
    says:
      'On the {block} ({state}) the lines pull with {measured}, both sides together; it is rated ' +
      '{full}.',
  },
] as const satisfies readonly RuleDeclaration[];
