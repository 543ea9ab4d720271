/** A house in the middle of a call, made from the record of an example, for tests of this room. */
import { standingOf } from '#assessment';
import type { HouseNow, SetNow } from '#state';
import type { SheetContext } from './index.ts';

export const OPENED_MS = Date.parse('2026-11-25T15:00:00Z');

const asOpened = (state: NonNullable<SheetContext['state']>['sets'][string]): SetNow => {
  const standing = standingOf(state);
  const known = standing.known ? standing.value : null;
  return {
    standing: known,
    last: known,
    doubt: known === null ? 'nobody has recorded how it stands' : null,
    knowledge: state.knowledge,
    held: known === null ? 'unknown' : 'held',
    rule: null,
    lock: 'closed',
    ring: 'on',
    collar: 'secured',
    lockDoubt: null,
    tag: state.tag,
    asked: null,
    leave: null,
    plan: null,
    since: known === null ? null : { start: known, steps: [] },
    changed: false,
    notes: [],
    overrides: [],
    pullTest: null,
    noteBy: {},
    pulledAs: null,
    weighed: {},
  };
};

/** As the call found it: every set as the document of the record has it. */
export const openedNow = ({ house, show, state }: SheetContext): HouseNow => ({
  seq: 7,
  call: {
    id: 'call-1',
    seq: 7,
    house: house.id,
    show: show?.id ?? '',
    openedMs: OPENED_MS,
    isDrill: false,
    documents: [],
  },
  sets: Object.fromEntries(
    Object.entries(state?.sets ?? {}).map(([id, set]) => [id, asOpened(set)]),
  ),
  galleries: Object.fromEntries(
    Object.entries(state?.galleries ?? {}).map(([id, { stock, countedAt, countedBy }]) => [
      id,
      { stock, countedMs: countedAt === null ? null : Date.parse(countedAt), countedBy },
    ]),
  ),
  posts: {},
  zones: [],
  stops: [],
});

/** The same with some sets otherwise. */
export const withSets = (
  now: HouseNow,
  changes: Readonly<Record<string, Partial<SetNow>>>,
): HouseNow => ({
  ...now,
  sets: Object.fromEntries(
    Object.entries(now.sets).map(([id, set]) => [id, { ...set, ...changes[id] }]),
  ),
});
