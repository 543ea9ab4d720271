export { type ArborRoom, arborRoomOf } from './arbor-room.ts';
export { assess, assessorOf, assessSet } from './assess.ts';
export type { HouseMoment, SetMoment } from './moments.ts';
export {
  cueMoment,
  hungSpan,
  lowestOf,
  recordedMoment,
  stepMoment,
  trimMoment,
  trimNames,
} from './moments.ts';
export { type SetFree, setFreeAt } from './order-energy.ts';
export { orderPhysicsOf } from './order-physics.ts';
export { type OrderPlant, physicsOfPlant } from './plant-physics.ts';
export { standingOf } from './standing.ts';
export { reworked } from './structure.ts';
export type {
  BayTotal,
  FloorTotal,
  HouseTotals,
  LineState,
  LineStrength,
  PlacedLoad,
  SetStructure,
  StructureChange,
  StructureState,
  TotalState,
  WellTotal,
} from './structure-types.ts';
export { type StructureWorkings, structureWorkingsOf } from './structure-workings.ts';
export type {
  AfterRelease,
  Assessment,
  BrickCount,
  GalleryWindow,
  HungMass,
  PlannedStack,
  RecordedSet,
  SetAssessment,
  SetPlan,
  TrimBalance,
} from './types.ts';
export { workingsOf } from './workings.ts';
