import { measure } from '#findings';
import { GRAVITY } from '#quantities';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenFlown } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';

/**
 * BAL-010: on a double purchase arbor a brick balances half of its mass (C29). Show bricks that
 * weigh about what hangs, and so leave half of it unbalanced, were counted as for single purchase.
 *
 * The bricks that would centre the imbalance on the free travel are the ones on the arbor and
 * r · U / g more. "About half of them" is: half of them, give or take half a brick of the largest
 * kind, and more than one such brick missing.
 */
export const singlePurchaseCount = whenFlown(({ plan, house, set: { lineSet } }) => {
  const { stack, freeExtremes, set } = plan;
  if (set.purchase !== 2) return [];
  const largestKg = Math.max(
    ...house.brickKinds.map(({ mass, serves }) => (serves.show && mass.known ? mass.value : 0)),
  );
  if (largestKg <= 0) return [];
  const middleN = (freeExtremes.least.imbalance + freeExtremes.most.imbalance) / 2;
  const missingKg = (set.purchase * middleN) / GRAVITY;
  const wantedKg = stack.showMass + missingKg;
  const isHalf = Math.abs(stack.showMass - wantedKg / 2) <= largestKg / 2;
  if (!isHalf || !isAbove(missingKg, largestKg)) return [];
  return [
    raise('BAL-010', {
      at: { set: lineSet.id },
      measured: measure(stack.showMass, 'mass'),
      limit: measure(wantedKg, 'mass'),
      limitSource: 'balance in the middle of the free travel',
      working: workedOut(
        'Show bricks that would balance',
        'b + r · U / g',
        [
          term('b', 'show bricks as planned', stack.showMass, 'mass'),
          term('r', 'batten travel over arbor travel', set.purchase, 'count'),
          term('U', 'imbalance in the middle of the free travel', middleN, 'imbalance'),
        ],
        term('wanted', 'show bricks that would balance', wantedKg, 'mass'),
        { source: 'trade formula C29' },
      ),
    }),
  ];
});
