/** The physics of each set for a call: with what was weighed, pulled and counted in it. */
import { orderPhysicsOf, type SetAssessment } from '#assessment';
import { correctedMass, pullTest } from '#balance';
import { known } from '#house';
import { freeFor, type OrderJob, openJob } from '#orders';
import { GRAVITY, kilograms, kilogramsPerMetre } from '#quantities';
import type { HouseNow, HouseState, OrderPhysics, SetNow, Standing } from '#state';
import type { ItemTakeoff } from '#takeoff';
import type { CallDocuments } from './desk-types.ts';

export type PhysicsNow = {
  readonly job: OrderJob | null;
  readonly physics: OrderPhysics | null;
  /** What is not known of it, in words; empty where all is. */
  readonly needs: readonly string[];
};

/** What a pull test says beside the list. */
export type PullSaid = {
  readonly measuredN: number;
  readonly listedN: number;
  /** How far the two may lie apart before something must have been miscounted. */
  readonly mostN: number;
};

/**
 * Block friction that differs with direction goes into what a pull shows, by at most so much of
 * all that hangs: VAL-PUL-03 and VAL-PUL-04, plain bearings.
 */
const PULL_SHARE = 0.015;

/** An item that hangs with less than this share of its weight is not weighed by its rope. */
const SHARE_LEAST = 0.5;

type Weighed = Readonly<Record<string, { readonly massKg: number; readonly doubtKg: number }>>;

const withMass = (takeoff: ItemTakeoff, { massKg, doubtKg }: Weighed[string]): ItemTakeoff => {
  const hemKg = takeoff.hem?.known === true ? takeoff.hem.value.massKg : 0;
  const taken = (kg: number) => ({
    known: true as const,
    value: {
      massKg: kilograms(Math.max(0, kg)),
      uncertaintyKg: kilograms(doubtKg),
      uncertaintyRssKg: kilograms(doubtKg),
    },
  });
  return { ...loomed(takeoff, massKg), mass: taken(massKg - hemKg), total: taken(massKg) };
};

/** A loom hangs by its length, so its mass is that of each metre. */
const loomed = (takeoff: ItemTakeoff, massKg: number): ItemTakeoff => {
  const { item } = takeoff;
  const by = item.takeoff;
  if (by.by !== 'loom' || !by.massPerLength.known || !by.length.known) return takeoff;
  const weighed = { basis: 'weighed', source: 'in the call' } as const;
  const massPerLength = known(kilogramsPerMetre(massKg / by.length.value), weighed);
  return { ...takeoff, item: { ...item, takeoff: { ...by, massPerLength } } };
};

/** The set with other masses for what was weighed. */
const reweighed = (set: SetAssessment, weighed: Weighed): SetAssessment => ({
  ...set,
  takeoffs: set.takeoffs.map((takeoff) => {
    const found = weighed[takeoff.item.id];
    return found === undefined ? takeoff : withMass(takeoff, found);
  }),
});

/** As far off as the house says of a scale; where it does not, by all of what it shows. */
const scaled = ({ house }: CallDocuments, set: SetNow): Weighed => {
  const share = house.rules.toleranceByBasis.weighed ?? 1;
  return Object.fromEntries(
    Object.entries(set.weighed).map(([id, massKg]) => [id, { massKg, doubtKg: share * massKg }]),
  );
};

const pulledOf = (
  { pullTest: test, pulledAs }: SetNow,
  { set }: OrderJob,
): { readonly imbalanceN: number; readonly frictionN: number; readonly as: Standing } | null => {
  const { handLinePerBatten } = set.lineSet;
  if (test === null || pulledAs === null || !handLinePerBatten.known) return null;
  const { imbalance, friction } = pullTest({
    outN: test.out,
    inN: test.in,
    handLinePerBatten: handLinePerBatten.value,
  });
  return { imbalanceN: imbalance, frictionN: friction, as: { ...pulledAs, height: test.height } };
};

/** The item whose mass is least known of all that hang, and so has to answer for a difference. */
const suspectOf = (
  physics: OrderPhysics,
  as: Standing,
  weighed: Weighed,
): { readonly id: string; readonly listedKg: number; readonly share: number } | null => {
  const doubtN = (id: string): number => physics.itemMostN(id) - physics.itemLeastN(id);
  const [id] = Object.keys(as.items)
    .filter((each) => as.items[each] === 'flying' && weighed[each] === undefined)
    .toSorted((one, other) => doubtN(other) - doubtN(one));
  if (id === undefined) return null;
  const listedN = (physics.itemMostN(id) + physics.itemLeastN(id)) / 2;
  const without: Standing = { ...as, items: { ...as.items, [id]: 'away' } };
  const carriedN = physics.at(as).highN - physics.at(without).highN;
  const share = listedN > 0 ? carriedN / listedN : 0;
  return share < SHARE_LEAST ? null : { id, listedKg: listedN / GRAVITY, share };
};

