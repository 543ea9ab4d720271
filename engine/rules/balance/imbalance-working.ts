import { type Measure, measure, type Working } from '#findings';
import { GRAVITY } from '#quantities';
import type { PlannedCase } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import type { Reading } from './curve-reading.ts';

type Plant = PlannedCase['plan']['set'];

/** Mass that the lift lines add at a height, kg: n · w · ( z_t − z_e ), trade formula C15. */
const linesKg = (set: Plant, battenM: number): number => {
  const arborTopM = set.arborTopAtLow - (battenM - set.lowStop) / set.purchase;
  return set.lines * set.lineMassPerLength * (arborTopM - battenM - set.wireEndAbove);
};

/**
 * How the imbalance at a height came about. What the items carry there is the assessment's
 * number less batten, lines and arbor: this room knows no load of an item.
 */
export const imbalanceWorking = (
  set: Plant,
  { heightM, imbalanceN }: Pick<Reading, 'heightM' | 'imbalanceN'>,
  limit: { readonly value: Measure; readonly source: string } | null,
): Working => {
  const arborKg = set.carriage + set.bricks;
  const wiresKg = linesKg(set, heightM);
  const carriedKg = imbalanceN / GRAVITY - set.batten - wiresKg + arborKg / set.purchase;
  return workedOut(
    'Imbalance',
    set.purchase === 1 ? 'B + C + W − A' : 'B + C + W − A / 2',
    [
      term('B', 'batten with its fittings', set.batten, 'mass'),
      term('C', 'what the items carry at this height', carriedKg, 'mass'),
      term('W', 'lift lines, n · w · (z_t − z_e)', wiresKg, 'mass'),
      term('A', 'whole arbor', arborKg, 'mass'),
    ],
    { symbol: 'U', meaning: 'imbalance at the batten', value: measure(imbalanceN, 'imbalance') },
    {
      source: 'trade formula C15',
      ...(limit === null ? {} : { limit }),
      omits: 'friction, which hides imbalance and never makes any',
    },
  );
};
