/** What a house document may hold, field by field; line sets have a file of their own. */
import type { Basis, HouseRules } from '#house';
import { BASES } from '#house';
import { brickSample } from './brick-sample.ts';
import { envelopeOf } from './envelope.ts';
import { lineSetShape, setTypeShape } from './line-set-shape.ts';
import { list, orNull, pair, record } from './shape/collections.ts';
import * as known from './shape/known-values.ts';
import { orUnknown } from './shape/known-values.ts';
import { SHARE } from './shape/limits.ts';
import { across, level, measure, plain, upstage, width } from './shape/measure.ts';
import type { ReadOf } from './shape/object.ts';
import { filled, leftOut, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { mapped } from './shape/shape.ts';
import { choice, count, flag, id, name, remark } from './shape/words.ts';

const GIVEN = { given: true };
export const SETS_MAX = 500;

const stage = object(
  {
    openingWidth: orUnknown(known.knownLength, 'Width of the proscenium opening.'),
    openingHeight: orUnknown(known.knownLength, 'Height of the proscenium opening.'),
    backWall: orUnknown(known.knownLength, 'Plaster line to the back wall.'),
    gridHeight: orUnknown(known.knownLength, 'Height of the grid above the deck.'),
    loftBlockHeight: orUnknown(known.knownLength, 'Height of the line below the loft blocks.'),
    headBlockHeight: orUnknown(known.knownLength, 'Height of the centre of the head blocks.'),
    operatingSide: needed(
      choice(['stageRight', 'stageLeft']),
      'Wall on which the arbors run: stageRight or stageLeft.',
    ),
    operatingX: orUnknown(known.knownAcross, 'Place of that wall, positive to stage left.'),
  },
  GIVEN,
);

const toleranceShare: Shape<number> = plain(
  measure('ratio', SHARE, (share) => share),
  0,
);

const toleranceByBasis = object(
  Object.fromEntries(
    BASES.map((basis) => [basis, leftOut(toleranceShare, `Tolerance of what is ${basis}.`)]),
  ),
) as Shape<Readonly<Partial<Record<Basis, number>>>>;

const ruleFields = {
  lockLimit: orUnknown(known.knownForce, 'Largest imbalance that a rope lock may hold.'),
  lockTestEvery: orUnknown(
    known.knownTestEvery,
    'Age at which the grip test of a lock is due again.',
  ),
  handLineLimit: orUnknown(known.knownForce, 'Working load of the hand line.'),
  pullBrief: orUnknown(known.knownForce, 'Brief pull of one person.'),
  pullSteady: orUnknown(known.knownForce, 'Steady pull of one person.'),
  peoplePerHandLine: orUnknown(known.knownPeople, 'Most people on one hand line.'),
  frictionShare: orUnknown(known.knownShare, 'Friction until measured, as a share of the load.'),
  frictionConstant: orUnknown(known.knownForceOrNone, 'Friction until measured, the fixed part.'),
  clipsForbidden: orUnknown(known.knownFlag, 'Whether wire rope clips are forbidden.'),
  lineDesignFactor: orUnknown(
    known.knownDesignFactor,
    'Breaking strength of a lift line over what it may carry, as a number such as 8.',
  ),
  sheaveRatio: orUnknown(
    known.knownSheaveRatio,
    'Least diameter of a sheave over that of its line, as a number.',
  ),
  fleetAngleLimit: orUnknown(
    known.knownFleetAngle,
    'How far a line may leave the plane of its sheave.',
  ),
  movingShare: orUnknown(
    known.knownAdded,
    'Added to the loads of a set that moves, for starts and stops.',
  ),
  sagLimit: orUnknown(
    known.knownShare,
    'Largest sag between two lines, as a share of their distance.',
  ),
  staleAfter: orUnknown(known.knownStaleAfter, 'Age at which a record is too old to act on.'),
  toleranceByBasis: filled(toleranceByBasis, {}, 'Tolerance of a value that gives none itself.'),
};

const houseRules: Shape<HouseRules> = mapped(
  object(ruleFields, GIVEN),
  ({ staleAfter, lockTestEvery, ...rules }) => ({
    ...rules,
    staleAfterSeconds: staleAfter,
    lockTestEverySeconds: lockTestEvery,
  }),
);

const SERVICES = ['pipeWeight', 'show'] as const;

const brickKind = mapped(
  object(
    {
      id: needed(id, 'Id of the kind, as counts name it.'),
      name: needed(name, 'Name of the kind.'),
      mass: orUnknown(known.knownMass, 'Mass of one, from a weighed sample of this house.'),
      sample: leftOut(brickSample, 'Bricks that were weighed; the mass then comes from them.'),
      thickness: orUnknown(known.knownLength, 'Thickness of one.'),
      floorLength: orUnknown(
        known.knownLength,
        'Length of gallery floor that one takes in a row along the wall.',
      ),
      serves: needed(
        list(choice(SERVICES), { min: 1, max: SERVICES.length }),
        'What it is used for: pipeWeight, show, or both.',
      ),
      looksLike: filled(list(id, { max: 50 }), [], 'Kinds that a loader can mistake it for.'),
      owned: orUnknown(known.knownOwned, 'How many the house owns.'),
      remark: leftOut(remark, 'Anything else worth knowing.'),
    },
    GIVEN,
  ),
  (kind) => ({
    ...kind,
    serves: {
      pipeWeight: kind.serves.includes('pipeWeight'),
      show: kind.serves.includes('show'),
    },
  }),
);

const spreader = object(
  {
    mass: orUnknown(known.knownMass, 'Mass of one plate.'),
    thickness: orUnknown(known.knownLength, 'Thickness of one plate.'),
    every: orUnknown(known.knownLength, 'Thickness of bricks between two plates.'),
    inCarriage: needed(flag, 'Whether the mass of a carriage already has the plates.'),
  },
  GIVEN,
);

const gallery = object(
  {
    id: needed(id, 'Id of the gallery.'),
    name: needed(name, 'Name of the gallery.'),
    floor: orUnknown(known.knownHeight, 'Height of its floor.'),
    reachLow: orUnknown(known.knownGap, 'Lowest plate a loader can handle, above the floor.'),
    reachHigh: orUnknown(known.knownLength, 'Highest plate a loader can handle, above the floor.'),
    length: orUnknown(known.knownLength, 'Length of the gallery.'),
    width: orUnknown(known.knownLength, 'Width of the gallery.'),
    floorLimit: orUnknown(known.knownPressure, 'What its floor carries.'),
    lineLoadLimit: orUnknown(known.knownForcePerLength, 'What its floor carries for each length.'),
    coursesAllowed: orUnknown(known.knownCourses, 'How many bricks may lie on one another.'),
    peopleAndTools: orUnknown(
      known.knownMassOrNone,
      'People and their tools who stand on it while it is loaded, together.',
    ),
  },
  GIVEN,
);

const rail = object(
  {
    id: needed(id, 'Id of the rail.'),
    name: needed(name, 'Name of the rail.'),
    floor: orUnknown(known.knownHeight, 'Height of the floor on which the operators stand.'),
  },
  GIVEN,
);

const bay = object(
  {
    id: needed(id, 'Id of the bay of the head-block beam.'),
    sets: needed(list(id, { max: SETS_MAX }), 'Line sets whose head blocks stand on it.'),
    verticalLimit: orUnknown(known.knownForce, 'What it carries downward.'),
    horizontalLimit: orUnknown(known.knownForce, 'What it carries toward the loft blocks.'),
  },
  GIVEN,
);

const loftWell = object(
  {
    id: needed(id, 'Id of the loft well.'),
    x: needed(across, 'Its middle across the stage, positive to stage left.'),
    width: needed(width, 'Lines within half of it on either side stand on this well.'),
    limit: orUnknown(known.knownForce, 'What it carries of all its lines together.'),
  },
  GIVEN,
);

const eye = object({
  id: needed(id, 'Id of the eye.'),
  name: needed(name, 'Whose eye it is.'),
  x: needed(across, 'Across the stage, positive to stage left.'),
  y: needed(upstage, 'From the plaster line, negative towards the house.'),
  z: needed(level, 'Height of the eye above the deck.'),
});

const keepOut = object({
  id: needed(id, 'Id of the keep-out.'),
  name: needed(name, 'What must stay clear.'),
  x: leftOut(pair(across, across), 'From and to across the stage; absent: all of it.'),
  y: leftOut(pair(upstage, upstage), 'From and to upstage; absent: all of it.'),
  z: leftOut(pair(orNull(level), orNull(level)), 'From and to in height; null: it goes on.'),
  remark: leftOut(remark, 'Anything else worth knowing.'),
});

const opening = object({
  id: needed(id, 'Id of the opening.'),
  name: needed(name, 'Which trap, lift or pit it is.'),
  x: leftOut(pair(across, across), 'From and to across the stage; absent: all of it.'),
  y: needed(pair(upstage, upstage), 'From and to upstage.'),
  remark: leftOut(remark, 'Anything else worth knowing.'),
});

const equipment = object(
  {
    id: needed(id, 'Id of the aid.'),
    name: needed(name, 'What it is.'),
    count: needed(count({ min: 1, max: 1000 }), 'How many there are.'),
    rating: orUnknown(known.knownForce, 'What one is rated for.'),
    remark: leftOut(remark, 'Anything else worth knowing.'),
  },
  GIVEN,
);

const houseFields = {
  ...envelopeOf('house'),
  id: needed(id, 'Id of the house, by which a show names it.'),
  name: needed(name, 'Name of the house.'),
  demo: filled(flag, false, 'Whether it is made up for showing and learning.'),
  units: needed(choice(['customary', 'metric']), 'Units that this house speaks.'),
  words: needed(choice(['US', 'UK']), 'Words that this house speaks.'),
  language: leftOut(choice(['en', 'de']), 'Language of its sheets: en or de. English if left out.'),
  stage: needed(stage, 'The stage, with at least its operatingSide.'),
  rules: filled(houseRules, houseRules.standIn, 'What the house has decided for itself.'),
  brickKinds: filled(list(brickKind, { max: 50 }), [], 'Kinds of brick.'),
  spreader: filled(spreader, null, 'Spreader plates, where the house has any.'),
  galleries: filled(list(gallery, { max: 20 }), [], 'Loading galleries.'),
  rails: filled(list(rail, { max: 20 }), [], 'Rails from which sets are flown.'),
  bays: filled(list(bay, { max: 100 }), [], 'Bays of the head-block beam.'),
  loftWells: filled(list(loftWell, { max: 100 }), [], 'Slots in the grid with the loft blocks.'),
  eyes: filled(list(eye, { max: 100 }), [], 'Eyes of the public.'),
  keepOuts: filled(list(keepOut, { max: 200 }), [], 'Boxes that nothing may enter.'),
  openings: filled(list(opening, { max: 100 }), [], 'Openings in the deck.'),
  equipment: filled(list(equipment, { max: 100 }), [], 'Bull lines, winches and other aids.'),
  setTypes: filled(record(setTypeShape, { max: 100 }), {}, 'What line sets have in common.'),
  lineSets: filled(list(lineSetShape, { max: SETS_MAX }), [], 'The line sets.'),
  remarks: filled(list(remark, { max: 200 }), [], 'Remarks on the whole, one a line.'),
};

export const houseShape = object(houseFields, GIVEN);

/** A house as it is written: set types and line sets not yet put together. */
export type WrittenHouse = ReadOf<typeof houseFields>;
