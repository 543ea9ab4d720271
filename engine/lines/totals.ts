import { GRAVITY, newtons } from '#quantities';
import type { SetOnSteel, Total } from './types.ts';

type Share = { readonly set: string; readonly valueN: number; readonly moving: boolean };

const totalOf = (id: string, shares: readonly Share[], movingShare: number): Total => {
  const raised = shares.map(({ set, valueN, moving }) => ({
    set,
    stillN: valueN,
    dynamicN: moving ? movingShare * valueN : 0,
  }));
  const dynamicN = raised.reduce((sum, each) => sum + each.dynamicN, 0);
  const stillN = raised.reduce((sum, each) => sum + each.stillN, 0);
  return {
    id,
    sets: raised.map((each) => ({ set: each.set, value: newtons(each.stillN + each.dynamicN) })),
    value: newtons(stillN + dynamicN),
    dynamic: newtons(dynamicN),
  };
};

export type BayForces = {
  readonly bay: string;
  readonly vertical: Total;
  readonly horizontal: Total;
};

/**
 * What the sets of each bay put on its head-block beam, hung or bare.
 *
 *     vertical    V = Σ g·(A_i + m_i + w_i)·(1 + s_i)
 *     horizontal  H = Σ g·(A_i + w_i)/r_i·(1 + s_i)
 *
 *     A_i  kg  arborMass      with double purchase the moving leg and the dead end share it, and
 *                             both stand on this steel, so the steel carries all of it
 *     m_i  kg  handLineMass
 *     w_i  kg  arborWireMass
 *     r_i  -   purchase
 *     s_i  -   movingShare of the sets that move, else 0
 *
 * Source  equilibrium of arbor and head block; the-job.md C39, C41
 * Omits   what a lock or a hand holds back, up to the limit of the lock for each set (more); the
 *         slope of the run to the loft blocks (a few per cent more down and less sideways where
 *         the head blocks stand higher); blocks and steel
 * Check   the-job.md 10.2
 */
export const bayTotals = (
  sets: readonly SetOnSteel[],
  { bays, movingShare }: { readonly bays: readonly string[]; readonly movingShare: number },
): readonly BayForces[] =>
  bays.map((bay) => {
    const inBay = sets.filter((set) => set.bay === bay);
    const shares = (massOf: (set: SetOnSteel) => number): readonly Share[] =>
      inBay.map((set) => ({ set: set.set, valueN: GRAVITY * massOf(set), moving: set.moving }));
    const arborSide = (set: SetOnSteel): number => set.arborMass + set.arborWireMass;
    return {
      bay,
      vertical: totalOf(
        bay,
        shares((set) => arborSide(set) + set.handLineMass),
        movingShare,
      ),
      horizontal: totalOf(
        bay,
        shares((set) => arborSide(set) / set.purchase),
        movingShare,
      ),
    };
  });

export type Well = { readonly id: string; readonly x: number; readonly width: number };

/** Lines typed in feet come back from metres with the last figure off. */
const SAME_PLACE_M = 1e-9;

const wellOf = (wells: readonly Well[], x: number): string | null => {
  let [found, nearestM]: [string | null, number] = [null, Number.POSITIVE_INFINITY];
  for (const well of wells) {
    const awayM = Math.abs(x - well.x);
    if (awayM > well.width / 2 + SAME_PLACE_M || awayM >= nearestM) continue;
    [found, nearestM] = [well.id, awayM];
  }
  return found;
};

export type WellForces = {
  readonly wells: readonly Total[];
  readonly linesOnNoWell: readonly { readonly set: string; readonly x: number }[];
};

/**
 * What the lines of all sets put on each loft well.
 *
 *     F = Σ T_ij·(1 + s_i)          over the lines that stand within half the well's width of it
 *
 *     T_ij  N  lines[].tension  at the loft block
 *
 * A line that two wells could carry stands on the nearer, and on the first of two as near.
 *
 * Source  equilibrium of the loft block, its vertical part with a level run; the-job.md C42
 * Omits   the sideways part, as large as this one, which the grid takes in its plane; a climbing
 *         run makes the vertical part less than this
 * Check   the-job.md 3E
 */
export const wellTotals = (
  sets: readonly SetOnSteel[],
  { wells, movingShare }: { readonly wells: readonly Well[]; readonly movingShare: number },
): WellForces => {
  const onWells = new Map<string, Share[]>(wells.map(({ id }) => [id, []]));
  const linesOnNoWell: { readonly set: string; readonly x: number }[] = [];
  for (const { set, lines, moving } of sets) {
    const sums = new Map<string, number>();
    for (const { x, tension } of lines) {
      const well = wellOf(wells, x);
      if (well === null) linesOnNoWell.push({ set, x });
      else sums.set(well, (sums.get(well) ?? 0) + tension);
    }
    for (const [well, valueN] of sums) onWells.get(well)?.push({ set, valueN, moving });
  }
  return {
    wells: wells.map(({ id }) => totalOf(id, onWells.get(id) ?? [], movingShare)),
    linesOnNoWell,
  };
};

/**
 * Where and when each bay or well carries most, over the states that an order of work visits. Of
 * states with the same total it is the first.
 */
export const worstOver = (
  states: readonly { readonly state: string; readonly totals: readonly Total[] }[],
): readonly { readonly state: string; readonly total: Total }[] => {
  const worst = new Map<string, { readonly state: string; readonly total: Total }>();
  for (const { state, totals } of states) {
    for (const total of totals) {
      const before = worst.get(total.id);
      if (before === undefined || total.value > before.total.value) {
        worst.set(total.id, { state, total });
      }
    }
  }
  return [...worst.values()];
};
