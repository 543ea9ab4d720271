import type { ValidationCase } from '../form.ts';
import { theCase as equalEffort } from './equal-effort/case.ts';
import { theCase as halfSpeedLine } from './half-speed-line/case.ts';
import { theCase as noFriction } from './no-friction/case.ts';
import { theCase as plainBearings } from './plain-bearings/case.ts';
import { theCase as rollingBearings } from './rolling-bearings/case.ts';
import { theCase as twoWayPulls } from './two-way-pulls/case.ts';
import { theCase as weighingAPiece } from './weighing-a-piece/case.ts';

export const pullTestCases: readonly ValidationCase[] = [
  equalEffort,
  halfSpeedLine,
  noFriction,
  plainBearings,
  rollingBearings,
  twoWayPulls,
  weighingAPiece,
];
