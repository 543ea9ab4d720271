import { type BalanceSet, imbalanceAt, type MixResult, type MixTask, mixForSet } from '#balance';
import type { Reckoned } from '#findings';
import { type HeightSpan, type House, type Known, type LineSet, lockHoldOf } from '#house';
import { kilograms, metres, type Newtons } from '#quantities';
import type { Hang } from '#show';
import type { StackRun } from '#state';
import { baselineExtremes, battenAtTrim, type CarriedHang } from './plan.ts';
import { brickKindOf, gather, pipeWeightOf, spreadersFor, uncertaintyOf } from './plant.ts';
import type { BrickCount, PlannedStack } from './types.ts';

/** The mix that the program chooses for a set: least worst imbalance where nothing rests. */
export const chooseMix = ({
  bare,
  carried,
  hang,
  lineSet,
  house,
  freeRange,
}: {
  readonly bare: BalanceSet;
  readonly carried: CarriedHang;
  readonly hang: Hang;
  readonly lineSet: LineSet;
  readonly house: House;
  readonly freeRange: HeightSpan;
}): Reckoned<MixResult> => {
  const { arbor } = lineSet;
  const got = gather();
  const pipe = arbor === null ? null : pipeWeightOf(arbor, house);
  const kinds = house.brickKinds
    .filter(({ serves }) => serves.show)
    .map((brick) => ({
      id: brick.id,
      mass: got.number(brick.mass, `mass of brick ${brick.id}`),
      thickness: got.number(brick.thickness, `thickness of brick ${brick.id}`),
      stock: Math.max(
        0,
        got.number(brick.owned, `number of bricks ${brick.id}`) - pipeCountOf(house, brick.id),
      ),
    }));
  const rodM = arbor === null ? 0 : got.number(arbor.usableRod, 'usable rod of the arbor');
  const spreader = spreaderTask(house, got);
  return got.give(() => {
    const task: MixTask = {
      purchase: bare.purchase,
      variants: [carried.items, ...carried.after.map(({ items }) => items)].map((items) =>
        baselineExtremes(bare, items, freeRange),
      ),
      kinds,
      baseMass: bare.carriage + bare.bricks,
      baseThickness: pipe?.known ? pipe.value.thicknessM : 0,
      stackHeight: rodM,
      ...spreader,
      ...(arbor?.massLimit.known ? { massLimit: arbor.massLimit.value } : {}),
      holds: holdsAtTrims(bare, carried, hang, lockHoldOf(lineSet, house.rules), freeRange),
    };
    return mixForSet(task);
  });
};

/** Spreader plates as the brick problems take them; none where the house has none. */
const spreaderTask = (
  { spreader }: House,
  got: ReturnType<typeof gather>,
): Pick<MixTask, 'spreader'> => {
  if (spreader === null) return {};
  const mass = spreader.inCarriage ? 0 : got.number(spreader.mass, 'mass of a spreader plate');
  const thickness = got.number(spreader.thickness, 'thickness of a spreader plate');
  const every = got.number(spreader.every, 'spacing of spreader plates');
  return { spreader: { mass, thickness, every, rule: 'floor' } };
};

/** The lock must hold the set at every trim where it hangs free; contact is for the order. */
const holdsAtTrims = (
  bare: BalanceSet,
  carried: CarriedHang,
  hang: Hang,
  lockHold: Known<Newtons>,
  { from }: HeightSpan,
): NonNullable<MixTask['holds']> => {
  if (!lockHold.known) return [];
  const set = { ...bare, items: carried.items };
  return hang.trims
    .map((trim) => battenAtTrim(trim, carried.items, gather()))
    .filter((heightM) => heightM >= from)
    .map((heightM) => ({
      heightM,
      baselineN: imbalanceAt(set, heightM),
      inN: lockHold.value,
      outN: lockHold.value,
    }));
};

