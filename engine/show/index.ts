export type { CarriedItem } from './carried-item.ts';
export type { Item, ItemKind, Placement, Release } from './item.ts';
export { ITEM_KINDS } from './item.ts';
export type { Cue, Hang, HangFamily, PlannedBricks, Show, Trim } from './show.ts';
export { HANG_FAMILIES } from './show.ts';
export type {
  ClothTakeoff,
  FrameTakeoff,
  HardwareTakeoff,
  LoomTakeoff,
  MassTakeoff,
  PipeTakeoff,
  Takeoff,
  UnitsTakeoff,
} from './takeoff.ts';
export { TAKEOFF_KINDS } from './takeoff.ts';
