export { handLineTravel, panHeight, travelRoom } from './arbor-travel.ts';
export type { BattenPipe, Splice, Wall } from './batten-pipe.ts';
export { WALLS } from './batten-pipe.ts';
export type { BrickKind, PlateRun, Spreader } from './brick.ts';
export type {
  Bay,
  Equipment,
  Eye,
  Gallery,
  House,
  HouseRules,
  KeepOut,
  LoftWell,
  Opening,
  Rail,
  Stage,
} from './house.ts';
export type { Basis, Known, Provenance } from './known.ts';
export { BASES, known, unknownValue } from './known.ts';
export type { Bearing, Block, Cable, Lift, MuleBlock, Termination } from './lift-line.ts';
export { BEARINGS, TERMINATIONS } from './lift-line.ts';
export type { Arbor, Batten, LineSet, RopeLock, Stop, Suspension } from './line-set.ts';
export { purchaseOf, SUSPENSIONS } from './line-set.ts';
export { grippedAtBatten, isLockTested, lockHoldOf } from './lock-hold.ts';
export type { HeightSpan, ReachGeometry } from './reach.ts';
export { deadBands, nextPlateHeight, reachWindow } from './reach.ts';
export { spreaderCount, stackHeight } from './stack-height.ts';
export type { WeighedSample } from './weighed-sample.ts';
export {
  contradictsSample,
  massBySample,
  SAMPLE_LEAST,
  sampleOfSummary,
  sampleOfWeights,
} from './weighed-sample.ts';
