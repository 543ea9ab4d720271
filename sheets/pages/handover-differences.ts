/** What stands otherwise than the show plans it, set by set, in words. */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import type { ItemPhase, StackRun, Standing } from '#state';
import { message, phrase, told } from '#texts';
import { height } from '../words/say-set.ts';
import { bricksWords } from '../words/say-standing.ts';
import type { SetOnRecord } from './handover-record.ts';
import { isAt, namedHeight, trimHeights } from './preset-trims.ts';

const isOn = (phase: ItemPhase): boolean => phase !== 'away' && phase !== 'beside';

const itemName = ({ takeoffs }: SetAssessment, id: string): string =>
  takeoffs.find(({ item }) => item.id === id)?.item.name ?? id;

type Counts = ReadonlyMap<string, number>;

const showCounts = (stack: readonly StackRun[]): Counts => {
  const counts = new Map<string, number>();
  for (const { kind, count, tag } of stack) {
    if (tag === 'show' && count > 0) counts.set(kind, (counts.get(kind) ?? 0) + count);
  }
  return counts;
};

const plannedCounts = ({ hang, plan }: SetAssessment): Counts | null => {
  if (hang === null) return new Map();
  if (hang.deadHungAt !== null) return new Map(Object.entries(hang.bricks?.counts ?? {}));
  return plan.known ? showCounts(plan.value.stack.runs) : null;
};

const countsWords = (counts: Counts, house: House): string => {
  const words = [...counts].map(([kind, count]) => bricksWords(count, kind, house));
  return words.length === 0 ? phrase(house, 'none') : words.join(', ');
};

const isSame = (one: Counts, other: Counts): boolean =>
  one.size === other.size && [...one].every(([kind, count]) => other.get(kind) === count);

const PHASES = {
  attachedSlack: message('{item} is tied on and lies slack'),
  attachedResting: message('{item} rests, its picks tight'),
  heldElsewhere: message('{item} is held by something else'),
} as const;

const itemWords = (set: SetAssessment, { items }: Standing, house: House): readonly string[] => {
  const planned = new Set((set.hang?.items ?? []).map(({ id }) => id));
  const isSteel = set.hang?.deadHungAt != null;
  const missing = [...planned].filter((id) => !isOn(items[id] ?? 'away'));
  const strange = Object.entries(items).filter(([id, phase]) => isOn(phase) && !planned.has(id));
  const others = [...planned].flatMap((id): readonly string[] => {
    const phase = items[id] ?? 'away';
    if (!isOn(phase) || phase === 'flying' || (isSteel && phase === 'heldElsewhere')) return [];
    return [phrase(house, PHASES[phase as keyof typeof PHASES], { item: itemName(set, id) })];
  });
  return [
    ...missing.map((id) => phrase(house, 'not on it: {item}', { item: itemName(set, id) })),
    ...strange.map(([id]) => phrase(house, 'on it, and not of the show: {item}', { item: id })),
    ...others,
  ];
};

const heightWords = (set: SetAssessment, standing: Standing, house: House): readonly string[] => {
  const trims = trimHeights(set);
  if (trims.length === 0 || isAt(standing.height, trims)) return [];
  return [
    phrase(house, 'stands at {at}, planned {trims}', {
      at: height(standing.height, house),
      trims: trims.map((each) => namedHeight(each, house)).join(', '),
    }),
  ];
};

const brickWords = (set: SetAssessment, { stack }: Standing, house: House): readonly string[] => {
  const planned = plannedCounts(set);
  const there = showCounts(stack);
  if (planned === null || isSame(planned, there)) return [];
  return [
    phrase(house, 'show bricks {there}, planned {planned}', {
      there: countsWords(there, house),
      planned: countsWords(planned, house),
    }),
  ];
};

/** At rest a lock is closed, its ring on and the collar tight: anything else is said. */
const restWords = (
  { lock, ring, collar, service, live, set }: SetOnRecord,
  house: House,
): readonly string[] => [
  ...(lock === 'open' ? [phrase(house, 'LOCK OPEN')] : []),
  ...(ring === 'off' ? [phrase(house, 'RING OFF')] : []),
  ...(collar === 'loose' ? [phrase(house, 'COLLAR LOOSE')] : []),
  ...(service === 'paused' ? [phrase(house, 'work on it is paused')] : []),
  ...(service === 'deadHung' && set.hang?.deadHungAt == null
    ? [phrase(house, 'hung on steel, and not planned so')]
    : []),
  ...(live === null || live.lockDoubt === null
    ? []
    : [
        phrase(house, 'its lock is not to be trusted: {why}', {
          why: told(house, live.lockDoubt),
        }),
      ]),
];

const ORDERS = {
  load: message('load: {done} of {steps} steps done'),
  strike: message('strike: {done} of {steps} steps done'),
  change: message('change: {done} of {steps} steps done'),
} as const;

const orderWords = ({ live }: SetOnRecord, house: House): readonly string[] => {
  const plan = live?.plan ?? null;
  if (plan === null || plan.done >= plan.steps.length) return [];
  return [phrase(house, ORDERS[plan.job], { done: plan.done, steps: plan.steps.length })];
};

/** Bare, and the show hangs something there. */
export const isNotBegun = ({ set, standing }: SetOnRecord): boolean =>
  set.hang !== null &&
  standing !== null &&
  !Object.values(standing.items).some(isOn) &&
  showCounts(standing.stack).size === 0;

/** Empty where it stands as planned, and where nothing of it is known. */
export const differenceWords = (on: SetOnRecord, house: House): readonly string[] => {
  const { set, standing } = on;
  if (standing === null) return [];
  const planned = isNotBegun(on)
    ? []
    : [
        ...heightWords(set, standing, house),
        ...itemWords(set, standing, house),
        ...brickWords(set, standing, house),
      ];
  return [...planned, ...restWords(on, house), ...orderWords(on, house)];
};
