export { answerReleasable } from './answer-releasable.ts';
export type { RunawayAnswer, RunawayAsked } from './answer-runaway.ts';
export { answerRunaway } from './answer-runaway.ts';
export type { Air, BounceRule, DroppedCase, Fall, FallOn, Level } from './dropped.ts';
export { dropped } from './dropped.ts';
export { MOTION_REFUSALS } from './refusal-codes.ts';
export type { EnergyAt, Releasable, Released, Start } from './releasable.ts';
export { releasable } from './releasable.ts';
export type { Passing, Run, RunawayCase, Still } from './runaway.ts';
export { runaway } from './runaway.ts';
export type { Impact, LinesThatTakeIt, Snatch, StopGives } from './stopped.ts';
export { impact, snatch } from './stopped.ts';
export type {
  BrokenLine,
  Contact,
  FrictionRule,
  ImbalanceNode,
  Moving,
  Pull,
  Travel,
  Way,
} from './types.ts';
