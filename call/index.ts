export { openDesk } from './desk.ts';
export type {
  CallDesk,
  CallDocuments,
  CallSender,
  LeaveJudged,
  WhyNot,
} from './desk-types.ts';
export { type Drill, type DrillLine, type DrillView, openDrill } from './drill.ts';
export { type CrewTurn, crewTurn, takeTurn } from './drill-crew.ts';
export { type Debrief, type DrillEnd, postsOf } from './drill-debrief.ts';
export { type DrillRun, openRun } from './drill-run.ts';
export { drillStart, signedSteps } from './drill-start.ts';
export { type DrillFault, faultsOf } from './drill-world.ts';
export { foldAll, foldEvent, NOTHING_OPEN, setOfTarget, targetOfSet } from './fold.ts';
export { betweenOf, type NextFor, type NextStep, nextFor } from './next.ts';
export { openingOf } from './opening.ts';
export { type BrickStep, isBrickStep, platesOf, stackAfter } from './plates.ts';
export { CALL_REFUSALS } from './refusal-codes.ts';
export { UNKNOWN_SET } from './set-now.ts';
export { stateAfter, type WhoCloses } from './state-after.ts';
export { isSignedOff, taskOf } from './who.ts';
