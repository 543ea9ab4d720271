import type { SetAssessment } from '#assessment';
import { type Finding, measure, type Reckoned } from '#findings';
import { purchaseOf } from '#house';
import { lack } from '../known-values.ts';
import { raise } from '../raise.ts';
import type { Lack } from '../rule.ts';

/** What is missing, in the order in which it is first missed, and all that it blocks. */
export const raiseUnknown = (lacks: readonly Lack[], set?: string): readonly Finding[] => {
  if (lacks.length === 0) return [];
  const what = [...new Set(lacks.map(({ lacks: missing }) => missing))];
  const blocks = [...new Set(lacks.map((one) => one.blocks))];
  return [
    raise('UNK-001', {
      at: set === undefined ? {} : { set },
      measured: measure(what.length, 'count'),
      facts: { what: what.join('; '), blocks: blocks.join('; ') },
    }),
  ];
};

const lacksOf = (result: Reckoned<unknown>, blocks: string): readonly Lack[] =>
  result.known ? [] : result.needs.map((need) => lack(need, blocks));

/**
 * UNK-001: everything that the assessment could not work out for a set, by name. A set without an
 * arbor has no balance to miss, an empty one no plan, and one that steel holds neither.
 */
export const unknownOf = (set: SetAssessment): readonly Lack[] => {
  const { lineSet, hang, takeoffs, structure } = set;
  const hasArbor = purchaseOf(lineSet.suspension) !== null;
  const isHeldBySteel = hang !== null && hang.deadHungAt !== null;
  return [
    ...lacksOf(set.hung, 'mass that hangs'),
    ...takeoffs.flatMap(({ item, faults, toleranceNeeds }) => [
      ...faults.map(({ path, found, accepted }) =>
        lack(`${item.name}: ${path}: found ${found}, wanted ${accepted}`, 'take-off'),
      ),
      ...toleranceNeeds.map((need) => lack(`${item.name}: ${need}`, 'worst case of the masses')),
    ]),
    ...(hasArbor && !isHeldBySteel ? structureLacks(structure) : []),
    ...(hasArbor ? arborLacks(set) : []),
    ...(hasArbor && hang !== null && !isHeldBySteel ? planLacks(set) : []),
  ];
};

const structureLacks = (structure: SetAssessment['structure']): readonly Lack[] =>
  // What the plant lacks is missed for the house, since it is as a rule the same on all sets.
  structure.known
    ? structure.value.hungNeeds.map((need) =>
        lack(need, 'what lines, blocks and pipe carry with all that hangs'),
      )
    : [];

const arborLacks = ({ bare, room, recorded }: SetAssessment): readonly Lack[] => {
  const { stack, height, items } = recorded.state;
  // What nobody recorded is STA-005; here stands what was recorded and cannot be worked out.
  const isRecorded = stack !== null && height !== null && items !== null;
  return [
    ...lacksOf(bare, 'balance of the bare set'),
    ...lacksOf(room, 'room of the arbor'),
    ...(stack === null ? [] : lacksOf(recorded.arborMass, 'mass of the recorded arbor')),
    ...(isRecorded ? lacksOf(recorded.imbalance, 'recorded imbalance') : []),
    ...(recorded.pull === null ? [] : lacksOf(recorded.pull, 'pull test')),
  ];
};

const planLacks = ({ choice, plan, windows }: SetAssessment): readonly Lack[] => [
  ...lacksOf(choice, 'choice of bricks'),
  ...lacksOf(plan, 'balance over the travel'),
  ...windows.flatMap(({ window }) => lacksOf(window, 'reach from the galleries')),
  ...(plan.known
    ? [
        ...plan.value.doubtsUnsaid.map((doubt) => lack(doubt, 'imbalance at its worst')),
        ...lacksOf(plan.value.friction, 'friction'),
        ...lacksOf(plan.value.pulls, 'pulls on the hand line'),
      ]
    : []),
];
