import {
  type BalanceItem,
  type BalanceSet,
  balanceCurve,
  contactInterval,
  pullTest,
} from '#balance';
import { blocked, type Reckoned, reckoned } from '#findings';
import type { House, LineSet } from '#house';
import { type Kilograms, kilograms, newtons } from '#quantities';
import type { ItemPhase, SetState } from '#state';
import { brickKindOf, gather, spreadersFor } from './plant.ts';
import type { RecordedSet } from './types.ts';

/** The items of a hang by id, as the balance takes them. */
export type ItemsById = ReadonlyMap<string, Reckoned<BalanceItem>>;

/**
 * A set as it was recorded: what is on its arbor and how it balances where it stands. What was
 * not recorded blocks the answer, and is never taken from the plan.
 */
export const recordedOf = ({
  state,
  lineSet,
  house,
  bare,
  items,
}: {
  readonly state: SetState;
  readonly lineSet: LineSet;
  readonly house: House;
  readonly bare: Reckoned<BalanceSet>;
  readonly items: ItemsById;
}): RecordedSet => {
  const arborMass = bare.known ? arborMassOf(state, bare.value, house) : bare;
  return {
    state,
    arborMass,
    imbalance: imbalanceOf({ state, bare, arborMass, items }),
    pull: pullOf(state, lineSet),
  };
};

const arborMassOf = ({ stack }: SetState, bare: BalanceSet, house: House): Reckoned<Kilograms> => {
  if (stack === null) return blocked(['the stack on the arbor, as counted']);
  const got = gather();
  let massKg = bare.carriage;
  let thicknessM = 0;
  for (const { kind, count, tag } of stack) {
    // Plates written into the stack are counted by the house's own rule below, once.
    if (tag === 'spreader') continue;
    const brick = brickKindOf(house, kind);
    if (brick === undefined) {
      got.need(`brick kind ${kind}`);
      continue;
    }
    massKg += count * got.number(brick.mass, `mass of brick ${kind}`);
    thicknessM += count * got.number(brick.thickness, `thickness of brick ${kind}`);
  }
  const spreaders = spreadersFor(house, thicknessM);
  if (!spreaders.known) spreaders.needs.forEach(got.need);
  return got.give(() => kilograms(massKg + (spreaders.known ? spreaders.value.massKg : 0)));
};

/** Whether a phase leaves the load of an item to its travel, or takes all of it off the batten. */
const hangs = (phase: ItemPhase): boolean => phase === 'flying' || phase === 'attachedResting';

const imbalanceOf = ({
  state,
  bare,
  arborMass,
  items,
}: {
  readonly state: SetState;
  readonly bare: Reckoned<BalanceSet>;
  readonly arborMass: Reckoned<Kilograms>;
  readonly items: ItemsById;
}): RecordedSet['imbalance'] => {
  const got = gather();
  if (!bare.known) bare.needs.forEach(got.need);
  else if (!arborMass.known) arborMass.needs.forEach(got.need);
  if (state.height === null) got.need('height of the batten');
  if (state.items === null) got.need('what hangs on the batten, as recorded');
  const hung: BalanceItem[] = [];
  for (const { item, phase } of state.items ?? []) {
    if (!hangs(phase)) continue;
    const carried = items.get(item);
    if (carried === undefined) got.need(`item ${item}, which the show does not list`);
    else if (carried.known) hung.push(carried.value);
    else carried.needs.forEach(got.need);
  }
  return got.give(() => {
    if (!bare.known || !arborMass.known || state.height === null) {
      throw new Error('defect: an imbalance was asked of what is not known');
    }
    const bricks = arborMass.value - bare.value.carriage;
    return spanOf({ ...bare.value, bricks, items: hung }, state.height);
  });
};

/** Least and most over the recorded heights; at a contact, what deck and batten may share. */
const spanOf = (
  set: BalanceSet,
  { low, high }: NonNullable<SetState['height']>,
): { readonly low: ReturnType<typeof newtons>; readonly high: ReturnType<typeof newtons> } => {
  if (low === high) return contactInterval(set, low);
  const values = balanceCurve(set, low, high).nodes.flatMap(({ below, above, contact }) => [
    below,
    above,
    contact.low,
    contact.high,
  ]);
  return { low: newtons(Math.min(...values)), high: newtons(Math.max(...values)) };
};

const pullOf = ({ pullTest: test }: SetState, lineSet: LineSet): RecordedSet['pull'] => {
  if (test === null) return null;
  if (!lineSet.handLinePerBatten.known) return blocked(['travel of the hand line']);
  const handLinePerBatten = lineSet.handLinePerBatten.value;
  return reckoned(pullTest({ outN: test.out, inN: test.in, handLinePerBatten }));
};
