import type { RuleDeclaration } from '../rule.ts';

export const HANG_RULES = [
  {
    code: 'PER-001',
    title: 'Item tagged as carrying a person',
    levels: ['stop'],
    source: 'out of scope',
    cites: '',
    says:
      '{piece} is tagged as carrying a person. Nothing here is for that: refer to a specialist ' +
      'performer-flying designer and operator.',
  },
  {
    code: 'KIN-001',
    title: 'Bricks planned on a set that takes none',
    levels: ['stop'],
    source: 'trade formula',
    cites: 'C53',
    says: '{bricks} are planned on a {suspension} set, which takes no bricks.',
  },
  {
    code: 'KIN-002',
    title: 'Held by steel, not by its arbor',
    levels: ['caution'],
    source: 'trade formula',
    cites: 'C15',
    says:
      'Dead-hung at {height}. With the bricks of the plan it is {measured} there if the steel ' +
      'lets go.',
  },
  {
    code: 'LOM-001',
    title: 'Loom too short',
    levels: ['stop'],
    source: 'trade formula',
    cites: 'C18',
    says: '{piece} is {limit} long and needs {measured} at {where}, {height}.',
  },
  {
    code: 'LOM-002',
    title: 'Loom lies on the deck',
    levels: ['note'],
    source: 'trade formula',
    cites: 'C18',
    says: '{measured} of {piece} lies on the deck with the batten at {height}.',
  },
  {
    code: 'COU-001',
    title: 'Coupled hang without its partner',
    levels: ['stop', 'caution'],
    source: 'trade formula',
    cites: 'C23',
    says: '{hang} is coupled with set {partner}: {trouble}.',
  },
  {
    code: 'DCK-001',
    title: 'Deck not clear to lay a piece',
    levels: ['caution'],
    source: 'common practice, no source',
    cites: 'R5',
    says:
      '{piece} is laid and raised on the deck from {from} to {to} upstage. {other} of set ' +
      '{otherSet} stands there at its in trim: it must be out.',
  },
] as const satisfies readonly RuleDeclaration[];
