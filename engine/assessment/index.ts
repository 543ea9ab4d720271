export { assess, assessSet } from './assess.ts';
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
