/**
 * The invariants that one leave can break on its own set, checked on the record as the witness
 * reads it: V1 to V4, V10 to V15, and what leave itself promises.
 */
import type { EventOf } from '#events';
import type { Standing, Step } from '#state';
import type { CallRule } from './call-rules.ts';
import type { Demo, DemoSet } from './demo-call.ts';
import { type Reckoning, whyNotUnlocked, whyUnheld, whyUnheldOnWay } from './held.ts';
import type { Ledger, SetRecord } from './ledger.ts';
import { afterStep, isSame, partingOf, withPlates } from './steps-done.ts';

export type Given = {
  readonly demo: Demo;
  readonly ledger: Ledger;
  readonly set: DemoSet;
  readonly record: SetRecord;
  readonly event: EventOf<'leave given'>;
};

export type Broken = readonly [rule: CallRule, how: string] | null;
export type Check = (given: Given) => Broken;

const isZone = ({ act }: Step): boolean => act === 'close' || act === 'reopen';

/** Two named people take it on themselves that masses are as written; no more is theirs. */
export const isOverridden = ({ event }: Given): boolean => event.payload.override !== null;

/** With an override the masses may be taken as they are written; never anything else of a hold. */
const reckoningOf = (given: Given, lockN: number): Reckoning | null => {
  const { physics } = given.set;
  const isWorst = !isOverridden(given);
  return physics === null ? null : { physics, lockN, isWorst, seen: given.record.seen };
};

/** Each state that the step passes: every plate of it, else its end. */
const statesOf = ({ set, record, event }: Given): readonly Standing[] => {
  const { standing } = record;
  const { step } = event.payload;
  if (standing === null || set.physics === null) return [];
  if (step.act !== 'add' && step.act !== 'remove') {
    const after = afterStep(set.physics, standing, step);
    return after === null ? [] : [after];
  }
  const sign = step.act === 'add' ? 1 : -1;
  return Array.from({ length: step.count }, (_, index) =>
    withPlates(standing.stack, step.kind, sign * (index + 1)),
  ).flatMap((stack) => (stack === null ? [] : [{ ...standing, stack }]));
};

/** The lock within its limit, as if nobody doubted it: what fails so fails V1. */
const held: Check = (given) => {
  const { set, record, event } = given;
  const { step } = event.payload;
  const reckoning = reckoningOf(given, set.physics?.lockLimitN ?? 0);
  // To close a zone makes no set worse, and comes before whatever makes it held.
  if (reckoning === null || record.standing === null || step.act === 'close') return null;
  for (const state of statesOf(given)) {
    const how = whyUnheld(state, widened(given, reckoning, state));
    if (how !== null) return ['held', `set ${set.id}, ${step.act}: ${how}`];
  }
  if (step.act !== 'fly') return null;
  const how = whyUnheldOnWay(record.standing, step.to, reckoning);
  return how === null ? null : ['held', `set ${set.id}, on the way to ${step.to}: ${how}`];
};

/** What a pull has shown is worth less by what new bricks may be off, and nothing after items. */
const widened = ({ event, record }: Given, reckoning: Reckoning, state: Standing): Reckoning => {
  const { act } = event.payload.step;
  const { seen, physics } = reckoning;
  if (seen === null || act === 'close' || act === 'reopen' || act === 'ease') return reckoning;
  if (act === 'rig' || act === 'unrig') return reckoning;
  if ((act !== 'add' && act !== 'remove') || record.standing === null) {
    return { ...reckoning, seen: null };
  }
  const moreN = Math.abs(physics.at(state).doubtN - physics.at(record.standing).doubtN);
  return { ...reckoning, seen: { leastN: seen.leastN - moreN, mostN: seen.mostN + moreN } };
};

const lockLimit: Check = (given) => {
  const { set, record, event } = given;
  const { step } = event.payload;
  const lockN = record.lockDoubted ? 0 : (set.physics?.lockLimitN ?? 0);
  const reckoning = reckoningOf(given, lockN);
  const { standing } = record;
  if (reckoning === null || standing === null || isZone(step)) return null;
  if (step.act === 'fly' && !isSame(step.to, standing.height)) {
    const how = whyNotUnlocked(standing, reckoning) ?? whyUnheldOnWay(standing, step.to, reckoning);
    if (how !== null) return ['lockLimit', `set ${set.id}: ${how}`];
  }
  if (!record.lockDoubted) return null;
  for (const state of statesOf(given)) {
    const how = whyUnheld(state, reckoning);
    if (how !== null) return ['lockLimit', `set ${set.id} on a doubted lock: ${how}`];
  }
  return null;
};

