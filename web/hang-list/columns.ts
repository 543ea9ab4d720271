/** The columns of the hang list, by name: what each is called, and what may be done with it. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { lengthUnit, massUnit } from '../frame/unit-words.ts';

export const COLUMNS = [
  'set',
  'position',
  'item',
  'items',
  'kind',
  'in',
  'out',
  'depth',
  'hung',
  'bricks',
  'stack',
  'balance',
  'atIn',
  'atOut',
  'findings',
  'knownBy',
] as const;

export type Column = (typeof COLUMNS)[number];

/** What a person types; all else is worked out, or is a matter of the house. */
export const TYPED_COLUMNS = ['item', 'kind', 'in', 'out', 'depth'] as const;

export type TypedColumn = (typeof TYPED_COLUMNS)[number];

export const isTyped = (column: string): column is TypedColumn =>
  TYPED_COLUMNS.some((each) => each === column);

export const isColumn = (name: string): name is Column => COLUMNS.some((each) => each === name);

/** Without its number and its name a row says nothing, and its findings must not be overlooked. */
const ALWAYS_SHOWN: readonly Column[] = ['set', 'item', 'findings'];

export const HIDEABLE: readonly Column[] = COLUMNS.filter((each) => !ALWAYS_SHOWN.includes(each));

export type Head = {
  readonly column: Column;
  readonly words: string;
  readonly unit?: string;
  readonly className?: string;
};

export const headsOf = (house: House): readonly Head[] => {
  const trim = tradeWord(house, 'trim');
  const batten = tradeWord(house, 'batten');
  const small = house.units === 'customary' ? 'in' : 'm';
  return [
    { column: 'set', words: 'set', className: 'set-number' },
    { column: 'position', words: 'position', unit: lengthUnit(house), className: 'number' },
    { column: 'item', words: 'item', className: 'name' },
    { column: 'items', words: 'items' },
    { column: 'kind', words: 'kind' },
    { column: 'in', words: `in ${trim}`, unit: batten, className: 'number' },
    { column: 'out', words: `out ${trim}`, unit: batten, className: 'number' },
    { column: 'depth', words: 'depth', unit: `± ${small}`, className: 'number' },
    { column: 'hung', words: 'hung', unit: massUnit(house), className: 'number' },
    { column: 'bricks', words: tradeWord(house, 'bricks'), unit: 'show', className: 'number' },
    { column: 'stack', words: 'stack', unit: small, className: 'number' },
    { column: 'balance', words: 'balance', className: 'slice' },
    { column: 'atIn', words: 'at in', unit: massUnit(house), className: 'number' },
    { column: 'atOut', words: 'at out', unit: massUnit(house), className: 'number' },
    { column: 'findings', words: 'findings', className: 'findings' },
    { column: 'knownBy', words: 'known by', className: 'known-by' },
  ];
};

export const headWords = (column: Column, house: House): string =>
  headsOf(house).find((head) => head.column === column)?.words ?? column;
