import {
  assumedFriction,
  type BalanceCurve,
  type BalanceItem,
  type BalanceSet,
  balanceCurve,
  contactHeight,
  extremesOf,
  type Friction,
  handLinePulls,
  imbalanceAt,
  imbalanceBelow,
  imbalanceParts,
  imbalanceUncertainty,
  pullTest,
} from '#balance';
import type { Reckoned } from '#findings';
import type { HeightSpan, House, LineSet } from '#house';
import { unreachable } from '#outcome';
import { type Metres, metres, newtons } from '#quantities';
import type { Hang, Trim } from '#show';
import type { SetState } from '#state';
import { doubtsUnsaid, gather } from './plant.ts';
import type { AfterRelease, PlannedStack, SetPlan, TrimBalance } from './types.ts';

/** What carries a hang: the items as they are, and as they are after each release in view. */
export type CarriedHang = {
  readonly items: readonly BalanceItem[];
  readonly after: readonly { readonly how: string; readonly items: readonly BalanceItem[] }[];
};

/** Height at which the last piece leaves the deck; null where nothing lands on this travel. */
export const liftOffOf = (items: readonly BalanceItem[], lowStopM: number): Metres | null => {
  const contacts = items
    .map(contactHeight)
    .filter((heightM) => heightM !== null)
    .filter((heightM) => heightM > lowStopM);
  return contacts.length === 0 ? null : metres(Math.max(...contacts));
};

/**
 * Height of the batten at a trim. A trim told at the lowest point is so much higher at the batten
 * as the longest piece hangs down; one told at a lens needs the drop of the lens, which no document
 * holds yet, and is therefore not known.
 *
 *     h = z + max (s + D)
 *
 * Source  the-job.md C69
 */
export const battenAtTrim = (
  { name, height, reference }: Trim,
  items: readonly BalanceItem[],
  got: ReturnType<typeof gather>,
): number => {
  const heightM = got.number(height, `height of ${name} trim`);
  switch (reference) {
    case 'batten':
      return heightM;
    case 'lowestPoint':
      return heightM + Math.max(0, ...items.map((item) => contactHeight(item) ?? 0));
    case 'lens':
      got.need(`height of the batten at ${name} trim: it is told at the lens`);
      return Number.NaN;
    default:
      return unreachable(reference);
  }
};

/** From lift-off, or from working height where nothing lands above it, to the highest trim. */
export const freeRangeOf = (
  { items }: CarriedHang,
  hang: Hang,
  lineSet: LineSet,
): Reckoned<HeightSpan> => {
  const got = gather();
  const workingM = got.number(lineSet.workingHeight, 'working height');
  const lowStopM = got.number(lineSet.lowStop.height, 'height of the low stop');
  if (hang.trims.length === 0) got.need('trims');
  const trims = hang.trims.map((trim) => battenAtTrim(trim, items, got));
  return got.give(() => {
    const highestM = Math.max(...trims);
    const fromM = Math.max(workingM, liftOffOf(items, lowStopM) ?? workingM);
    return { from: metres(Math.min(fromM, highestM)), to: metres(highestM) };
  });
};

/** Least and most U without show bricks over the free range, for the items as given. */
export const baselineExtremes = (
  bare: BalanceSet,
  items: readonly BalanceItem[],
  { from, to }: HeightSpan,
): { readonly minN: number; readonly maxN: number } => {
  const { nodes } = balanceCurve({ ...bare, items }, from, to);
  const { least, most } = extremesOf(nodes, 'inside');
  return { minN: least.imbalance, maxN: most.imbalance };
};

