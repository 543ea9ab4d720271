import type { ValidationCase } from '../form.ts';
import { theCase as arborTravel } from './arbor-travel/case.ts';
import { theCase as deadBands } from './dead-bands/case.ts';
import { theCase as handLineMarks } from './hand-line-marks/case.ts';
import { theCase as mountingDimensions } from './mounting-dimensions/case.ts';
import { theCase as reachWindows } from './reach-windows/case.ts';
import { theCase as spreaderEvery24In } from './spreader-every-24-in/case.ts';
import { theCase as stackHeightExact } from './stack-height-exact/case.ts';
import { theCase as stackMassPerHeight } from './stack-mass-per-height/case.ts';
import { theCase as windowsMove } from './windows-move/case.ts';

export const houseCases: readonly ValidationCase[] = [
  arborTravel,
  deadBands,
  handLineMarks,
  mountingDimensions,
  reachWindows,
  spreaderEvery24In,
  stackHeightExact,
  stackMassPerHeight,
  windowsMove,
];
