export type {
  Actor,
  AskedNow,
  CallNow,
  GalleryNow,
  HouseNow,
  LeaveNow,
  OverrideNow,
  PlanNow,
  PostId,
  PostNow,
  SecondNow,
  SetNow,
  StopNow,
  ZoneNow,
} from './now.ts';
export type {
  OrderBrick,
  OrderGallery,
  OrderNode,
  OrderPhysics,
  OrderStop,
  PairStep,
  Standing,
  Step,
  WorkZone,
} from './order.ts';
export type {
  GalleryState,
  HouseState,
  ItemPhase,
  Knowledge,
  PlateTag,
  PullTest,
  Restraint,
  ServiceState,
  SetState,
  StackRun,
} from './state.ts';
export { ITEM_PHASES, KNOWLEDGE_BASES, PLATE_TAGS, RESTRAINT_KINDS, SERVICES } from './state.ts';
export { isStale, unknownSetState } from './unknown.ts';
