export type { LineAnswer, LinesAnswer } from './answer-lines.ts';
export { answerLines } from './answer-lines.ts';
export type { TotalsAnswer, TotalsAsked } from './answer-totals.ts';
export { answerTotals } from './answer-totals.ts';
export type { AskedCable, AskedLine, AskedMove, LinesAsked } from './asked.ts';
export type { HeadBlockTask } from './block-force.ts';
export {
  headBlockForce,
  loftBlockForce,
  muleBlockForces,
  turningBlockForce,
} from './block-force.ts';
export type { Restrained, SetLines } from './both-sides.ts';
export { arborWireMass, restrainedForce } from './both-sides.ts';
export type { Bridle, BridleLeg } from './bridle.ts';
export { bridle, legTension } from './bridle.ts';
export type { Construction } from './construction.ts';
export { publishedAxialStiffness } from './construction.ts';
export type { Peak } from './dynamics.ts';
export { dropPeak, steadyPeak, suddenStopPeak } from './dynamics.ts';
export { fleetAngle, keepsFleetRule } from './fleet.ts';
export type { BricksOnFloor, FloorRow } from './floor.ts';
export { floorLoad, floorRow, rowLoad } from './floor.ts';
export { LINES_REFUSALS } from './refusal-codes.ts';
export { freeLength } from './run.ts';
export { bendingEfficiency, lineFactor, sheaveRatio, terminationEfficiency } from './strength.ts';
export { lineStiffness, lineStretch } from './stretch.ts';
export type { BlockFriction, BlockTension, RunTension } from './tension.ts';
export { BLOCK_FRICTION, tensionAlongRun, tensionsAtRest } from './tension.ts';
export type { BayForces, Well, WellForces } from './totals.ts';
export { bayTotals, wellTotals, worstOver } from './totals.ts';
export type { BlockForce, Efficiency, LineRun, Place, SetOnSteel, Total } from './types.ts';
