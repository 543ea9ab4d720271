import { type BalanceSet, imbalanceParts } from '#balance';
import { measure, type Term, type Working } from '#findings';
import { type House, type Known, lockHoldOf } from '#house';
import { GRAVITY, type Newtons } from '#quantities';
import type { SetAssessment, SetPlan } from './types.ts';

/**
 * The working of the main results of one set, each made from the numbers of the assessment:
 * imbalance at working height and every trim, stack, arbor and hand-line pulls.
 *
 * Source  the doc block of each formula; calculations.md sections 4 and 5
 */
export const workingsOf = (set: SetAssessment, house: House): readonly Working[] => {
  if (!set.plan.known) return [];
  const plan = set.plan.value;
  const lockHold = lockHoldOf(set.lineSet, house.rules);
  const names = set.takeoffs.map(({ item }) => item.name);
  const heights = [
    ...(plan.working === null ? [] : [{ name: 'working height', heightM: plan.working.height }]),
    ...plan.trims.map(({ trim, height }) => ({ name: `${trim.name} trim`, heightM: height })),
  ];
  return [
    ...heights.map(({ name, heightM }) =>
      imbalanceWorking({ set: plan.set, names, name, heightM, lockHold }),
    ),
    arborWorking(plan),
    stackWorking(plan, set),
    ...pullWorkings(plan, set),
  ];
};

const lockLimitOf = (hold: Known<Newtons>): Working['limit'] =>
  hold.known
    ? {
        value: measure(hold.value, 'force'),
        source: hold.provenance.source ?? 'house rule',
      }
    : null;

const imbalanceWorking = ({
  set,
  names,
  name,
  heightM,
  lockHold,
}: {
  readonly set: BalanceSet;
  readonly names: readonly string[];
  readonly name: string;
  readonly heightM: number;
  readonly lockHold: Known<Newtons>;
}): Working => {
  const parts = imbalanceParts(set, heightM);
  const items = parts.itemsKg.map(
    (massKg, index): Term => ({
      symbol: `l${index + 1}`,
      meaning: `${names[index] ?? 'item'}, as carried at this height`,
      value: measure(massKg, 'mass'),
    }),
  );
  const battenKg = parts.battenKg;
  const totalKg =
    battenKg + parts.itemsKg.reduce((sum, kg) => sum + kg, 0) + parts.linesKg - parts.arborKg;
  const sum = ['B', ...items.map(({ symbol }) => symbol), 'W'].join(' + ');
  return {
    title: `Imbalance at ${name}`,
    formula: set.purchase === 1 ? `${sum} − A` : `${sum} − A / 2`,
    terms: [
      { symbol: 'B', meaning: 'batten with its fittings', value: measure(battenKg, 'mass') },
      ...items,
      {
        symbol: 'W',
        meaning: 'lift lines, n · w · (z_t − z_e)',
        value: measure(parts.linesKg, 'mass'),
      },
      {
        symbol: 'A',
        meaning: 'whole arbor',
        value: measure(parts.arborKg * set.purchase, 'mass'),
      },
    ],
    result: {
      symbol: 'U',
      meaning: 'imbalance at the batten',
      value: measure(GRAVITY * totalKg, 'imbalance'),
    },
    limit: lockLimitOf(lockHold),
    source: 'statics of a wire over frictionless blocks, checked against potential energy',
    omits: 'friction, which hides imbalance and never makes any',
  };
};

const arborWorking = ({ stack, set }: SetPlan): Working => ({
  title: 'Whole arbor',
  formula: 'A0 + P + S + T',
  terms: [
    { symbol: 'A0', meaning: 'carriage, no bricks', value: measure(set.carriage, 'mass') },
    { symbol: 'P', meaning: 'pipe weight', value: measure(stack.pipeMass, 'mass') },
    { symbol: 'S', meaning: 'show bricks', value: measure(stack.showMass, 'mass') },
    {
      symbol: 'T',
      meaning: 'spreader plates that the carriage does not count',
      value: measure(stack.arborMass - set.carriage - stack.pipeMass - stack.showMass, 'mass'),
    },
  ],
  result: { symbol: 'A', meaning: 'whole arbor', value: measure(stack.arborMass, 'mass') },
  limit: null,
  source: 'sum of the weighed parts',
});

const stackWorking = ({ stack }: SetPlan, { lineSet }: SetAssessment): Working => {
  const rod = lineSet.arbor?.usableRod;
  return {
    title: 'Stack on the rod',
    formula: 'Σt + S',
    terms: [
      {
        symbol: 'Σt',
        meaning: `${stack.plates} bricks, pipe weight among them`,
        value: measure(stack.brickThickness, 'length'),
      },
      {
        symbol: 'S',
        meaning: `${stack.spreaders} spreader plates`,
        value: measure(stack.height - stack.brickThickness, 'length'),
      },
    ],
    result: { symbol: 'H', meaning: 'height of the stack', value: measure(stack.height, 'length') },
    limit: rod?.known
      ? { value: measure(rod.value, 'length'), source: rod.provenance.source ?? 'house' }
      : null,
    source: 'sum of the measured thicknesses; spreader spacing is common practice',
  };
};

const pullWorkings = (
  { pulls, friction, trims }: SetPlan,
  { lineSet }: SetAssessment,
): readonly Working[] => {
  const [first, ...rest] = trims;
  const { handLinePerBatten } = lineSet;
  if (!pulls.known || !friction.known || first === undefined || !handLinePerBatten.known) return [];
  const worst = rest.reduce((one, other) => (other.imbalance > one.imbalance ? other : one), first);
  const { measured, force } = friction.value;
  return [
    {
      title: `Pull on the hand line to take it out from ${worst.trim.name} trim`,
      formula: '( U + f ) / k',
      terms: [
        {
          symbol: 'U',
          meaning: 'imbalance there',
          value: measure(worst.imbalance, 'imbalance'),
        },
        {
          symbol: 'f',
          meaning: measured ? 'friction, from the pull test' : 'friction, assumed by the house',
          value: measure(force, 'force'),
        },
        {
          symbol: 'k',
          meaning: 'travel of the hand line per travel of the batten',
          value: measure(handLinePerBatten.value, 'count'),
        },
      ],
      result: {
        symbol: 'F',
        meaning: 'steady pull; to start it moving takes more',
        value: measure((worst.imbalance + force) / handLinePerBatten.value, 'force'),
      },
      limit: null,
      source: 'work on the hand line equals work at the batten',
      omits: 'the force that starts it moving, which comes on top',
    },
  ];
};
