import type { ValidationCase } from '../form.ts';
import { theCase as bendOverSheave } from './bend-over-sheave/case.ts';
import { theCase as blockFactors } from './block-factors/case.ts';
import { theCase as cableStretch } from './cable-stretch/case.ts';
import { theCase as cableWorkingLoads } from './cable-working-loads/case.ts';
import { theCase as fleetAngle } from './fleet-angle/case.ts';
import { theCase as freeLengths } from './free-lengths/case.ts';
import { theCase as headWellSum } from './head-well-sum/case.ts';
import { theCase as impactFactor } from './impact-factor/case.ts';
import { theCase as leadLine } from './lead-line/case.ts';
import { theCase as lineEnds } from './line-ends/case.ts';
import { theCase as movingShare } from './moving-share/case.ts';

export const linesCases: readonly ValidationCase[] = [
  cableWorkingLoads,
  movingShare,
  cableStretch,
  freeLengths,
  lineEnds,
  bendOverSheave,
  fleetAngle,
  blockFactors,
  leadLine,
  impactFactor,
  headWellSum,
];
