import { type BalanceItem, type BalanceSet, balanceCurve } from '#balance';
import { blocked, type Reckoned, reckoned } from '#findings';
import type { House, LineSet } from '#house';
import { kilograms } from '#quantities';
import type { Hang, Show } from '#show';
import { type HouseState, type SetState, unknownSetState } from '#state';
import { carriedItem, type ItemTakeoff, type ReleaseState, takeOff, withReleases } from '#takeoff';
import { chooseMix, chosenCounts, pipeCountOf, stackOf } from './bricks.ts';
import { type CarriedHang, freeRangeOf, planOf } from './plan.ts';
import { barePlant, gather, roomOf, windowsOf } from './plant.ts';
import { type PlantOf, plantsOnce } from './plant-once.ts';
import { type ItemsById, recordedOf } from './recorded.ts';
import { structureOf } from './structure.ts';
import { arborMassIn, totalsOf } from './totals.ts';
import type { Assessment, BrickCount, HungMass, SetAssessment, SetPlan } from './types.ts';

/**
 * Works a whole house, with what hangs in it and how it stands, through every calculator once.
 * Sets come in rail order, hung or bare. Nothing throws on a missing value: what depends on it is
 * blocked and says what it needs. `kept` gives the answer of an earlier run for a set whose house,
 * hang and record are the same as they were then; what the sets do together is worked out anew.
 */
export const assess = (
  house: House,
  show: Show | null,
  state: HouseState | null,
  kept: (lineSet: LineSet) => SetAssessment | undefined = () => undefined,
): Assessment => {
  const assessOne = assessorOf(house, show, state);
  const sets = house.lineSets.map((lineSet) => kept(lineSet) ?? assessOne(lineSet));
  return {
    sets,
    bricks: house.brickKinds.map(({ id }) => brickUse(id, house, sets)),
    totals: totalsOf(house, sets, state),
  };
};

const brickUse = (
  kind: string,
  house: House,
  sets: readonly SetAssessment[],
): Assessment['bricks'][number] => {
  const owned = house.brickKinds.find(({ id }) => id === kind)?.owned;
  const planned = sets
    .flatMap(({ plan }) => (plan.known ? plan.value.stack.show : []))
    .filter((run) => run.kind === kind)
    .reduce((sum, { count }) => sum + count, 0);
  return {
    kind,
    planned,
    pipeWeight: pipeCountOf(house, kind),
    owned: owned?.known ? owned.value : null,
  };
};

/** Set after set of one house, for who does not do them all at once; plants are worked once. */
export const assessorOf = (
  house: House,
  show: Show | null,
  state: HouseState | null,
): ((lineSet: LineSet) => SetAssessment) => {
  const plantOf = plantsOnce();
  return (lineSet) => setWith(plantOf, { house, show, state, lineSet });
};

/** One set alone, for a screen on which one item has changed. */
export const assessSet = (
  house: House,
  show: Show | null,
  state: HouseState | null,
  lineSet: LineSet,
): SetAssessment => assessorOf(house, show, state)(lineSet);

type SetAsked = {
  readonly house: House;
  readonly show: Show | null;
  readonly state: HouseState | null;
  readonly lineSet: LineSet;
};

const setWith = (plantOf: PlantOf, { house, show, state, lineSet }: SetAsked): SetAssessment => {
  const hang = show?.hangs.find(({ set }) => set === lineSet.id) ?? null;
  const setState = state?.sets[lineSet.id] ?? unknownSetState;
  const takeoffs = (hang?.items ?? []).map((item) => takeOff(item, house.rules));
  const bare = barePlant(lineSet, house);
  const carried = carriedOf(takeoffs, house.rules);
  const bricks = bricksOf({ house, lineSet, hang, bare, carried });
  const plan = planFrom({ house, lineSet, hang, bare, carried, bricks, setState });
  const stackM = plan.known ? reckoned<number>(plan.value.stack.height) : plan;
  const recorded = recordedOf({
    state: setState,
    lineSet,
    house,
    bare,
    items: itemsById(takeoffs),
  });
  const bareSet = bare.known
    ? reckoned({ set: bare.value, curve: balanceCurve(bare.value) })
    : bare;
  const arborMass = arborMassIn({ plan, hang, bare: bareSet, recorded }, 'planned');
  return {
    lineSet,
    hang,
    takeoffs,
    hung: hungMassOf(takeoffs),
    bare: bareSet,
    room: roomOf(lineSet, house),
    choice: bricks.choice,
    plan,
    windows: windowsOf(lineSet, house, stackM),
    recorded,
    structure: structureOf({ house, lineSet, hang, takeoffs, carried, arborMass }, plantOf),
  };
};

const itemsById = (takeoffs: readonly ItemTakeoff[]): ItemsById =>
  new Map(takeoffs.map((takeoff) => [takeoff.item.id, carriedItem(takeoff.item, takeoff)]));

/** What the batten carries, as it is and after each release in view. */
const carriedOf = (
  takeoffs: readonly ItemTakeoff[],
  rules: House['rules'],
): Reckoned<CarriedHang> => {
  const stages = takeoffs.map((takeoff) => withReleases(takeoff.item, takeoff, rules));
  const needs = stages.flatMap((stage, index) =>
    stage.known ? [] : stage.needs.map((need) => `${takeoffs[index]?.item.name ?? ''}: ${need}`),
  );
  if (needs.length > 0) return blocked(needs);
  const known = stages.flatMap((stage) => (stage.known ? [stage.value] : []));
  return reckoned({ items: known.flatMap(whole), after: afterReleases(known) });
};

type Stages = readonly ReleaseState[];

