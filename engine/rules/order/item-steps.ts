/** Items on and off the batten, taken up and set down. */

import { measure } from '#findings';
import { unreachable } from '#outcome';
import type { ItemPhase, OrderPhysics, Standing, Step } from '#state';
import { isAbove } from '../limits.ts';
import { breach, unheld } from './breach.ts';
import type { Done } from './done.ts';
import { type Impossible, impossible, listed } from './impossible.ts';
import type { OrderRuleCode } from './rule-codes.ts';
import { loadOf, type Scene, shortOf } from './scene.ts';
import type { Breach } from './verdict.ts';

type ItemStep = Extract<Step, { readonly act: 'attach' | 'takeUp' | 'rest' | 'release' }>;

type Handling = {
  readonly from: readonly ItemPhase[];
  readonly to: ItemPhase;
  readonly rule: OrderRuleCode;
  readonly proofs: readonly string[];
};

const handlingOf = (step: ItemStep): Handling => {
  switch (step.act) {
    case 'attach':
      return { from: ['away', 'beside'], to: step.as, rule: 'ORD-002', proofs: [] };
    case 'takeUp':
      return {
        from: ['attachedSlack'],
        to: 'attachedResting',
        rule: 'ORD-006',
        proofs: ['see every pick tight while the piece still rests'],
      };
    case 'rest':
      return {
        from: ['flying'],
        to: 'attachedResting',
        rule: 'ORD-006',
        proofs: ['see that what it rests on is rated, stands firm and is manned'],
      };
    case 'release':
      return {
        from: ['attachedSlack', 'attachedResting', 'flying'],
        to: 'away',
        rule: 'ORD-005',
        proofs: ['see the item held before it is unclipped'],
      };
    default:
      return unreachable(step);
  }
};

export const handleItem = (scene: Scene, step: ItemStep): Done | Impossible => {
  const { physics, standing } = scene;
  if (!isOfSet(physics, standing, step.item)) {
    return impossible(
      'unknownItem',
      scene.step,
      step.item,
      `an item of set ${physics.set}; on it now: ${listed(Object.keys(standing.items))}`,
    );
  }
  const { from, to, rule, proofs } = handlingOf(step);
  const phase = standing.items[step.item] ?? 'away';
  if (!from.includes(phase)) {
    return impossible('wrongPhase', scene.step, `${step.item} is ${phase}`, listed(from));
  }
  const next: Scene = {
    ...scene,
    // What was pulled before spoke of other items.
    seen: null,
    standing: { ...standing, items: { ...standing.items, [step.item]: to } },
  };
  const short = shortOf(next, loadOf(next), physics.lockLimitN);
  return {
    scene: next,
    breaches: [
      ...(to === 'attachedResting' ? restBreaches(next, step.item) : []),
      ...(short === null ? [] : [unheld(next, rule, short, { item: step.item })]),
    ],
    proofs,
  };
};

/**
 * A rest that is not there would hold anything. It is the deck, at or below the height of contact,
 * or horses, no higher than the batten at working height.
 */
const restBreaches = (scene: Scene, item: string): readonly Breach[] => {
  const { physics, standing } = scene;
  const contactM = physics.contactM(item) ?? physics.lowStop.heightM;
  const highestM = Math.max(contactM, physics.workingM);
  if (!isAbove(standing.height, highestM)) return [];
  return [
    breach(scene, {
      rule: 'ORD-038',
      item,
      facts: {
        lower: measure(contactM, 'length'),
        upper: measure(physics.workingM, 'length'),
      },
    }),
  ];
};

/** An item without mass is none: nothing on a batten weighs nothing. */
export const isOfSet = (physics: OrderPhysics, { items }: Standing, id: string): boolean =>
  items[id] !== undefined || physics.itemMostN(id) > 0;