const locked: Check = ({ set, record: { lock, ring }, event }) => {
  if (lock === 'closed' && ring === 'on') return null;
  if (isZone(event.payload.step)) return null;
  return ['locked', `set ${set.id} stands with lock ${lock}, ring ${ring}`];
};

const collar: Check = ({ set, record, event }) => {
  const { step } = event.payload;
  if (record.collar === 'secured' || isZone(step)) return null;
  return ['collar', `${step.act} on set ${set.id} with its collar loose`];
};

const known: Check = ({ set, record, event }) => {
  const { act } = event.payload.step;
  if (record.standing !== null || act === 'close') return null;
  return ['known', `${act} on set ${set.id}, of which nobody knows how it stands`];
};

const outOfUse: Check = ({ set, record, event }) => {
  const { step } = event.payload;
  const service = record.standing?.service ?? 'in';
  if (isZone(step)) return null;
  if (record.tag !== null) return ['outOfUse', `tag ${record.tag} hangs on set ${set.id}`];
  const isStill = step.act === 'fly' || step.act === 'ease';
  if (service === 'deadHung' && isStill) return ['outOfUse', `set ${set.id} moved off its steel`];
  if (service === 'in' || service === 'deadHung') return null;
  return ['outOfUse', `${step.act} on set ${set.id}, which is ${service}`];
};

const keepOut: Check = ({ demo, set, record, event }) => {
  const { step } = event.payload;
  const { standing } = record;
  if (step.act !== 'fly' || standing === null) return null;
  const y = set.lineSet.y.known ? set.lineSet.y.value : null;
  const half = set.hang?.halfDepth.known === true ? set.hang.halfDepth.value : 0;
  const [lowM, highM] = [Math.min(standing.height, step.to), Math.max(standing.height, step.to)];
  if (y === null) return null;
  for (const { id, y: depth, z } of demo.documents.house.keepOuts) {
    // What runs over the whole height is no matter of flying, and of every other a batten is.
    if (depth === undefined || z === undefined) continue;
    const isIn = y + half > depth[0] + 1e-6 && y - half < depth[1] - 1e-6;
    const [fromM, toM] = [z[0] ?? -Infinity, z[1] ?? Infinity];
    if (isIn && highM > fromM + 1e-6 && lowM < toM - 1e-6) {
      return ['keepOut', `set ${set.id} through ${id} on its way to ${step.to}`];
    }
  }
  return null;
};

const register: Check = ({ set, event }) => {
  const { step } = event.payload;
  if (step.act !== 'rig') return null;
  const { rating, from, to, owner, tag } = step.restraint;
  if (rating === null || from === null || to === null || owner === null || tag === null) {
    return ['register', `a ${step.restraint.kind} on set ${set.id} without all of its entry`];
  }
  return null;
};

const limits: Check = (given) => {
  const { ledger, set, event } = given;
  const { step } = event.payload;
  const { physics } = set;
  if (physics === null || (step.act !== 'add' && step.act !== 'remove')) return null;
  const have = ledger.stock.get(step.gallery)?.get(step.kind) ?? 0;
  if (step.act === 'remove') return null;
  if (step.count > have) return ['limits', `${step.count} ${step.kind} of ${have} there`];
  for (const state of statesOf(given)) {
    const stackM = physics.topOfStackM(state) - physics.topOfStackM({ ...state, stack: [] });
    if (stackM > physics.rodM + 1e-6) return ['limits', `set ${set.id}: ${stackM} m on its rods`];
    const { massKg, doubtKg } = physics.arborKg(state.stack);
    const mostKg = physics.arborMassLimitKg ?? Number.POSITIVE_INFINITY;
    if (massKg + (isOverridden(given) ? 0 : doubtKg) > mostKg + 1e-3) {
      return ['limits', `set ${set.id}: its arbor at ${massKg} kg`];
    }
  }
  return null;
};

const nobody: Check = ({ set, event }) => {
  const person = set.hang?.items.find(({ carriesPerson }) => carriesPerson);
  if (person === undefined) return null;
  return ['nobody', `${event.payload.step.act} on set ${set.id}, where ${person.id} carries one`];
};

const expects: Check = (given) => {
  const { set, record, event } = given;
  const { standing } = record;
  if (standing === null || set.physics === null) return null;
  const after = afterStep(set.physics, standing, event.payload.step);
  if (after === null) return ['expects', `${event.payload.step.act} cannot be done on ${set.id}`];
  const how = partingOf(event.payload.expects, after);
  return how === null ? null : ['expects', `set ${set.id}, ${event.payload.step.act}: ${how}`];
};

export const ON_ITS_SET: readonly Check[] = [
  known,
  nobody,
  outOfUse,
  locked,
  collar,
  held,
  lockLimit,
  keepOut,
  register,
  limits,
  expects,
];