/** Bricks of a kind that stay on arbors as pipe weight, over the whole house. */
export const pipeCountOf = (house: House, kind: string): number =>
  house.lineSets.reduce(
    (sum, { arbor }) =>
      sum +
      (arbor?.pipeWeight ?? [])
        .filter((run) => run.kind === kind)
        .reduce((count, run) => count + run.count, 0),
    0,
  );

/**
 * The stack that these show bricks make: pipe weight at the bottom, then the show bricks with the
 * thicker kinds first. Where a thin brick lies is for the order of work to say.
 */
export const stackOf = ({
  bare,
  lineSet,
  house,
  show,
  chosenBy,
  reason,
}: {
  readonly bare: BalanceSet;
  readonly lineSet: LineSet;
  readonly house: House;
  readonly show: readonly BrickCount[];
  readonly chosenBy: PlannedStack['chosenBy'];
  readonly reason: string;
}): Reckoned<{ readonly stack: PlannedStack; readonly uncertaintyKg: number | null }> => {
  const got = gather();
  const pipe = lineSet.arbor === null ? null : pipeWeightOf(lineSet.arbor, house);
  const weighed = weighShow(show, house, got);
  const pipeThicknessM = pipe?.known ? pipe.value.thicknessM : 0;
  const spreaders = spreadersFor(house, pipeThicknessM + weighed.thicknessM);
  if (!spreaders.known) spreaders.needs.forEach(got.need);
  return got.give(() => {
    const plates = spreaders.known ? spreaders.value : { count: 0, massKg: 0, height: 0 };
    const pipeRuns = (lineSet.arbor?.pipeWeight ?? []).map(
      (run): StackRun => ({ ...run, tag: 'pipe' }),
    );
    const runs = [...pipeRuns, ...weighed.runs];
    const pipeUncertaintyKg = pipe?.known ? pipe.value.uncertaintyKg : null;
    return {
      stack: {
        show,
        chosenBy,
        reason,
        runs,
        spreaders: plates.count,
        plates: runs.reduce((sum, { count }) => sum + count, 0),
        height: metres(plates.height),
        brickThickness: metres(pipeThicknessM + weighed.thicknessM),
        showMass: kilograms(weighed.massKg),
        pipeMass: kilograms(bare.bricks),
        arborMass: kilograms(bare.carriage + bare.bricks + weighed.massKg + plates.massKg),
      },
      uncertaintyKg:
        weighed.uncertaintyKg === null || pipeUncertaintyKg === null
          ? null
          : weighed.uncertaintyKg + pipeUncertaintyKg,
    };
  });
};

const weighShow = (
  show: readonly BrickCount[],
  house: House,
  got: ReturnType<typeof gather>,
): {
  readonly massKg: number;
  readonly thicknessM: number;
  readonly uncertaintyKg: number | null;
  readonly runs: readonly StackRun[];
} => {
  let massKg = 0;
  let thicknessM = 0;
  let uncertaintyKg: number | null = 0;
  const runs: { readonly run: StackRun; readonly eachM: number }[] = [];
  for (const { kind, count } of show) {
    const brick = brickKindOf(house, kind);
    if (brick === undefined) {
      got.need(`brick kind ${kind}`);
      continue;
    }
    const eachM = got.number(brick.thickness, `thickness of brick ${kind}`);
    massKg += count * got.number(brick.mass, `mass of brick ${kind}`);
    thicknessM += count * eachM;
    const each = uncertaintyOf(brick.mass, house.rules);
    uncertaintyKg = each === null || uncertaintyKg === null ? null : uncertaintyKg + count * each;
    if (count > 0) runs.push({ run: { kind, count, tag: 'show' }, eachM });
  }
  const ordered = runs.toSorted((one, other) => other.eachM - one.eachM).map(({ run }) => run);
  return { massKg, thicknessM, uncertaintyKg, runs: ordered };
};

/** The show bricks of the first choice, kinds with none left out. */
export const chosenCounts = (choice: MixResult): readonly BrickCount[] =>
  'infeasible' in choice
    ? []
    : Object.entries(choice.chosen.counts)
        .filter(([, count]) => count > 0)
        .map(([kind, count]) => ({ kind, count }));
