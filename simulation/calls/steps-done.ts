/**
 * What a step does to a set, in code of its own: the true world and the witness use it, and
 * neither the fold nor the judge of the program.
 */
import { unreachable } from '#outcome';
import type { ItemPhase, OrderPhysics, Restraint, StackRun, Standing, Step } from '#state';

const SAME_M = 1e-6;

export const isSame = (oneM: number, otherM: number): boolean => Math.abs(oneM - otherM) <= SAME_M;

type Items = Standing['items'];

/** Runs of one kind and tag put together, empty ones left out. */
const tidied = (stack: readonly StackRun[]): readonly StackRun[] => {
  const runs: StackRun[] = [];
  for (const run of stack) {
    const top = runs.at(-1);
    if (run.count === 0) continue;
    if (top?.kind === run.kind && top.tag === run.tag) {
      runs[runs.length - 1] = { ...top, count: top.count + run.count };
    } else runs.push(run);
  }
  return runs;
};

/** Null where the uppermost brick is of another kind. */
const oneOff = (stack: readonly StackRun[], kind: string): readonly StackRun[] | null => {
  const plates = stack.flatMap((run) => Array.from({ length: run.count }, () => run));
  const at = plates.findLastIndex(({ tag }) => tag !== 'spreader');
  if (plates[at]?.kind !== kind) return null;
  return tidied(plates.slice(0, at).map((run) => ({ ...run, count: 1 })));
};

/** The stack with so many more, or with so many less where `count` is negative. */
export const withPlates = (
  stack: readonly StackRun[],
  kind: string,
  count: number,
): readonly StackRun[] | null => {
  if (count >= 0) return tidied([...stack, { kind, count, tag: 'show' }]);
  let next: readonly StackRun[] | null = stack;
  for (let left = -count; left > 0 && next !== null; left -= 1) next = oneOff(next, kind);
  return next;
};

export const platesIn = (stack: readonly StackRun[]): number => {
  let sum = 0;
  for (const { count, tag } of stack) if (tag !== 'spreader') sum += count;
  return sum;
};

export const phaseOf = (items: Items, item: string): ItemPhase => items[item] ?? 'away';

/** Out, everything is lifted but what lies slack below the working height; in, rests stay. */
const moved = (physics: OrderPhysics, { items, height }: Standing, toM: number): Items => {
  const next: Record<string, ItemPhase> = { ...items };
  for (const [id, phase] of Object.entries(items)) {
    const meetsM = physics.contactM(id);
    if (phase === 'attachedResting') {
      const comesAlong = toM > height || (meetsM !== null && isSame(meetsM, height));
      next[id] = comesAlong ? 'flying' : 'attachedSlack';
    } else if (phase === 'attachedSlack' && toM > height) {
      const isLow = toM <= physics.workingM + SAME_M;
      const staysSlack = isLow && meetsM !== null && meetsM > physics.workingM;
      if (!staysSlack) next[id] = 'flying';
    }
  }
  return next;
};

const isAlike = (one: Restraint, other: Restraint): boolean =>
  one.kind === other.kind &&
  one.resists === other.resists &&
  one.rating === other.rating &&
  one.from === other.from &&
  one.to === other.to;

const withoutOne = (restraints: readonly Restraint[], gone: Restraint) => {
  const at = restraints.findIndex((each) => isAlike(each, gone));
  return at < 0 ? null : restraints.filter((_, index) => index !== at);
};

export const zoneKey = (zone: Standing['closed'][number]): string =>
  zone.zone === 'run' ? 'run' : `drop:${zone.gallery}`;

const turned = (items: Items, from: ItemPhase, to: ItemPhase): Items =>
  Object.fromEntries(Object.entries(items).map(([id, phase]) => [id, phase === from ? to : phase]));

/** How the set stands after the step; null where nobody could do it, or it cannot be said. */
export const afterStep = (
  physics: OrderPhysics | null,
  standing: Standing,
  step: Step,
): Standing | null => {
  const { items, restraints, stack, closed } = standing;
  const as = (item: string, phase: ItemPhase): Standing => ({
    ...standing,
    items: { ...items, [item]: phase },
  });
  switch (step.act) {
    case 'attach':
      return as(step.item, step.as);
    case 'takeUp':
    case 'rest':
      return as(step.item, 'attachedResting');
    case 'release':
      return as(step.item, 'away');
    case 'add':
    case 'remove': {
      const next = withPlates(stack, step.kind, step.act === 'add' ? step.count : -step.count);
      return next === null ? null : { ...standing, stack: next };
    }
    case 'fly':
      if (physics === null) return null;
      return isSame(step.to, standing.height)
        ? standing
        : { ...standing, height: step.to, items: moved(physics, standing, step.to) };
    case 'rig':
      return { ...standing, restraints: [...restraints, step.restraint] };
    case 'unrig': {
      const left = withoutOne(restraints, step.restraint);
      return left === null ? null : { ...standing, restraints: left };
    }
    case 'hangOnSteel':
      return { ...standing, service: 'deadHung', items: turned(items, 'flying', 'heldElsewhere') };
    case 'takeOffSteel':
      return offSteel(standing);
    case 'close':
    case 'reopen': {
      const others = closed.filter((zone) => zoneKey(zone) !== zoneKey(step.zone));
      return { ...standing, closed: step.act === 'close' ? [...others, step.zone] : others };
    }
    case 'ease':
      return standing;
    default:
      return unreachable(step);
  }
};

export const offSteel = (standing: Standing): Standing => ({
  ...standing,
  service: 'in',
  restraints: standing.restraints.filter(({ kind }) => kind !== 'deadHangSteel'),
  items: turned(standing.items, 'heldElsewhere', 'flying'),
});

const itemsText = (items: Items): string =>
  Object.entries(items)
    .filter(([, phase]) => phase !== 'away')
    .map(([id, phase]) => `${id} ${phase}`)
    .toSorted()
    .join();

/** Says where two standings part; null where they are one. */
export const partingOf = (one: Standing, other: Standing): string | null => {
  if (!isSame(one.height, other.height)) return `height ${one.height} and ${other.height}`;
  const parts: readonly (readonly [string, string, string])[] = [
    ['stack', JSON.stringify(tidied(one.stack)), JSON.stringify(tidied(other.stack))],
    ['items', itemsText(one.items), itemsText(other.items)],
    ['restraints', kindsText(one.restraints), kindsText(other.restraints)],
    ['service', one.service, other.service],
    ['zones', zonesText(one.closed), zonesText(other.closed)],
  ];
  const parted = parts.find(([, left, right]) => left !== right);
  return parted === undefined ? null : `${parted[0]} ${parted[1]} and ${parted[2]}`;
};

const kindsText = (restraints: readonly Restraint[]): string =>
  restraints
    .map(({ kind, rating, tag }) => `${kind} ${rating} ${tag}`)
    .toSorted()
    .join();

const zonesText = (closed: Standing['closed']): string => closed.map(zoneKey).toSorted().join();
