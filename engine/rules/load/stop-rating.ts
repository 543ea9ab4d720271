import { type Finding, measure } from '#findings';
import { type Known, lockHoldOf, type Stop } from '#house';
import { GRAVITY, type Newtons } from '#quantities';
import { lack, sourceOf } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { type Opinion, type PlannedCase, whenFlown } from '../rule.ts';

/**
 * LOD-004: what stands on a stop is within what holds there: the rating of the stop or what the
 * lock holds, whichever is more. They are never added, since the stiffer one takes it all.
 *
 * On the low stop all that hangs stands before the first show brick is on; on the high stop
 * stands what is arbor heavy there. Tolerances count at their worst.
 */
export const stopRating = whenFlown((the) => [...onLowStop(the), ...onHighStop(the)]);

type Standing = {
  readonly stop: 'low' | 'high';
  readonly when: string;
  readonly heightM: number;
  readonly imbalanceN: number;
};

const onLowStop = (the: PlannedCase): readonly Opinion[] => {
  const { stack, set, curve } = the.plan;
  const node = curve.nodes[0];
  if (node === undefined) return [];
  const plannedN = Math.max(node.above, node.contact.high) + node.uncertainty;
  const showKg = stack.arborMass - set.carriage - stack.pipeMass;
  return against(the, the.set.lineSet.lowStop, {
    stop: 'low',
    when: 'with all on and no show brick yet',
    heightM: node.height,
    imbalanceN: plannedN + (GRAVITY * showKg) / set.purchase,
  });
};

const onHighStop = (the: PlannedCase): readonly Opinion[] => {
  const { curve, after } = the.plan;
  return [
    { when: 'with all bricks on', curve },
    ...after.map(({ how, curve: then }) => ({ when: `after ${how}`, curve: then })),
  ].flatMap(({ when, curve: { nodes } }) => {
    const node = nodes.at(-1);
    if (node === undefined) return [];
    const imbalanceN = Math.min(node.below, node.contact.low) - node.uncertainty;
    const standing = { stop: 'high', when, heightM: node.height, imbalanceN } as const;
    return against(the, the.set.lineSet.highStop, standing);
  });
};

/** Only what presses on the stop stands on it: batten heavy on the low, arbor heavy on the high. */
const against = (the: PlannedCase, { rated }: Stop, standing: Standing): readonly Opinion[] => {
  const { stop, imbalanceN } = standing;
  const pressingN = stop === 'low' ? imbalanceN : -imbalanceN;
  const lockHold = lockHoldOf(the.set.lineSet, the.house.rules);
  if (lockHold.known && !isAbove(pressingN, lockHold.value)) return [];
  if (!rated.known) {
    return pressingN > 0
      ? [lack(`rating of the ${stop} stop`, `what stands on the ${stop} stop`)]
      : [];
  }
  const held = strongerOf(rated, lockHold);
  return isAbove(pressingN, held.limitN) ? [standingFinding(the, standing, held)] : [];
};

type Held = { readonly limitN: number; readonly source: string };

const strongerOf = (
  rated: Known<Newtons> & { readonly known: true },
  lockHold: Known<Newtons>,
): Held =>
  lockHold.known && lockHold.value > rated.value
    ? { limitN: lockHold.value, source: `lock: ${sourceOf(lockHold)}` }
    : { limitN: rated.value, source: sourceOf(rated) };

const standingFinding = (the: PlannedCase, standing: Standing, held: Held): Finding =>
  raise('LOD-004', {
    at: { set: the.set.lineSet.id, heightM: standing.heightM },
    measured: measure(standing.imbalanceN, 'imbalance'),
    limit: measure(held.limitN, 'force'),
    limitSource: held.source,
    facts: { stop: standing.stop, when: standing.when },
  });
