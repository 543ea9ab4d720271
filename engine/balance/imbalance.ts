import { GRAVITY, type Newtons, newtons } from '#quantities';
import type { BalanceSet } from './balance-set.ts';
import {
  carriedMass,
  contactHeight,
  fullMass,
  isSameHeight,
  SAME_HEIGHT_M,
} from './carried-mass.ts';
import type { BalanceItem } from './item.ts';

/** The parts of the imbalance at one height, each as mass at the batten in kg. */
export type ImbalanceParts = {
  readonly battenKg: number;
  readonly itemsKg: readonly number[];
  readonly linesKg: number;
  readonly arborKg: number;
};

/**
 * Mass that the lift lines add to the batten's side, kg.
 *
 *     n · w · (z_t(h) − z_e(h))
 *
 *     z_t(h)  m  where the lines meet the arbor: z_t0 − (h − h_lo) / r
 *     z_e(h)  m  lower end of the wire: h + wireEndAbove
 *
 * A wire over frictionless blocks pulls harder at its higher end only by the weight of the wire
 * between the two heights, whatever way it takes: the heights of the blocks cancel.
 *
 * Source  calculations.md section 4
 * Omits   friction of the blocks; it hides imbalance and never makes any
 * Check   potential energy of every wire, VAL-BAL-01 and VAL-BAL-02
 */
export const linesMass = (set: BalanceSet, battenM: number): number => {
  const arborTopM = set.arborTopAtLow - (battenM - set.lowStop) / set.purchase;
  const wireEndM = battenM + set.wireEndAbove;
  return set.lines * set.lineMassPerLength * (arborTopM - wireEndM);
};

const partsFrom = (
  set: BalanceSet,
  battenM: number,
  itemMassKg: (item: BalanceItem) => number,
): ImbalanceParts => ({
  battenKg: set.batten,
  itemsKg: set.items.map(itemMassKg),
  linesKg: linesMass(set, battenM),
  arborKg: (set.carriage + set.bricks) / set.purchase,
});

const total = ({ battenKg, itemsKg, linesKg, arborKg }: ImbalanceParts): Newtons =>
  newtons(
    GRAVITY * (battenKg + itemsKg.reduce((sum, massKg) => sum + massKg, 0) + linesKg - arborKg),
  );

export const imbalanceParts = (set: BalanceSet, battenM: number): ImbalanceParts =>
  partsFrom(set, battenM, (item) => carriedMass(item, battenM).massKg);

/**
 * Imbalance referred to the batten, N; positive is batten heavy.
 *
 *     U(h) = g · [ B + Σ carried_i(h) + n·w·(z_t(h) − z_e(h)) − A / r ]
 *
 *     B  kg  batten        batten with fittings
 *     A  kg  carriage + bricks, the whole arbor
 *     r  -   purchase      an arbor on double purchase moves half as far and pulls half as hard
 *
 * At a height where a piece just leaves the deck this is the value above.
 *
 * Source  calculations.md section 4, the-job.md C15
 * Omits   friction (see pulls); a compensating line; the length of hand line that the arbor takes
 *         the place of, which makes every set some 4 N more batten heavy than this (VAL-BAL-18)
 * Check   VAL-BAL-01 and VAL-BAL-02 (potential energy), VAL-BAL-15 (exact fractions)
 */
export const imbalanceAt = (set: BalanceSet, battenM: number): Newtons =>
  total(imbalanceParts(set, battenM));

/**
 * The same just below a height: the two differ where a hem, a foot or a piece meets the deck.
 * The lowest share of a contact is what the batten carries a hair lower down.
 */
export const imbalanceBelow = (set: BalanceSet, battenM: number): Newtons =>
  total(
    partsFrom(set, battenM, (item) => {
      const { massKg, lowKg } = carriedMass(item, battenM);
      return meetsDeckAt(item, battenM) ? lowKg : massKg;
    }),
  );

const meetsDeckAt = (item: BalanceItem, battenM: number): boolean => {
  const contactM = contactHeight(item);
  if (contactM !== null && isSameHeight(contactM, battenM)) return true;
  return item.kind === 'tipping' && isSameHeight(item.pick, battenM);
};

/** What the system may choose between at a height, where pieces share their load with the deck. */
export const contactInterval = (
  set: BalanceSet,
  battenM: number,
): { readonly low: Newtons; readonly high: Newtons } => ({
  low: total(partsFrom(set, battenM, (item) => carriedMass(item, battenM).lowKg)),
  high: total(partsFrom(set, battenM, (item) => carriedMass(item, battenM).highKg)),
});

/**
 * Half width of what U may be off by when every mass is at its worst at once, N.
 *
 *     ΔU = g · ( ΔB + Σ Δ_i · share_i(h) + (ΔA_0 + Δbricks) / r )
 *
 * Source  the-job.md C86: linear, not root sum square; a guard uses the worst value
 * Check   VAL-BAL-13
 */
export const imbalanceUncertainty = (set: BalanceSet, battenM: number): Newtons => {
  const itemsKg = set.items.reduce((sum, item) => sum + itemUncertainty(item, battenM), 0);
  const arborKg = (set.carriageUncertainty ?? 0) + (set.brickUncertainty ?? 0);
  return newtons(GRAVITY * ((set.battenUncertainty ?? 0) + itemsKg + arborKg / set.purchase));
};

const hangsHem = (item: BalanceItem, battenM: number): item is BalanceItem & { kind: 'cloth' } =>
  item.kind === 'cloth' && battenM >= item.tie + item.drop - SAME_HEIGHT_M;

const itemUncertainty = (item: BalanceItem, battenM: number): number => {
  const { highKg } = carriedMass(item, battenM);
  const wholeKg = fullMass(item);
  const hemUpKg = hangsHem(item, battenM) ? item.hem : 0;
  const share = wholeKg === 0 ? 0 : (highKg - hemUpKg) / wholeKg;
  const hemKg = hangsHem(item, battenM) ? (item.hemUncertainty ?? 0) : 0;
  return (item.uncertainty ?? 0) * share + hemKg;
};
