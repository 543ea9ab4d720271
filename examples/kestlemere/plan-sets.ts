/** Sets of Kestlemere for the orders that are searched: as hung, or with a hang made up here. */
import { readFileSync } from 'node:fs';
import { assess, orderPhysicsOf, type SetAssessment } from '#assessment';
import { readHouse, readShow, readState } from '#documents';
import { FOOT, type Metres, metres, POUND_FORCE } from '#quantities';
import type { OrderPhysics, StackRun, Standing } from '#state';

export const feet = (n: number): Metres => metres(n * FOOT);
export const asFeet = (lengthM: number): number => lengthM / FOOT;
export const asPounds = (forceN: number): number => forceN / POUND_FORCE;
export const pounds = (n: number): number => n * POUND_FORCE;

const textOf = (file: string): string =>
  readFileSync(new URL(`./${file}`, import.meta.url), 'utf8');

const must = <T>(
  answer:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: unknown },
): T => {
  if (answer.ok) return answer.value;
  throw new Error(`an example does not read: ${JSON.stringify(answer.error)}`);
};

const { house } = must(readHouse(textOf('house.json')));
const clockmaker = must(readShow(textOf('clockmaker.show.json'), house)).show;
const { state } = must(readState(textOf('state.json'), house, clockmaker));

/** A hang as a document writes it, in place of what the show has on that set. */
export type WrittenHang = {
  readonly set: string;
  readonly trimFt: number;
  readonly items: readonly {
    readonly id: string;
    readonly massLb: number;
    readonly dropFt: number;
    readonly pickFt: number;
  }[];
};

const hangOf = ({ set, trimFt, items }: WrittenHang): object => ({
  set,
  name: 'made up for an order',
  family: 'other',
  halfDepth: '3 in',
  trims: [{ name: 'playing', height: `${trimFt} ft`, reference: 'batten' }],
  items: items.map(({ id, massLb, dropFt, pickFt }) => ({
    id,
    name: id,
    kind: 'clear',
    drop: `${dropFt} ft`,
    pick: `${pickFt} ft`,
    takeoff: {
      by: 'mass',
      given: { basis: 'weighed', source: 'demo plan' },
      mass: { value: `${massLb} lb`, tolerance: '2 %' },
    },
    placement: { points: ['0 ft'] },
  })),
});

const assessed = (
  file: 'clockmaker.show.json' | 'winterferry.show.json',
  hangs: readonly WrittenHang[] = [],
): readonly SetAssessment[] => {
  type OfSets = readonly { readonly set: string }[];
  const written: { readonly hangs: OfSets; readonly cues?: OfSets; readonly keptEmpty?: object } =
    JSON.parse(textOf(file));
  const others = (rows: OfSets): OfSets =>
    rows.filter(({ set }) => !hangs.some((hang) => hang.set === set));
  const text = JSON.stringify({
    ...written,
    keptEmpty: hangs.length > 0 ? {} : written.keptEmpty,
    cues: others(written.cues ?? []),
    hangs: [...others(written.hangs), ...hangs.map(hangOf)],
  });
  const { show } = must(readShow(text, house));
  return assess(house, show, null).sets;
};

/** What lay loose before anything was hung (the demo's 10.2). */
const STOCK = {
  upper: { F: 280, H: 26, O: 21 },
  mid: { F: 52, H: 14, O: 0 },
} as const;

const withStock = (physics: OrderPhysics): OrderPhysics => ({
  ...physics,
  galleries: physics.galleries.map((gallery) => ({
    ...gallery,
    stock: gallery.id === 'upper' ? STOCK.upper : STOCK.mid,
  })),
});

export type PlanSet = {
  readonly id: string;
  readonly physics: OrderPhysics;
  readonly pipe: readonly StackRun[];
  readonly items: readonly string[];
  readonly rigid: readonly string[];
  readonly trimsM: readonly number[];
};

const planSet = (sets: readonly SetAssessment[], id: string): PlanSet => {
  const set = sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  const physics = orderPhysicsOf(set, house, state);
  if (!physics.known) throw new Error(`set ${id} is blocked: ${physics.needs.join(', ')}`);
  const items = set.hang?.items ?? [];
  return {
    id,
    physics: withStock(physics.value),
    pipe: (set.lineSet.arbor?.pipeWeight ?? []).map((run) => ({ ...run, tag: 'pipe' })),
    items: items.map((item) => item.id),
    rigid: items.filter(({ kind }) => kind === 'tipping').map((item) => item.id),
    trimsM: (set.hang?.trims ?? []).flatMap(({ height }) => (height.known ? [height.value] : [])),
  };
};

const CLOCKMAKER = assessed('clockmaker.show.json');
const WINTERFERRY = assessed('winterferry.show.json');

/** A set with what hangs in one show and what is to hang in the next. */
export const changedSet = (id: string): PlanSet => {
  type Hangs = {
    readonly hangs: readonly { readonly set: string; readonly items: readonly object[] }[];
  };
  const next: Hangs = JSON.parse(textOf('winterferry.show.json'));
  const now: Hangs = JSON.parse(textOf('clockmaker.show.json'));
  const more = next.hangs.find(({ set }) => set === id)?.items ?? [];
  const hangs = now.hangs.map((hang) =>
    hang.set === id
      ? { ...hang, items: [...hang.items, ...more.map((item) => ({ ...item, id: nextId(item) }))] }
      : hang,
  );
  const { show } = must(readShow(JSON.stringify({ ...now, hangs }), house));
  return planSet(assess(house, show, null).sets, id);
};

const nextId = (item: object): string => `next.${'id' in item ? String(item.id) : ''}`;

export const hungSet = (id: string): PlanSet => planSet(CLOCKMAKER, id);
export const ferrySet = (id: string): PlanSet => planSet(WINTERFERRY, id);
export const madeUpSet = (hang: WrittenHang): PlanSet =>
  planSet(assessed('clockmaker.show.json', [hang]), hang.set);

export const showRuns = (full: number, half: number): readonly StackRun[] =>
  [
    { kind: 'F', count: full, tag: 'show' as const },
    { kind: 'H', count: half, tag: 'show' as const },
  ].filter(({ count }) => count > 0);

const QUIET = { restraints: [], service: 'in', closed: [] } as const;

export const bareOn = (set: PlanSet, heightFt: number): Standing => ({
  height: feet(heightFt),
  stack: set.pipe,
  items: {},
  ...QUIET,
});

export const hungOn = (set: PlanSet, heightFt: number, show: readonly StackRun[]): Standing => ({
  height: feet(heightFt),
  stack: [...set.pipe, ...show],
  items: Object.fromEntries(set.items.map((id) => [id, 'flying'])),
  ...QUIET,
});

/** Imbalance in pounds, contact in it; `items` as they are named, the rest away. */
export const imbalanceLb = (
  { physics, pipe }: PlanSet,
  heightFt: number,
  show: readonly StackRun[],
  items: Standing['items'],
): { readonly low: number; readonly high: number } => {
  const { lowN, highN } = physics.at({
    height: feet(heightFt),
    stack: [...pipe, ...show],
    items,
    ...QUIET,
  });
  return { low: asPounds(lowN), high: asPounds(highN) };
};
