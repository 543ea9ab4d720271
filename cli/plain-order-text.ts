/** `compute plan` and `compute verify` in words: the same sentences as `plan` and `verify`. */
import { blankHouse, type ComputeInputs, readHouseValue } from '#documents';
import { type House, unknownValue } from '#house';
import { judgePlain, planPlain, type Replayed } from '#orders';
import { assert, ok, type Refusal, type Result } from '#outcome';
import type { UnitSystem } from '#quantities';
import { type OrderWords, sayPlan } from '#sheets';
import { stepsText, verdictText } from './order-text.ts';

type Text = Result<readonly string[], readonly Refusal[]>;

export const planWords = (asked: ComputeInputs['plan'], units: UnitSystem): Text => {
  const planned = planPlain(asked);
  if (!planned.ok) return planned;
  const { plan, order } = planned.value;
  const house = houseOf(asked.set, units);
  const outcome = sayPlan(plan, house, order.start);
  const judged = 'found' in plan ? verdictText({ house, physics: order.physics }, order) : [];
  return ok([...orderText(order, house), '', ...outcome, ...judged]);
};

export const verifyWords = (asked: ComputeInputs['verify'], units: UnitSystem): Text => {
  const order = judgePlain(asked);
  if (!order.ok) return order;
  const house = houseOf(asked.set, units);
  const judged = verdictText({ house, physics: order.value.physics }, order.value);
  return ok([...orderText(order.value, house), '', ...judged]);
};

const orderText = (order: Replayed, house: House): readonly string[] => {
  const { physics, checked } = order;
  const words: OrderWords = {
    house,
    physics,
    nameOf: (item) => item,
    isDoubtTried: checked.doubt === 'worst',
    areFaultsTried: checked.faults === 'check',
  };
  return [`Set ${physics.set}`, ...stepsText(order, words)];
};

/** A house of which only the units and the names of its bricks are known: no more is said of it. */
const houseOf = ({ bricks }: ComputeInputs['plan']['set'], units: UnitSystem): House => {
  const words = units === 'customary' ? 'US' : 'UK';
  const blank = blankHouse({
    id: 'plain',
    name: 'plain',
    units,
    words,
    operatingSide: 'stageLeft',
  });
  const read = readHouseValue(blank);
  assert(read.ok, `a house of which nothing is known reads: ${JSON.stringify(read)}`);
  const unsaid = unknownValue('not said');
  return {
    ...read.value.house,
    brickKinds: bricks.map(({ id }) => ({
      id,
      name: id,
      mass: unsaid,
      thickness: unsaid,
      floorLength: unsaid,
      serves: { pipeWeight: true, show: true },
      looksLike: [],
      owned: unsaid,
    })),
  };
};
