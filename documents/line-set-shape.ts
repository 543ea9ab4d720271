/**
 * Line sets and what they have in common. Every field of a set type may be written again in a line
 * set; there it holds instead, field by field, and a sourced value is replaced as a whole. So are
 * a tube and a cable, since another one keeps no value of the one that it replaces.
 */
import type { PlateRun } from '#house';
import { SUSPENSIONS } from '#house';
import type { Metres } from '#quantities';
import { LINES_MAX, lift, pipe, splices } from './lift-shape.ts';
import { listOrUnknown } from './list-or-unknown.ts';
import { list } from './shape/collections.ts';
import * as known from './shape/known-values.ts';
import { across } from './shape/measure.ts';
import type { ReadOf } from './shape/object.ts';
import { leftOut, needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { choice, count, id, name, remark } from './shape/words.ts';

const GIVEN = { given: true };
/** Plates of one kind on one arbor; a stack of 300 would stand five metres high. */
export const PLATES_MAX = 2000;

export const plateRun: Shape<PlateRun> = object({
  kind: needed(id, 'Id of the brick kind.'),
  count: needed(count({ min: 1, max: PLATES_MAX }), 'How many.'),
});

const lines: Shape<readonly Metres[] | null> = listOrUnknown(
  list(across, { min: 1, max: LINES_MAX }),
);
const pipeWeight = listOrUnknown(list(plateRun, { max: 20 }));

const stop = object(
  {
    height: leftOut(known.knownHeight, 'Height of the batten there.'),
    rated: leftOut(known.knownForceOrNone, 'Load that may stand on it; "0 N" where none may.'),
  },
  GIVEN,
);

const batten = object(
  {
    left: leftOut(known.knownAcross, 'Its end to stage right, negative there.'),
    right: leftOut(known.knownAcross, 'Its end to stage left.'),
    mass: leftOut(known.knownMass, 'With its fittings and what always hangs on it.'),
    massPerLength: leftOut(known.knownMassPerLength, 'Of the bare tube.'),
    fittingsPerLine: leftOut(known.knownMassOrNone, 'Fittings at each lift line, chain included.'),
    description: leftOut(name, 'What the tube is.'),
    pipe: leftOut(pipe, 'How the tube bends; as a whole, it holds instead of the one below.'),
    splices: leftOut(splices, 'Joints of the tube; an empty list where it has none.'),
  },
  GIVEN,
);

const arbor = object(
  {
    carriageMass: leftOut(known.knownMass, 'With rods, collars and locking plate, no bricks.'),
    pipeWeight: leftOut(pipeWeight, 'Bricks that balance the bare batten, from the bottom up.'),
    length: leftOut(known.knownLength, 'Length of the arbor.'),
    usableRod: leftOut(known.knownLength, 'Height of bricks and plates that its rods take.'),
    panAtLow: leftOut(known.knownHeight, 'Height of the bottom of the pan, batten on low stop.'),
    panThickness: leftOut(known.knownGap, 'Thickness of the pan.'),
    attachAbovePan: leftOut(known.knownGap, 'Where the lines meet it, above the pan bottom.'),
    massLimit: leftOut(known.knownMass, 'What it carries, itself included.'),
    topClearance: leftOut(known.knownGap, 'What must stay free above it.'),
    bottomClearance: leftOut(known.knownGap, 'What must stay free below it.'),
  },
  GIVEN,
);

const lock = object(
  {
    grip: leftOut(known.knownForceOrNone, 'What it held at the hand line in its grip test.'),
    failed: leftOut(known.knownFlag, 'Whether it failed its last test or inspection.'),
    remark: leftOut(remark, 'What was found.'),
  },
  GIVEN,
);

const setFields = {
  suspension: leftOut(choice(SUSPENSIONS), 'How the batten is carried.'),
  lines: leftOut(lines, 'Places of the lift lines, from stage right to stage left.'),
  lineMassPerLength: leftOut(known.knownMassPerLength, 'Of one lift line.'),
  lineLimit: leftOut(known.knownForce, 'Working load of one lift line.'),
  wireEndAbove: leftOut(known.knownGap, 'Lower end of the wire above the batten.'),
  batten: leftOut(batten, 'The tube that carries the load.'),
  lift: leftOut(lift, 'Lift lines and blocks.'),
  liveLimit: leftOut(known.knownMass, 'What may hang on the batten.'),
  pointLimit: leftOut(known.knownMass, 'What may hang at one place of the batten.'),
  perLengthLimit: leftOut(known.knownMassPerLength, 'What may hang on each length of it.'),
  lowStop: leftOut(stop, 'Where travel ends below.'),
  highStop: leftOut(stop, 'Where travel ends above.'),
  workingHeight: leftOut(known.knownHeight, 'Height at which the batten is worked on.'),
  arbor: leftOut(arbor, 'The arbor of a purchase set.'),
  handLinePerBatten: leftOut(
    known.knownHandLine,
    'Travel of the hand line for that of the batten.',
  ),
  rail: leftOut(id, 'Rail from which it is flown.'),
  remark: leftOut(remark, 'Anything else worth knowing.'),
};

const typeFields = {
  ...setFields,
  extends: leftOut(id, 'Set type of which this one is a variety.'),
};

const lineSetFields = {
  id: needed(id, 'Id of the line set, as cards and cues name it.'),
  type: needed(id, 'Its set type.'),
  y: leftOut(known.knownUpstage, 'Distance from the plaster line, upstage.'),
  lock: leftOut(lock, 'Its rope lock, as last tested; a test belongs to one set.'),
  ...setFields,
};

export const setTypeShape = object(typeFields, GIVEN);
export const lineSetShape = object(lineSetFields, GIVEN);

export type WrittenSet = ReadOf<typeof setFields>;
export type WrittenType = ReadOf<typeof typeFields>;
export type WrittenLineSet = ReadOf<typeof lineSetFields>;
