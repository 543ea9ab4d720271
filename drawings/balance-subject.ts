/** What a balance drawing is about: the planned curve, the bare one, or what is missing. */
import type { SetAssessment, TrimBalance } from '#assessment';
import type { BalanceCurve, BalanceSet } from '#balance';
import { contactInterval } from '#balance';
import { type House, type Known, lockHoldOf } from '#house';

/** A straight piece of the curve between two heights, with the edges that contact leaves open. */
export type Stretch = {
  readonly fromM: number;
  readonly toM: number;
  readonly from: StretchEnd;
  readonly to: StretchEnd;
};

/** U at one end of a stretch, N, and the least and most that a resting piece could make of it. */
export type StretchEnd = {
  readonly valueN: number;
  readonly lowN: number;
  readonly highN: number;
  readonly doubtN: number;
};

export type BalanceSubject = {
  readonly set: BalanceSet;
  /** Without what would happen below the low stop, where the batten never comes. */
  readonly curve: BalanceCurve;
  readonly stretches: readonly Stretch[];
  readonly trims: readonly TrimBalance[];
  readonly lockN: number | null;
  readonly handsN: number | null;
  readonly load: 'show' | 'pipeWeight';
};

export type MissingSubject = { readonly needs: readonly string[] };

/** Just inside an end of a stretch, so that the contact at the end itself does not count. */
const INSIDE_M = 1e-4;

const stretchEnd = (
  set: BalanceSet,
  { valueN, doubtN, insideM }: { valueN: number; doubtN: number; insideM: number },
): StretchEnd => {
  const { low, high } = contactInterval(set, insideM);
  const isOpen = high > low;
  return {
    valueN,
    lowN: isOpen ? Math.min(valueN, low) : valueN,
    highN: isOpen ? Math.max(valueN, high) : valueN,
    doubtN,
  };
};

export const stretchesOf = (set: BalanceSet, { nodes }: BalanceCurve): readonly Stretch[] =>
  nodes.slice(1).flatMap((upper, index) => {
    const lower = nodes[index];
    if (lower === undefined) return [];
    const insideM = Math.min(INSIDE_M, (upper.height - lower.height) / 2);
    return [
      {
        fromM: lower.height,
        toM: upper.height,
        from: stretchEnd(set, {
          valueN: lower.above,
          doubtN: lower.uncertainty,
          insideM: lower.height + insideM,
        }),
        to: stretchEnd(set, {
          valueN: upper.below,
          doubtN: upper.uncertainty,
          insideM: upper.height - insideM,
        }),
      },
    ];
  });

/** A piece that just meets the deck on the low stop has its jump at the end of the travel. */
const withinTravel = ({ nodes, jumps, equilibria }: BalanceCurve): BalanceCurve => {
  const lowM = nodes[0]?.height ?? 0;
  const isAbove = ({ height }: { readonly height: number }) => height > lowM + INSIDE_M;
  return { nodes, jumps: jumps.filter(isAbove), equilibria: equilibria.filter(isAbove) };
};

const numberOf = <T extends number>(value: Known<T>): number | null =>
  value.known ? value.value : null;

/** What the hands on one line can pull steadily, as a force at the batten; they hold nothing. */
const handsAtBatten = (set: SetAssessment, { rules }: House): number | null => {
  const pullN = numberOf(rules.pullSteady);
  const people = numberOf(rules.peoplePerHandLine);
  const perBatten = numberOf(set.lineSet.handLinePerBatten);
  if (pullN === null || people === null || perBatten === null) return null;
  return pullN * people * perBatten;
};

export const balanceSubject = (
  set: SetAssessment,
  house: House,
  after?: number,
): BalanceSubject | MissingSubject => {
  const bounds = {
    lockN: numberOf(lockHoldOf(set.lineSet, house.rules)),
    handsN: handsAtBatten(set, house),
  };
  if (set.plan.known) {
    const { plan } = set;
    const later = after === undefined ? undefined : plan.value.after[after];
    const shown = later ?? plan.value;
    return {
      ...bounds,
      set: shown.set,
      curve: withinTravel(shown.curve),
      stretches: stretchesOf(shown.set, shown.curve),
      trims: later === undefined ? plan.value.trims : [],
      load: 'show',
    };
  }
  if (set.hang !== null) return { needs: set.plan.needs };
  if (!set.bare.known) return { needs: set.bare.needs };
  const { set: bare, curve } = set.bare.value;
  return {
    ...bounds,
    set: bare,
    curve: withinTravel(curve),
    stretches: stretchesOf(bare, curve),
    trims: [],
    load: 'pipeWeight',
  };
};
