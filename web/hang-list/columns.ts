/** The columns of the hang list, by name: what each is called, and what may be done with it. */

import { tradeWord } from '#drawings';
import type { House } from '#house';
import { phrase } from '#texts';
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
    { column: 'set', words: phrase(house, 'set'), className: 'set-number' },
    {
      column: 'position',
      words: phrase(house, 'position'),
      unit: lengthUnit(house),
      className: 'number',
    },
    { column: 'item', words: phrase(house, 'item'), className: 'name' },
    { column: 'items', words: phrase(house, 'items') },
    { column: 'kind', words: phrase(house, 'kind') },
    {
      column: 'in',
      words: phrase(house, 'in {trim}', { trim }),
      unit: batten,
      className: 'number',
    },
    {
      column: 'out',
      words: phrase(house, 'out {trim}', { trim }),
      unit: batten,
      className: 'number',
    },
    { column: 'depth', words: phrase(house, 'depth'), unit: `± ${small}`, className: 'number' },
    { column: 'hung', words: phrase(house, 'hung'), unit: massUnit(house), className: 'number' },
    {
      column: 'bricks',
      words: tradeWord(house, 'bricks'),
      unit: phrase(house, 'show'),
      className: 'number',
    },
    { column: 'stack', words: phrase(house, 'stack'), unit: small, className: 'number' },
    { column: 'balance', words: phrase(house, 'balance'), className: 'slice' },
    { column: 'atIn', words: phrase(house, 'at in'), unit: massUnit(house), className: 'number' },
    { column: 'atOut', words: phrase(house, 'at out'), unit: massUnit(house), className: 'number' },
    { column: 'findings', words: phrase(house, 'findings'), className: 'findings' },
    { column: 'knownBy', words: phrase(house, 'known by'), className: 'known-by' },
  ];
};

export const headWords = (column: Column, house: House): string =>
  headsOf(house).find((head) => head.column === column)?.words ?? column;
