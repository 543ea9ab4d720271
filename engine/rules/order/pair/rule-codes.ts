/** Rules of an order of work on two sets that carry one piece. */
import type { RuleDeclaration } from '../../rule.ts';

const TRADE = 'trade formula; ratings by house rule';
const COMMON = 'common practice, no source';
const HOUSE = 'house rule';

export const PAIR_RULES = [
  {
    code: 'ORD-039',
    title: 'Coupled sets at rest, out of their band',
    levels: ['stop'],
    source: HOUSE,
    cites: 'V9, C23',
    says:
      'With a piece on both, {set} is at {height} and {partner} at {partnerAt}: that is ' +
      '{measured} over it. The piece takes {least} to {most}.',
  },
  {
    code: 'ORD-040',
    title: 'Coupled sets out of their band on the way',
    levels: ['stop'],
    source: HOUSE,
    cites: 'V9, C23, R6',
    says:
      'With a piece on both, {set} goes from {from} to {to} and {partner} from {partnerFrom} to ' +
      '{partnerTo}. With {set} at {passes} they leave the band of {least} to {most}; at worst ' +
      '{partner} is {measured} over it.',
  },
  {
    code: 'ORD-041',
    title: 'One of a pair moved alone',
    levels: ['stop'],
    source: COMMON,
    cites: 'R10',
    says:
      '{set} is moved from {height} by itself, with a piece on it that hangs on {partner} too. ' +
      'Both go on one word, or neither.',
  },
  {
    code: 'ORD-042',
    title: 'Other work while a piece is on one of a pair only',
    levels: ['stop'],
    source: COMMON,
    cites: 'R10',
    says:
      'A piece of both is on {has} only, and nobody knows what that set carries. Put it on the ' +
      'other, or take it off, before anything else is done.',
  },
  {
    code: 'ORD-043',
    title: 'A piece half on that nothing holds, whatever share it takes',
    levels: ['stop'],
    source: TRADE,
    cites: 'R10, V1',
    says:
      'With a piece of both on {set} only, at {height}, it carries none of it or all of it: ' +
      '{measured}. {what} holds {limit} that way.',
  },
  {
    code: 'ORD-044',
    title: 'Bricks in hand at two galleries, for both of a pair',
    levels: ['stop'],
    source: COMMON,
    cites: 'V6, X3',
    says:
      'Bricks are handled at {gallery} for {set} while {other} is at work for {partner}. One ' +
      'gallery at a time: reopen the drop zone of {other} first.',
  },
  {
    code: 'ORD-045',
    title: 'If one of a pair stops and the other goes on, nothing holds it',
    levels: ['stop'],
    source: TRADE,
    cites: 'R10, HOLD after the worst single fault',
    says:
      'If {partner} stops, or {set}, with {set} at {height}, {set} has {share} of the piece: ' +
      '{measured}. {what} holds {limit}, and people are in its path.',
  },
  {
    code: 'ORD-046',
    title: 'If a piece is let go on one of a pair, the other is not held',
    levels: ['stop'],
    source: TRADE,
    cites: 'R10, HOLD after the worst single fault',
    says:
      'With hands on {partner}: if {item} is let go there, {set} at {height} has all of it: ' +
      '{measured}. {what} holds {limit}, and people are in its path.',
  },
] as const satisfies readonly RuleDeclaration[];
