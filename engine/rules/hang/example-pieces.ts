/** Built pieces for the tests of what lies or stands on the deck. */
import { metres } from '#quantities';
import type { Item } from '#show';
import { exampleItem, given } from '../example-house.ts';

/** 5 m tall; on set 7, 2 m from the plaster line, it is laid from 2 m to 7 m. */
export const flat: Item = {
  ...exampleItem,
  id: 'flat',
  name: 'Flat',
  kind: 'tipping',
  drop: given(metres(5)),
};

/** Stands on the deck with its batten at 4 + 0.5 m. */
export const unit: Item = {
  ...exampleItem,
  id: 'unit',
  name: 'Unit',
  kind: 'standing',
  drop: given(metres(4)),
  pick: given(metres(0.5)),
};
