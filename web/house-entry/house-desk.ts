/** The desk of the whole house: every edit is read with all that names it before it is taken. */
import { useMemo } from 'react';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import {
  givenAbove,
  type HouseEdit,
  houseRefusals,
  inheritedAt,
  type Referring,
  referencesTo,
  withHouseValue,
  withRenamed,
} from '../editing/house-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import type { KeeperState } from '../keeping/kept.ts';
import { useKeeper, useKeeperState } from '../keeping/use-keeper.ts';
import { useWork } from '../reckoning/use-work.ts';
import type { Desk, Named } from './desk.ts';
import { fieldName, idKeys } from './entry-path.ts';
import { FieldsView } from './field-view.tsx';

/** Every show of the house, not only the one in view, and the record of how things stand. */
export const referringTo = (state: KeeperState, house: JsonObject): Referring => {
  const kept = state.phase === 'open' ? Object.values(state.documents) : [];
  const ofHouse = kept.filter(({ document }) => document['house'] === house['id']);
  const record = ofHouse.find(({ kind }) => kind === 'state');
  return {
    shows: ofHouse.filter(({ kind }) => kind === 'show').map(({ document }) => document),
    state: record?.document ?? null,
  };
};

export type HouseEditing = {
  readonly root: JsonObject;
  readonly house: House;
  readonly referring: Referring;
  readonly change: (edit: HouseEdit) => readonly Refusal[];
};

export const useHouseEditing = (): HouseEditing => {
  const keeper = useKeeper();
  const { kept, house } = useWork();
  const state = useKeeperState();
  const root = kept.house.document;
  const { id } = kept.house;
  return useMemo(() => {
    const referring = referringTo(state, root);
    return {
      root,
      house,
      referring,
      change: ({ write, what }) => {
        const now = keeper.state();
        const latest = now.phase === 'open' ? now.documents[id]?.document : undefined;
        if (latest === undefined) return [];
        const next = write(latest);
        const refusals = houseRefusals(next, house, referringTo(now, latest));
        if (refusals.length === 0) keeper.edit(id, next, what);
        return refusals;
      },
    };
  }, [keeper, root, id, house, state]);
};

const namedIn = (house: House, list: string): readonly Named[] => {
  switch (list) {
    case 'rails':
      return house.rails;
    case 'brickKinds':
      return house.brickKinds;
    case 'lineSets':
      return house.lineSets.map(({ id }) => ({ id, name: id }));
    default:
      return [];
  }
};

export const useHouseDesk = (): Desk => {
  const { root, house, referring, change } = useHouseEditing();
  return useMemo(() => {
    const setTypes = Object.keys((root['setTypes'] ?? {}) as JsonObject);
    return {
      root,
      house,
      keysOf: (path) => idKeys(root, path),
      put: (path, value, label) =>
        change({
          write: (latest) => withHouseValue(latest, path, value),
          what: `${label}: ${fieldName(idKeys(root, path))}`,
        }),
      givenAt: (path) => givenAbove(root, path),
      inheritedAt: (path) => inheritedAt(root, path),
      Fields: FieldsView,
      naming: {
        namedBy: (list, which) => referencesTo(list, which, referring, house),
        rename: (list, from, to) =>
          change({
            write: (latest) => withRenamed(latest, list, { from, to }),
            what: `${from} is now ${to}: ${list}`,
          }),
      },
      named: (list) =>
        list === 'setTypes' ? setTypes.map((id) => ({ id, name: id })) : namedIn(house, list),
    };
  }, [root, house, referring, change]);
};
