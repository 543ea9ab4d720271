/** The sourced values that documents are made of, each with its measure and its bounds. */
import type { Known } from '#house';
import { unknownValue } from '#house';
import {
  cubicMetres,
  kilograms,
  kilogramsPerMetre,
  kilogramsPerSquareMetre,
  metres,
  metresToTheFourth,
  newtons,
  newtonsPerMetre,
  pascals,
  radians,
  squareMetres,
} from '#quantities';
import * as limits from './limits.ts';
import { measure, plainNumber } from './measure.ts';
import { filled } from './object.ts';
import type { Shape } from './shape.ts';
import { sourced, yesOrNo } from './sourced.ts';

const asNumber = (si: number): number => si;

export const knownHeight = sourced(measure('length', limits.HEIGHT, metres));
export const knownAcross = sourced(measure('length', limits.ACROSS, metres));
export const knownUpstage = sourced(measure('length', limits.UPSTAGE, metres));
export const knownLength = sourced(measure('length', limits.LENGTH, metres));
/** A length that may be nothing: a pick of no length, a clearance used up. */
export const knownGap = sourced(measure('length', limits.GAP, metres));
export const knownMass = sourced(measure('mass', limits.MASS, kilograms));
export const knownMassOrNone = sourced(measure('mass', limits.MASS_OR_NONE, kilograms));
export const knownMassPerLength = sourced(
  measure('massPerLength', limits.MASS_PER_LENGTH, kilogramsPerMetre),
);
export const knownMassPerLengthOrNone = sourced(
  measure('massPerLength', limits.MASS_PER_LENGTH_OR_NONE, kilogramsPerMetre),
);
export const knownMassPerArea = sourced(
  measure('massPerArea', limits.MASS_PER_AREA, kilogramsPerSquareMetre),
);
export const knownArea = sourced(measure('area', limits.AREA, squareMetres));
export const knownForce = sourced(measure('force', limits.FORCE, newtons));
export const knownForceOrNone = sourced(measure('force', limits.FORCE_OR_NONE, newtons));
export const knownPressure = sourced(measure('pressure', limits.PRESSURE, pascals));
export const knownForcePerLength = sourced(
  measure('forcePerLength', limits.FORCE_PER_LENGTH, newtonsPerMetre),
);
export const knownAxialStiffness = sourced(measure('force', limits.AXIAL_STIFFNESS, newtons));
export const knownSecondMoment = sourced(
  measure('secondMoment', limits.SECOND_MOMENT, metresToTheFourth),
);
export const knownSectionModulus = sourced(
  measure('sectionModulus', limits.SECTION_MODULUS, cubicMetres),
);
export const knownElasticModulus = sourced(measure('pressure', limits.ELASTIC_MODULUS, pascals));
export const knownStrength = sourced(measure('pressure', limits.STRENGTH, pascals));
export const knownCable = sourced(measure('length', limits.CABLE, metres));
export const knownSheave = sourced(measure('length', limits.SHEAVE, metres));
export const knownFleetAngle = sourced(measure('angle', limits.FLEET_ANGLE, radians));
export const knownDesignFactor = sourced(plainNumber(limits.DESIGN_FACTOR, { whole: false }));
export const knownSheaveRatio = sourced(plainNumber(limits.SHEAVE_RATIO, { whole: false }));
export const knownStaleAfter = sourced(measure('duration', limits.STALE_AFTER, asNumber));
export const knownTestEvery = sourced(measure('duration', limits.TEST_EVERY, asNumber));
export const knownShare = sourced(measure('ratio', limits.SHARE, asNumber));
export const knownAdded = sourced(measure('ratio', limits.ADDED, asNumber));
export const knownHandLine = sourced(plainNumber(limits.HAND_LINE, { whole: false }));
export const knownCourses = sourced(plainNumber(limits.COURSES, { whole: true }));
export const knownPeople = sourced(plainNumber(limits.PEOPLE, { whole: true }));
export const knownOwned = sourced(plainNumber(limits.OWNED, { whole: true }));
export const knownTies = sourced(plainNumber(limits.TIES, { whole: true }));
export const knownFlag: Shape<Known<boolean>> = sourced(yesOrNo);

/** A field that is unknown where it is absent. */
export const orUnknown = <T>(shape: Shape<Known<T>>, about: string) =>
  filled(shape, unknownValue() as Known<T>, about);
