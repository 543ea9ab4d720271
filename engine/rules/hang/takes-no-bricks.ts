import { purchaseOf, type Suspension } from '#house';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';

const SUSPENSION_WORDS: Readonly<Record<Suspension, string>> = {
  singlePurchase: 'single purchase',
  doublePurchase: 'double purchase',
  motor: 'motor',
  hemp: 'hemp',
  deadHung: 'dead-hung',
};

/** KIN-001: bricks are planned only where an arbor takes them. */
export const takesNoBricks: SetRule = ({ set: { hang, lineSet } }) => {
  const { suspension, id } = lineSet;
  if (purchaseOf(suspension) !== null) return [];
  const counts = Object.entries(hang?.bricks?.counts ?? {}).filter(([, count]) => count !== 0);
  if (counts.length === 0) return [];
  return [
    raise('KIN-001', {
      at: { set: id },
      facts: {
        bricks: counts.map(([kind, count]) => `${count} ${kind}`).join(', '),
        suspension: SUSPENSION_WORDS[suspension],
      },
    }),
  ];
};