/** The whole plan of one set, once its bricks are known. */
export const planOf = ({
  bare,
  carried,
  hang,
  lineSet,
  house,
  state,
  stack,
  freeRange,
  bricksUncertaintyKg,
}: {
  readonly bare: BalanceSet;
  readonly carried: CarriedHang;
  readonly hang: Hang;
  readonly lineSet: LineSet;
  readonly house: House;
  readonly state: SetState;
  readonly stack: PlannedStack;
  readonly freeRange: HeightSpan;
  readonly bricksUncertaintyKg: number | null;
}): SetPlan => {
  const { brickUncertainty: _pipeOnly, ...plant } = bare;
  const loaded: BalanceSet = {
    ...plant,
    ...(bricksUncertaintyKg === null ? {} : { brickUncertainty: bricksUncertaintyKg }),
    bricks: stack.arborMass - bare.carriage,
  };
  const set = { ...loaded, items: carried.items };
  const curve = balanceCurve(set);
  const friction = frictionOf(set, house, lineSet, state);
  const trims = trimsOf(set, hang);
  return {
    stack,
    set,
    curve,
    after: carried.after.map(({ how, items }) => afterRelease(how, { ...loaded, items })),
    doubtsUnsaid: doubtsUnsaid(set),
    liftOff: liftOffOf(carried.items, bare.lowStop),
    freeRange,
    freeExtremes: extremesOf(balanceCurve(set, freeRange.from, freeRange.to).nodes, 'inside'),
    // Below the low stop there is no travel, so what would happen there does not count.
    travelExtremes: extremesOf(curve.nodes, 'inside'),
    trims,
    working: lineSet.workingHeight.known
      ? {
          height: lineSet.workingHeight.value,
          imbalance: imbalanceAt(set, lineSet.workingHeight.value),
        }
      : null,
    friction,
    pulls: pullsOf(trims, friction, lineSet),
  };
};

const afterRelease = (how: string, set: BalanceSet): AfterRelease => {
  const curve: BalanceCurve = balanceCurve(set);
  return { how, set, curve };
};

const trimsOf = (set: BalanceSet, hang: Hang): readonly TrimBalance[] =>
  hang.trims.flatMap((trim) => {
    const got = gather();
    const heightM = battenAtTrim(trim, set.items, got);
    if (got.needs.length > 0) return [];
    return [
      {
        trim,
        height: metres(heightM),
        imbalance: imbalanceAt(set, heightM),
        below: imbalanceBelow(set, heightM),
        uncertainty: imbalanceUncertainty(set, heightM),
      },
    ];
  });

/** The measured friction of the set where a two-way pull test is on record, else the assumed. */
const frictionOf = (
  set: BalanceSet,
  house: House,
  lineSet: LineSet,
  { pullTest: test }: SetState,
): Reckoned<Friction> => {
  const got = gather();
  if (test !== null) {
    const perBatten = got.number(lineSet.handLinePerBatten, 'travel of the hand line');
    return got.give(() => ({
      force: pullTest({ outN: test.out, inN: test.in, handLinePerBatten: perBatten }).friction,
      measured: true,
    }));
  }
  const share = got.number(house.rules.frictionShare, 'share of friction');
  const constantN = got.number(house.rules.frictionConstant, 'constant of friction');
  // At the high stop all that can hang hangs: the most friction, so the least that hands can do.
  const { battenKg, itemsKg } = imbalanceParts(set, set.highStop);
  const hangingKg = battenKg + itemsKg.reduce((sum, massKg) => sum + massKg, 0);
  return got.give(() => assumedFriction({ share, constantN, hangingKg }));
};

const pullsOf = (
  trims: readonly TrimBalance[],
  friction: Reckoned<Friction>,
  lineSet: LineSet,
): SetPlan['pulls'] => {
  const got = gather();
  if (!friction.known) friction.needs.forEach(got.need);
  const perBatten = got.number(lineSet.handLinePerBatten, 'travel of the hand line');
  return got.give(() => {
    const frictionN = friction.known ? friction.value.force : 0;
    const pulls = trims.map(({ imbalance }) =>
      handLinePulls({ imbalanceN: imbalance, frictionN, handLinePerBatten: perBatten }),
    );
    return {
      out: newtons(Math.max(...pulls.map(({ out }) => out), 0)),
      in: newtons(Math.max(...pulls.map((pull) => pull.in), 0)),
    };
  });
};
