/** What hangs: items, how they load their batten, where they pull, and how they are taken off. */
import { unknownValue } from '#house';
import type { ItemKind, Placement, Release, Takeoff } from '#show';
import { ITEM_KINDS } from '#show';
import { boundsInOrder } from './bounds.ts';
import { describe, isObject } from './json.ts';
import { list, only, variant } from './shape/collections.ts';
import * as known from './shape/known-values.ts';
import { orUnknown } from './shape/known-values.ts';
import { across } from './shape/measure.ts';
import { filled, leftOut, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { checked, inside } from './shape/shape.ts';
import { sourced } from './shape/sourced.ts';
import { choice, count, flag, id, name, readNumber, remark } from './shape/words.ts';

const GIVEN = { given: true };
const PARTS_MAX = 1000;
const many = count({ min: 1, max: 10_000 });

const byMass = object(
  {
    by: needed(only('mass'), 'The mass is simply known.'),
    mass: orUnknown(known.knownMass, 'Mass of the whole item, without a hem given below.'),
    hem: filled(known.knownMassOrNone, null, 'Pipe or chain in the hem of a cloth; 0 if none.'),
  },
  GIVEN,
);

const ties = object(
  {
    count: orUnknown(known.knownTies, 'How many ties.'),
    each: orUnknown(known.knownMass, 'Mass of one.'),
  },
  GIVEN,
);

const byCloth = object(
  {
    by: needed(only('cloth'), 'From the size of a cloth and its weight for each area.'),
    width: orUnknown(known.knownLength, 'Finished width.'),
    areaMass: orUnknown(known.knownMassPerArea, 'Mass of the flat cloth for each area.'),
    fullness: orUnknown(known.knownAdded, 'Cloth added: 50 % is one and a half widths.'),
    hemAllowance: orUnknown(known.knownAdded, 'Hems, facings and webbing, added.'),
    paint: orUnknown(known.knownAdded, 'Paint, added.'),
    moisture: orUnknown(known.knownAdded, 'Moisture, added.'),
    bottomMassPerLength: filled(
      known.knownMassPerLengthOrNone,
      null,
      'Pipe or chain in the hem; 0 where there is none.',
    ),
    ties: filled(ties, null, 'Ties at the top, if they are counted.'),
  },
  GIVEN,
);

const part = {
  name: needed(name, 'What it is.'),
  count: needed(many, 'How many.'),
};
const placedPart = {
  ...part,
  z: orUnknown(known.knownGap, 'Height of its centre above the foot of the piece.'),
};

const byFrame = object(
  {
    by: needed(only('frame'), 'From timber, tube, sheets and fixings.'),
    members: filled(
      list(
        object(
          {
            ...placedPart,
            length: orUnknown(known.knownLength, 'Length of one.'),
            massPerLength: orUnknown(known.knownMassPerLength, 'Mass for each length.'),
          },
          GIVEN,
        ),
        { max: PARTS_MAX },
      ),
      [],
      'Timber and tube.',
    ),
    sheets: filled(
      list(
        object(
          {
            ...placedPart,
            area: orUnknown(known.knownArea, 'Area of one.'),
            massPerArea: orUnknown(known.knownMassPerArea, 'Mass for each area.'),
          },
          GIVEN,
        ),
        { max: PARTS_MAX },
      ),
      [],
      'Ply, cloth and other sheets.',
    ),
    hardware: filled(
      list(object({ ...placedPart, each: orUnknown(known.knownMass, 'Mass of one.') }, GIVEN), {
        max: PARTS_MAX,
      }),
      [],
      'Fixings and fittings.',
    ),
    allowance: orUnknown(known.knownAdded, 'Paint, glue and fixings, added.'),
  },
  GIVEN,
);

const unit = checked(
  object(
    {
      ...part,
      each: orUnknown(known.knownMass, 'Mass of one.'),
      clampEach: filled(known.knownMassOrNone, null, 'Mass of its clamp, if not counted in.'),
      xs: filled(list(across, { min: 1, max: PARTS_MAX }), null, 'Places along the batten.'),
    },
    GIVEN,
  ),
  ({ count: units, xs }, place) => {
    if (xs === null || xs.length === units) return;
    place.faults.refuse('placesMiscounted', inside(place, 'xs').path, {
      found: `${xs.length} places for ${units} units`,
      accepted: 'a place for each unit, or no places',
    });
  },
);

const byUnits = object(
  {
    by: needed(only('units'), 'From a row of luminaires or other units.'),
    units: needed(list(unit, { min: 1, max: PARTS_MAX }), 'The units, kind by kind.'),
  },
  GIVEN,
);

const byLoom = object(
  {
    by: needed(only('loom'), 'From a length of cable.'),
    massPerLength: orUnknown(known.knownMassPerLength, 'Mass of the loom for each length.'),
    length: orUnknown(known.knownLength, 'Its full length.'),
    fixedAt: orUnknown(known.knownHeight, 'Height of its far end above the deck.'),
  },
  GIVEN,
);

const byPipe = object(
  {
    by: needed(only('pipe'), 'From a second pipe hung below the batten.'),
    length: orUnknown(known.knownLength, 'Its length.'),
    massPerLength: orUnknown(known.knownMassPerLength, 'Its mass for each length.'),
    fittings: filled(known.knownMassOrNone, null, 'Its fittings, if any.'),
  },
  GIVEN,
);

const byHardware = object(
  {
    by: needed(only('hardware'), 'From rigging hardware.'),
    lines: needed(
      list(object({ ...part, each: orUnknown(known.knownMass, 'Mass of one.') }, GIVEN), {
        min: 1,
        max: PARTS_MAX,
      }),
      'Wires, shackles, chains and the like.',
    ),
  },
  GIVEN,
);

export const takeoff: Shape<Takeoff> = variant('by', {
  mass: byMass,
  cloth: byCloth,
  frame: byFrame,
  units: byUnits,
  loom: byLoom,
  pipe: byPipe,
  hardware: byHardware,
});

const knownCentre = sourced({
  schema: { type: 'number', minimum: 0, maximum: 1, examples: [0.46] },
  called: 'centre',
  read: (value, place) => {
    const accepted = 'a share of the height of the piece, from 0 at its foot to 1 at its top';
    const centre = readNumber(value, place, accepted);
    if (centre === undefined || (centre >= 0 && centre <= 1)) return centre;
    place.faults.refuse('centreOutside', place.path, { found: describe(centre), accepted });
    return undefined;
  },
  tolerance: (value, written, place) => {
    const half = readNumber(written, place, 'a share of the height, such as 0.05');
    if (half === undefined || (half >= 0 && half <= Math.max(value, 1 - value))) return half;
    place.faults.refuse(half < 0 ? 'negative' : 'toleranceTooLarge', place.path, {
      found: describe(half),
      accepted: 'a share of the height, such as 0.05, no more than there is',
    });
    return undefined;
  },
});

const points = object({
  points: needed(list(across, { min: 1, max: 100 }), 'Places of the single points.'),
});
const spread = checked(
  object({
    from: needed(across, 'Where it begins, to stage right.'),
    to: needed(across, 'Where it ends, to stage left.'),
  }),
  ({ from, to }, place) => boundsInOrder(from, to, place),
);

export const placement: Shape<Placement> = {
  schema: { oneOf: [points.schema, spread.schema] },
  standIn: { at: 'points', xs: [] },
  read: (value, place) =>
    isObject(value) && !Object.hasOwn(value, 'points')
      ? { at: 'spread', ...spread.read(value, place) }
      : { at: 'points', xs: points.read(value, place).points },
};

const release: Shape<Release> = object(
  {
    mass: orUnknown(known.knownMass, 'Mass that leaves.'),
    how: needed(name, 'What leaves, and how.'),
    cue: leftOut(id, 'Number of the cue in which it leaves.'),
  },
  GIVEN,
);

const itemFields = {
  id: needed(id, 'Id of the item on its set.'),
  name: needed(name, 'Name of the item.'),
  kind: needed(choice<ItemKind>(ITEM_KINDS), 'How it loads the batten as the batten travels.'),
  takeoff: needed(takeoff, 'How its mass is worked out.'),
  drop: orUnknown(known.knownGap, 'From its top to its lowest point.'),
  pick: orUnknown(known.knownGap, 'From the batten to its top.'),
  centre: orUnknown(knownCentre, 'Centre of gravity above the foot, as a share of the drop.'),
  placement: filled(placement, null, 'Where along the batten it pulls.'),
  releases: filled(list(release, { max: 100 }), [], 'Parts that leave in view.'),
  carriesPerson: filled(flag, false, 'Tagged as carrying a person: out of scope, all stops.'),
  remark: leftOut(remark, 'Anything else worth knowing.'),
};

const itemAsWritten = object(itemFields, GIVEN);

const HEM_NOT_SAID = 'not said: write 0 where the hem has no pipe or chain';

/**
 * A cloth of whose hem nothing is said has an unknown hem, not none: what lies in it arrives all
 * at once, and leaving it out would hide that.
 */
const withHem = (takeoff: Takeoff): Takeoff => {
  if (takeoff.by === 'mass' && takeoff.hem === null) {
    return { ...takeoff, hem: unknownValue(HEM_NOT_SAID) };
  }
  return takeoff.by === 'cloth' && takeoff.bottomMassPerLength === null
    ? { ...takeoff, bottomMassPerLength: unknownValue(HEM_NOT_SAID) }
    : takeoff;
};

export const item: typeof itemAsWritten = {
  ...itemAsWritten,
  read: (value, place) => {
    const read = itemAsWritten.read(value, place);
    return read.kind === 'cloth' ? { ...read, takeoff: withHem(read.takeoff) } : read;
  },
};