/** What two pulls say of the imbalance, against the list; null where no pull test is to be had. */
const pullSaidOf = (set: SetNow, job: OrderJob, physics: OrderPhysics): PullSaid | null => {
  const pulled = pulledOf(set, job);
  if (pulled === null) return null;
  const { lowN, highN, doubtN } = physics.at(pulled.as);
  const smallestN = Math.min(...physics.bricks.map(({ atBattenN }) => atBattenN));
  const measuredN = pulled.imbalanceN;
  const listedN = Math.min(Math.max(measuredN, lowN), highN);
  return { measuredN, listedN, mostN: doubtN + smallestN / 2 };
};

/** The mass that an item must have for what was pulled to be true; none where it cannot be told. */
const pulledMass = (
  set: SetNow,
  job: OrderJob,
  { physics, weighed }: { readonly physics: OrderPhysics; readonly weighed: Weighed },
): Weighed => {
  const pulled = pulledOf(set, job);
  const said = pullSaidOf(set, job, physics);
  if (pulled === null || said === null) return {};
  const { lowN, highN } = physics.at(pulled.as);
  const suspect = highN - lowN > 1 ? null : suspectOf(physics, pulled.as, weighed);
  if (suspect === null || Math.abs(said.measuredN - said.listedN) > said.mostN) return {};
  const { id, listedKg, share } = suspect;
  const massKg = correctedMass({
    listedKg,
    carriedShare: share,
    measuredN: said.measuredN,
    listedN: said.listedN,
  });
  const listedDoubtKg = (physics.itemMostN(id) - physics.itemLeastN(id)) / 2 / GRAVITY;
  const doubtKg = Math.min(listedDoubtKg, pullErrorN(job, physics, pulled.as) / GRAVITY / share);
  return { [id]: { massKg, doubtKg } };
};

/** How far two pulls with a gauge may be off, as a force at the batten. */
const pullErrorN = ({ set }: OrderJob, physics: OrderPhysics, as: Standing): number => {
  const battenKg = set.bare.known ? set.bare.value.set.batten : 0;
  return flying(as).reduce(
    (sum, each) => sum + PULL_SHARE * physics.itemMostN(each),
    PULL_SHARE * GRAVITY * battenKg,
  );
};

const flying = ({ items }: Pick<Standing, 'items'>): readonly string[] =>
  Object.keys(items)
    .filter((id) => items[id] === 'flying')
    .toSorted((one, other) => (one < other ? -1 : 1));

const platesOfKinds = ({ stack }: Pick<Standing, 'stack'>): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { kind, count, tag } of stack) {
    if (tag !== 'spreader') counts.set(kind, (counts.get(kind) ?? 0) + count);
  }
  return counts;
};

/** Whether one stack is the other with bricks only added, or only taken off. */
const isNested = (one: Pick<Standing, 'stack'>, other: Pick<Standing, 'stack'>): boolean => {
  const [a, b] = [platesOfKinds(one), platesOfKinds(other)];
  const more = [...new Set([...a.keys(), ...b.keys()])].map(
    (kind) => (a.get(kind) ?? 0) - (b.get(kind) ?? 0),
  );
  return more.every((n) => n >= 0) || more.every((n) => n <= 0);
};

/**
 * After a pull the imbalance is known as a whole, to within the error of the pull, with whatever
 * each mass of it may be off by. That holds for the same items on the batten, and but for what the
 * bricks that came or went since may themselves be off by.
 *
 * Source  U is linear in all masses, so their doubts cancel against the one sum that was measured
 */
const withPull = (physics: OrderPhysics, set: SetNow, job: OrderJob): OrderPhysics => {
  const pulled = pulledOf(set, job);
  const said = pullSaidOf(set, job, physics);
  if (pulled === null || said === null) return physics;
  const { lowN, highN, doubtN } = physics.at(pulled.as);
  // The list as corrected must say what was pulled; at a contact a pull says nothing of the sum.
  if (highN - lowN > 1 || Math.abs(said.measuredN - highN) > 1) return physics;
  const errorN = pullErrorN(job, physics, pulled.as);
  const hung = flying(pulled.as).join(' ');
  const narrowed = (standing: Pick<Standing, 'stack' | 'items'>, own: number): number =>
    flying(standing).join(' ') === hung && isNested(standing, pulled.as)
      ? Math.min(own, errorN + Math.abs(own - doubtN))
      : own;
  return {
    ...physics,
    at: (standing) => {
      const at = physics.at(standing);
      return { ...at, doubtN: narrowed(standing, at.doubtN) };
    },
    curve: (standing) =>
      physics.curve(standing).map((node) => ({ ...node, doubtN: narrowed(standing, node.doubtN) })),
  };
};