const whole = (stages: Stages): readonly BalanceItem[] => stages.slice(0, 1).map(carriedBy);
const last = (stages: Stages): readonly BalanceItem[] => stages.slice(-1).map(carriedBy);
const carriedBy = ({ carried }: ReleaseState): BalanceItem => carried;

/** Each release with all else whole, and, where several items lose something, all of it gone. */
const afterReleases = (items: readonly Stages[]): CarriedHang['after'] => {
  const single = items.flatMap((stages, index) =>
    stages.slice(1).map((state) => ({
      how: state.released.join(', then '),
      items: items.flatMap((other, place) => (place === index ? [state.carried] : whole(other))),
    })),
  );
  const losing = items.filter((stages) => stages.length > 1);
  if (losing.length < 2) return single;
  const how = losing.flatMap((stages) => stages.at(-1)?.released ?? []).join(', and ');
  return [...single, { how, items: items.flatMap(last) }];
};

type SetWork = {
  readonly house: House;
  readonly lineSet: LineSet;
  readonly hang: Hang | null;
  readonly bare: Reckoned<BalanceSet>;
  readonly carried: Reckoned<CarriedHang>;
};

type Bricks = {
  readonly choice: SetAssessment['choice'];
  readonly show: Reckoned<readonly BrickCount[]>;
  readonly chosenBy: 'program' | 'person';
  readonly reason: string;
};

/** The program's choice is always made, so that a page can lay it beside a person's. */
const bricksOf = ({ house, lineSet, hang, bare, carried }: SetWork): Bricks => {
  const choice = choiceOf({ house, lineSet, hang, bare, carried });
  if (hang !== null && hang.bricks !== null) {
    const show = Object.entries(hang.bricks.counts).map(([kind, count]) => ({ kind, count }));
    return { choice, show: reckoned(show), chosenBy: 'person', reason: hang.bricks.reason };
  }
  const reason = 'least imbalance while it hangs free';
  if (!choice.known) return { choice, show: choice, chosenBy: 'program', reason };
  const show =
    'infeasible' in choice.value
      ? blocked([`a mix of bricks: ${choice.value.infeasible.reason}`])
      : reckoned(chosenCounts(choice.value));
  return { choice, show, chosenBy: 'program', reason };
};

const choiceOf = ({ house, lineSet, hang, bare, carried }: SetWork): SetAssessment['choice'] => {
  if (hang === null) return blocked(['nothing hangs here']);
  if (hang.deadHungAt !== null) return blocked(['held by steel, not by its arbor']);
  const got = gather();
  if (!bare.known) bare.needs.forEach(got.need);
  if (!carried.known) carried.needs.forEach(got.need);
  if (!bare.known || !carried.known) return blocked(got.needs);
  const freeRange = freeRangeOf(carried.value, hang, lineSet);
  if (!freeRange.known) return freeRange;
  return chooseMix({
    bare: bare.value,
    carried: carried.value,
    hang,
    lineSet,
    house,
    freeRange: freeRange.value,
  });
};

const planFrom = ({
  house,
  lineSet,
  hang,
  bare,
  carried,
  bricks,
  setState,
}: SetWork & { readonly bricks: Bricks; readonly setState: SetState }): Reckoned<SetPlan> => {
  if (hang === null) return blocked(['nothing hangs here']);
  if (hang.deadHungAt !== null) return blocked(['held by steel, not by its arbor']);
  const got = gather();
  if (!bare.known) bare.needs.forEach(got.need);
  if (!carried.known) carried.needs.forEach(got.need);
  if (!bricks.show.known) bricks.show.needs.forEach(got.need);
  if (!bare.known || !carried.known || !bricks.show.known) return blocked([...new Set(got.needs)]);
  const { chosenBy, reason } = bricks;
  const stacked = stackOf({
    bare: bare.value,
    lineSet,
    house,
    show: bricks.show.value,
    chosenBy,
    reason,
  });
  const freeRange = freeRangeOf(carried.value, hang, lineSet);
  if (!stacked.known) return stacked;
  if (!freeRange.known) return freeRange;
  return reckoned(
    planOf({
      bare: bare.value,
      carried: carried.value,
      hang,
      lineSet,
      house,
      state: setState,
      stack: stacked.value.stack,
      freeRange: freeRange.value,
      bricksUncertaintyKg: stacked.value.uncertaintyKg,
    }),
  );
};

const isLoom = ({ item }: ItemTakeoff): boolean => item.kind === 'loom' || item.kind === 'deckLoom';

const hungMassOf = (takeoffs: readonly ItemTakeoff[]): Reckoned<HungMass> => {
  const needs = takeoffs.flatMap(({ item, total }) =>
    total.known ? [] : total.needs.map((need) => `${item.name}: ${need}`),
  );
  if (needs.length > 0) return blocked(needs);
  let [withoutLoomKg, loomKg, squaresKg2] = [0, 0, 0];
  let uncertaintyKg: number | null = 0;
  for (const takeoff of takeoffs) {
    if (!takeoff.total.known) continue;
    const { massKg, uncertaintyKg: each, uncertaintyRssKg: eachRss } = takeoff.total.value;
    if (isLoom(takeoff)) loomKg += massKg;
    else withoutLoomKg += massKg;
    uncertaintyKg = each === null || uncertaintyKg === null ? null : uncertaintyKg + each;
    squaresKg2 += (eachRss ?? 0) ** 2;
  }
  return reckoned({
    withoutLoom: kilograms(withoutLoomKg),
    loom: kilograms(loomKg),
    uncertainty: uncertaintyKg === null ? null : kilograms(uncertaintyKg),
    uncertaintyRss: uncertaintyKg === null ? null : kilograms(Math.sqrt(squaresKg2)),
  });
};
