/** Drop, picks, centre and loom end of an item, read as figures. */
import type { Known } from '#house';
import type { Refusal } from '#outcome';
import type { Item } from '#show';
import type { Figure, FigureName } from './figure.ts';
import { figureOf } from './figure.ts';
import { refuse } from './refusal-codes.ts';

export const DROP: FigureName = {
  symbol: 'D',
  meaning: 'drop, from its top to its lowest point',
  kind: 'length',
  field: 'drop',
};

export const dropOf = ({ drop }: Pick<Item, 'drop'>): Figure => figureOf(drop, DROP, {});

export const pickOf = ({ pick }: Item): Figure =>
  figureOf(
    pick,
    {
      symbol: 's',
      meaning: 'length of picks or ties, from batten to its top',
      kind: 'length',
      field: 'pick',
      ifNone: '0 m',
    },
    {},
  );

/** Above the foot as a share of the drop, as somebody has measured or given it. */
export const givenCentreOf = ({ centre }: Item): Figure => {
  const figure = figureOf(
    centre,
    {
      symbol: 'c',
      meaning: 'centre of gravity above the foot, as a share of the drop',
      kind: 'ratio',
      field: 'centre',
    },
    {},
  );
  if (figure.value === null || figure.value <= 1) return figure;
  const said = { found: String(figure.value), accepted: 'a share from 0 to 1' };
  const need = `${figure.meaning} (centre): found ${said.found}, wanted ${said.accepted}`;
  return {
    ...figure,
    value: null,
    needs: [need],
    faults: [refuse('centreOutside', 'centre', said)],
  };
};

export const loomEndOf = (fixedAt: Known<number>): Figure =>
  figureOf(
    fixedAt,
    {
      symbol: 'z_c',
      meaning: 'height of the fixed end of the loom above the deck',
      kind: 'length',
      field: 'takeoff.fixedAt',
    },
    {},
  );

export const sizeFaults = (item: Item): readonly Refusal[] => [
  ...dropOf(item).faults,
  ...pickOf(item).faults,
  ...givenCentreOf(item).faults,
  ...(item.takeoff.by === 'loom' ? loomEndOf(item.takeoff.fixedAt).faults : []),
];