/** Friction as it was measured, for more or less on the batten in the same proportion. */
const withFriction = (physics: OrderPhysics, set: SetNow, job: OrderJob): OrderPhysics => {
  const pulled = pulledOf(set, job);
  if (pulled === null || pulled.frictionN <= 0) return physics;
  const reckonedN = physics.frictionN(pulled.as.items);
  if (reckonedN <= 0) return physics;
  const ratio = pulled.frictionN / reckonedN;
  return { ...physics, frictionN: (items) => ratio * physics.frictionN(items) };
};

type Opened = PhysicsNow & { readonly said: PullSaid | null };

const NOT_OF_HOUSE: Opened = { job: null, physics: null, needs: ['the set'], said: null };

/** One set with what this call has weighed and pulled, before it is said which bricks lie loose. */
const openedOf = (documents: CallDocuments, id: string, set: SetNow): Opened => {
  const { house, show, state } = documents;
  const coupled = show.hangs.find((hang) => hang.set === id)?.coupledWith ?? [];
  const job = openJob({ house, show, state }, id, coupled.length === 1 ? coupled[0] : null);
  if (!job.ok) {
    return { ...NOT_OF_HOUSE, needs: job.error.map(({ accepted }) => accepted) };
  }
  const free = freeFor(id, house, state);
  const physicsWith = (weighed: Weighed): OrderPhysics | null => {
    if (Object.keys(weighed).length === 0) return job.value.physics;
    const physics = orderPhysicsOf(reweighed(job.value.set, weighed), house, free);
    return physics.known ? physics.value : null;
  };
  const weighed = scaled(documents, set);
  const listed = physicsWith(weighed);
  if (listed === null) return { ...NOT_OF_HOUSE, needs: ['what was weighed'] };
  const pulled = pulledMass(set, job.value, { physics: listed, weighed });
  const corrected = physicsWith({ ...weighed, ...pulled }) ?? listed;
  return {
    job: job.value,
    physics: withFriction(withPull(corrected, set, job.value), set, job.value),
    needs: [],
    said: pullSaidOf(set, job.value, listed),
  };
};

const keyOf = ({ weighed, pullTest: test, pulledAs }: SetNow): string =>
  JSON.stringify([weighed, test, pulledAs]);

/** Bricks as the call has them; what is kept for other work stays kept. */
const stateWith = (state: HouseState, galleries: HouseNow['galleries']): HouseState => ({
  ...state,
  galleries: Object.fromEntries(
    Object.entries(state.galleries).map(([id, gallery]) => [
      id,
      { ...gallery, stock: galleries[id]?.stock ?? gallery.stock },
    ]),
  ),
});

export type PhysicsDesk = {
  readonly of: (now: HouseNow, set: string) => PhysicsNow;
  readonly pullSaid: (now: HouseNow, set: string) => PullSaid | null;
};

/** Keeps what was opened of each set until something of it is weighed or pulled. */
export const openPhysics = (documents: CallDocuments): PhysicsDesk => {
  const kept = new Map<string, { readonly key: string; readonly opened: Opened }>();
  const openedSet = (now: HouseNow, id: string): Opened => {
    const set = now.sets[id];
    if (set === undefined) return NOT_OF_HOUSE;
    const key = keyOf(set);
    const before = kept.get(id);
    if (before?.key === key) return before.opened;
    const opened = openedOf(documents, id, set);
    kept.set(id, { key, opened });
    return opened;
  };
  return {
    of: (now, id) => {
      const opened = openedSet(now, id);
      const { physics } = opened;
      if (physics === null) return opened;
      const free = freeFor(id, documents.house, stateWith(documents.state, now.galleries));
      const galleries = physics.galleries.map((each) => ({
        ...each,
        stock: free.galleries[each.id]?.stock ?? now.galleries[each.id]?.stock ?? {},
      }));
      return { ...opened, physics: { ...physics, galleries } };
    },
    pullSaid: (now, id) => openedSet(now, id).said,
  };
};
