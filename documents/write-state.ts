/** A record of how things stand as a document; what is not known is left out, as it is read. */
import type { UnitSystem } from '#quantities';
import type { GalleryState, HouseState, Knowledge, SetState } from '#state';
import type { Json, JsonObject } from './json.ts';
import { CURRENT_VERSION } from './migrations.ts';
import { forceText, lengthText, restraintOf } from './write-measure.ts';

export const stateDocument = (state: HouseState, units: UnitSystem): JsonObject => ({
  format: 'counterpoise-state',
  version: CURRENT_VERSION,
  house: state.houseId,
  ...(state.demo ? { demo: true } : {}),
  at: state.at,
  by: state.by,
  sets: eachOf(state.sets, (set) => setOf(set, units)),
  galleries: eachOf(state.galleries, galleryOf),
  ...(state.remarks.length > 0 ? { remarks: [...state.remarks] } : {}),
});

const eachOf = <T>(record: Readonly<Record<string, T>>, write: (value: T) => Json): JsonObject =>
  Object.fromEntries(Object.entries(record).map(([id, value]) => [id, write(value)]));

/** Without the fields that are null: absent and unknown are one. */
const known = (fields: Readonly<Record<string, Json | null>>): JsonObject =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));

const setOf = (set: SetState, units: UnitSystem): Json =>
  known({
    height: heightOf(set.height, units),
    lock: set.lock,
    ring: set.ring,
    collar: set.collar,
    stack: set.stack?.map(({ kind, count, tag }) => ({ kind, count, tag })) ?? null,
    items:
      set.items === null
        ? null
        : Object.fromEntries(set.items.map(({ item, phase }) => [item, phase])),
    restraints: set.restraints?.map((each) => restraintOf(each, units)) ?? null,
    service: set.service,
    tag: set.tag === null ? null : { ...set.tag },
    knowledge: knowledgeOf(set.knowledge),
    pullTest: pullTestOf(set.pullTest, units),
  });

const heightOf = (height: SetState['height'], units: UnitSystem): Json | null => {
  if (height === null) return null;
  const { low, high } = height;
  return low === high ? lengthText(low, units) : [lengthText(low, units), lengthText(high, units)];
};

const knowledgeOf = ({ basis, at, by, second }: Knowledge): Json =>
  known({ basis, at, by, second });

const pullTestOf = (test: SetState['pullTest'], units: UnitSystem): Json | null =>
  test === null
    ? null
    : {
        out: forceText(test.out, units),
        in: forceText(test.in, units),
        height: lengthText(test.height, units),
        at: test.at,
        by: test.by,
      };

const galleryOf = ({ stock, reserved, countedAt, countedBy }: GalleryState): Json =>
  known({
    stock: { ...stock },
    reserved: reserved.length > 0 ? reserved.map((each) => ({ ...each })) : null,
    countedAt,
    countedBy,
  });
