/**
 * A plan done again step by step, for the tests: plate by plate and foot by foot, from the physics
 * alone. It says what is wrong at which step; an order that is right has nothing to say.
 */
import { metres } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import type { Found } from './example-jobs.contract.ts';
import { planningLockN } from './states.ts';

const SLIGHT_N = 1e-3;
const SLIGHT_M = 1e-6;
/** Heights looked at along a flight. */
const LOOKS = 60;

export const faultsOf = (
  physics: OrderPhysics,
  { steps, states }: Found,
  doubtShare: number,
): readonly string[] => {
  const faults: string[] = [];
  states.forEach(({ standing }, index) => {
    const before = states[index - 1]?.standing ?? standing;
    const step = steps[index - 1];
    const say = (fault: string): void => {
      faults.push(`step ${index} (${step?.act ?? 'start'}): ${fault}`);
    };
    // How it stood at the start is no fault of the plan's.
    if (step === undefined) return;
    if (!isHeld(physics, standing, doubtShare, 0)) say('not held after');
    if (step.act === 'attach' || step.act === 'release') {
      const margin = physics.lockLimitN - planningLockN(physics);
      if (!isHeld(physics, before, doubtShare, margin)) say('riggers under a nominal lock');
      if (!isHeld(physics, standing, doubtShare, margin)) say('riggers under a nominal lock after');
    }
    if (step.act === 'fly') {
      for (let look = 1; look < LOOKS; look += 1) {
        const share = look / LOOKS;
        const height = metres(before.height + share * (standing.height - before.height));
        if (!isHeld(physics, { ...standing, height }, doubtShare, 0)) say(`not held at ${height}`);
      }
    }
    if (step.act !== 'add' && step.act !== 'remove') return;
    if (!standing.closed.some((z) => z.zone === 'drop' && z.gallery === step.gallery)) {
      say('drop zone open');
    }
    const gallery = physics.galleries.find(({ id }) => id === step.gallery);
    let stack = plates(before);
    for (let plate = 0; plate < step.count; plate += 1) {
      const topM = physics.topOfStackM({ height: before.height, stack: runs(stack) });
      const isReached =
        gallery !== undefined &&
        topM >= gallery.reachFromM - SLIGHT_M &&
        topM <= gallery.reachToM + SLIGHT_M;
      if (!isReached) say(`plate ${plate + 1} out of reach`);
      if (step.act === 'remove' && stack.at(-1) !== step.kind) say('not the top plate');
      stack = step.act === 'add' ? [...stack, step.kind] : stack.slice(0, -1);
      const between = { ...standing, stack: runs(stack) };
      if (!isHeld(physics, between, doubtShare, 0)) say(`not held after plate ${plate + 1}`);
      if (step.act === 'add' && !isCarried(physics, between, doubtShare)) say('arbor too heavy');
    }
    if (stack.join() !== plates(standing).join()) say('the stack is not what it should be');
  });
  return faults;
};

const plates = ({ stack }: Standing): readonly string[] =>
  stack.flatMap(({ kind, count }) => Array.from({ length: count }, () => kind));

const runs = (stack: readonly string[]): Standing['stack'] =>
  stack.map((kind) => ({ kind, count: 1, tag: 'show' }));

const isCarried = (
  { arborMassLimitKg, arborKg }: OrderPhysics,
  { stack }: Standing,
  doubtShare: number,
): boolean => {
  const { massKg, doubtKg } = arborKg(stack);
  return arborMassLimitKg === null || massKg + doubtShare * doubtKg <= arborMassLimitKg + 1e-7;
};

/** The lock is worth its nominal limit with the run closed, and less by a margin for riggers. */
const isHeld = (
  physics: OrderPhysics,
  standing: Standing,
  doubtShare: number,
  marginN: number,
): boolean => {
  const { lowN, highN, doubtN } = physics.at(standing);
  const isClosed = standing.closed.some(({ zone }) => zone === 'run');
  const lockN = (isClosed ? physics.lockLimitN : planningLockN(physics)) - (isClosed ? marginN : 0);
  let [inN, outN] = [lockN, lockN];
  const isAt = (heightM: number): boolean => Math.abs(standing.height - heightM) < SLIGHT_M;
  if (isAt(physics.lowStop.heightM)) inN = Math.max(inN, physics.lowStop.ratedN);
  if (isAt(physics.highStop.heightM)) outN = Math.max(outN, physics.highStop.ratedN);
  for (const { resists, rating, from, to } of standing.restraints) {
    if (rating === null || from === null || to === null) continue;
    if (standing.height < from - SLIGHT_M || standing.height > to + SLIGHT_M) continue;
    if (resists !== 'out') inN = Math.max(inN, rating);
    if (resists !== 'in') outN = Math.max(outN, rating);
  }
  const doubt = doubtShare * doubtN;
  return lowN + doubt <= inN + SLIGHT_N && highN - doubt >= -outN - SLIGHT_N;
};
