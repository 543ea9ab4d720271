import type { ValidationCase } from '../form.ts';
import { theCase as battenOnCables } from './batten-on-cables/case.ts';
import { theCase as centralLoadsOnSpans } from './central-loads-on-spans/case.ts';
import { theCase as evenLoadOnSpans } from './even-load-on-spans/case.ts';
import { theCase as heaviestLoad } from './heaviest-load/case.ts';
import { theCase as liftOff } from './lift-off/case.ts';
import { theCase as overhangs } from './overhangs/case.ts';
import { theCase as patternLoads } from './pattern-loads/case.ts';
import { theCase as pickPlaces } from './pick-places/case.ts';
import { theCase as pipeStrength } from './pipe-strength/case.ts';
import { theCase as randomBattens } from './random-battens/case.ts';
import { theCase as settlementAndSprings } from './settlement-and-springs/case.ts';
import { theCase as threeMomentExamples } from './three-moment-examples/case.ts';
import { theCase as threeSpansInInches } from './three-spans-in-inches/case.ts';
import { theCase as turningLevel } from './turning-level/case.ts';

export const beamCases: readonly ValidationCase[] = [
  evenLoadOnSpans,
  centralLoadsOnSpans,
  patternLoads,
  overhangs,
  pipeStrength,
  threeMomentExamples,
  battenOnCables,
  settlementAndSprings,
  threeSpansInInches,
  turningLevel,
  heaviestLoad,
  pickPlaces,
  liftOff,
  randomBattens,
];
