/** A call just opened on the demo house, for tests of what the desk makes of it. */
import { foldEvent, NOTHING_OPEN, openingOf } from '#call';
import type { HouseEvent } from '#events';
import type { House } from '#house';
import { assert } from '#outcome';
import type { Show } from '#show';
import type { HouseNow, HouseState, SetNow } from '#state';
import { documentsOf } from '../order/example-work.ts';

const AT_MS = Date.UTC(2026, 10, 28, 16);

/** What the fold reads of an event, and no more. */
const happened = (draft: object, seq: number): HouseEvent =>
  ({
    ...{ seq, id: `e${seq}`, atMs: AT_MS + seq * 1000, by: null, device: 'dev', commandId: null },
    ...{ previous: '', hash: '' },
    ...draft,
  }) as HouseEvent;

type Example = { readonly house: House; readonly show: Show; readonly state: HouseState };

/** The documents of a demo, read as the screens read them, and a call just opened on them. */
export const openedOn = (
  raw: Parameters<typeof documentsOf>[0],
): { readonly example: Example; readonly now: HouseNow } => {
  const { house, show, state } = documentsOf(raw);
  assert(state !== null, 'the demo has a record of how its sets stand');
  const payload = {
    ...{ call: 'call-1', house: house.id, show: show.id, isDrill: false, documents: [] },
    ...openingOf({ house, state }, AT_MS),
  };
  const opened = { kind: 'call opened', target: 'house', payload };
  return { example: { house, show, state }, now: foldEvent(NOTHING_OPEN, happened(opened, 1)) };
};

/** The same with other sets. */
export const withSets = (
  now: HouseNow,
  sets: Readonly<Record<string, Partial<SetNow>>>,
): HouseNow => ({
  ...now,
  sets: {
    ...now.sets,
    ...Object.fromEntries(
      Object.entries(sets).map(([id, part]) => {
        const set = now.sets[id];
        if (set === undefined) throw new Error(`the demo has no set ${id}`);
        return [id, { ...set, ...part }];
      }),
    ),
  },
});

export const setOf = ({ sets }: HouseNow, id: string): SetNow => {
  const set = sets[id];
  if (set === undefined) throw new Error(`the demo has no set ${id}`);
  return set;
};
