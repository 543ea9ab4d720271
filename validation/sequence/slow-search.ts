/**
 * The slow way for the tests: every state on a list of heights, breadth first, with guards written
 * again from the text (the-job.md 4.3 to 4.5) and nothing of the planner's. Costs are compared,
 * so it counts flights, handlings, visits and plates as the planner says it does.
 */
import { metres } from '#quantities';
import type { ItemPhase, OrderPhysics, StackRun, Standing } from '#state';

export type SlowJob = {
  readonly physics: OrderPhysics;
  readonly start: { readonly heightM: number; readonly stack: string; readonly items: Items };
  readonly goal: {
    readonly counts: Readonly<Record<string, number>>;
    readonly items: Items;
    readonly heightM: number | null;
  };
  readonly heights: readonly number[];
  readonly lockN: number;
  readonly heldOutN: number;
  readonly doubtShare: number;
};

type Items = Readonly<Record<string, ItemPhase>>;

export type SlowAnswer = {
  readonly states: number;
  /** Flights, handlings with visits, plates; null where there is no order. */
  readonly cost: readonly [number, number, number] | null;
};

type Node = {
  readonly at: number;
  readonly stack: string;
  readonly items: Items;
  readonly last: string;
};

/** Bricks are letters, the bottom one first, so that a stack is a word. */
const runsOf = (word: string): readonly StackRun[] =>
  [...word].map((kind) => ({ kind, count: 1, tag: 'show' }));

const FLIGHT = 1e6;
const HANDLING = 1e3;

export const searchedSlowly = (job: SlowJob): SlowAnswer => {
  const costs = new Map<string, number>();
  const open = new Map<number, Node[]>();
  const offer = (node: Node, cost: number): void => {
    const key = JSON.stringify(node);
    if ((costs.get(key) ?? Number.POSITIVE_INFINITY) <= cost) return;
    costs.set(key, cost);
    open.set(cost, [...(open.get(cost) ?? []), node]);
  };
  const at = job.heights.indexOf(job.start.heightM);
  const first = { at, stack: job.start.stack, items: job.start.items, last: '' };
  if (isHeld(job, first, false)) offer(first, 0);
  const done = new Set<string>();
  while (open.size > 0) {
    const cost = Math.min(...open.keys());
    const nodes = open.get(cost) ?? [];
    open.delete(cost);
    for (const node of nodes) {
      const key = JSON.stringify(node);
      if (done.has(key)) continue;
      done.add(key);
      if (isGoal(job, node)) return { states: done.size, cost: parted(cost) };
      for (const [next, more] of nextOf(job, node)) offer(next, cost + more);
    }
  }
  return { states: done.size, cost: null };
};

/** Every state that can be come to, and every step, for a solver that knows nothing of orders. */
export type Graph = {
  readonly states: number;
  /** From, to, cost; the start is state 0. */
  readonly steps: readonly (readonly [number, number, number])[];
  readonly goals: readonly number[];
};

export const wholeGraph = (job: SlowJob): Graph => {
  const at = job.heights.indexOf(job.start.heightM);
  const first: Node = { at, stack: job.start.stack, items: job.start.items, last: '' };
  const numbers = new Map([[JSON.stringify(first), 0]]);
  const nodes = [first];
  const steps: (readonly [number, number, number])[] = [];
  const goals: number[] = [];
  if (!isHeld(job, first, false)) return { states: 1, steps, goals };
  for (let from = 0; from < nodes.length; from += 1) {
    const node = nodes[from];
    if (node === undefined) break;
    if (isGoal(job, node)) goals.push(from);
    for (const [next, cost] of nextOf(job, node)) {
      const key = JSON.stringify(next);
      const to = numbers.get(key) ?? nodes.length;
      if (to === nodes.length) {
        numbers.set(key, to);
        nodes.push(next);
      }
      steps.push([from, to, cost]);
    }
  }
  return { states: nodes.length, steps, goals };
};

export const parted = (cost: number): readonly [number, number, number] => [
  Math.floor(cost / FLIGHT),
  Math.floor((cost % FLIGHT) / HANDLING),
  cost % HANDLING,
];

const heightOf = (job: SlowJob, { at }: Node): number => job.heights[at] ?? Number.NaN;

const standingOf = (job: SlowJob, node: Node): Standing => ({
  height: metres(heightOf(job, node)),
  stack: runsOf(node.stack),
  items: node.items,
  restraints: [],
  service: 'in',
  closed: [],
});

const SAME_M = 1e-7;
const SAME_N = 1e-6;

/** Something rated holds it each way, for every mass in doubt and for some share of a contact. */
const isHeld = (job: SlowJob, node: Node, isExtra: boolean): boolean => {
  const { physics } = job;
  const { lowN, highN, doubtN } = physics.at(standingOf(job, node));
  const heightM = heightOf(job, node);
  const isIn = Math.abs(heightM - physics.lowStop.heightM) < SAME_M;
  const isOut = Math.abs(heightM - physics.highStop.heightM) < SAME_M;
  const outN = Math.max(job.lockN, isExtra ? job.heldOutN : 0, isOut ? physics.highStop.ratedN : 0);
  const inN = Math.max(job.lockN, isIn ? physics.lowStop.ratedN : 0);
  const doubt = job.doubtShare * doubtN;
  return lowN + doubt <= inN + SAME_N && highN - doubt >= -outN - SAME_N;
};

/** Flown from one height of the list to the next: both ends of every straight line in between. */
const canFly = (job: SlowJob, node: Node, to: number): boolean => {
  const [fromM, toM] = [heightOf(job, node), job.heights[to] ?? Number.NaN];
  const curve = job.physics.curve({ stack: runsOf(node.stack), items: node.items });
  const [lo, hi] = [Math.min(fromM, toM), Math.max(fromM, toM)];
  const outN = Math.max(job.lockN, job.heldOutN);
  return curve.every((lower, index) => {
    const upper = curve[index + 1];
    if (upper === undefined) return true;
    const [a, b] = [Math.max(lo, lower.heightM), Math.min(hi, upper.heightM)];
    if (b - a <= SAME_M) return true;
    return [a, b].every((heightM) => {
      const share = (heightM - lower.heightM) / (upper.heightM - lower.heightM);
      const imbalanceN = lower.aboveN + share * (upper.belowN - lower.aboveN);
      const doubtN = job.doubtShare * (lower.doubtN + share * (upper.doubtN - lower.doubtN));
      return imbalanceN + doubtN <= job.lockN + SAME_N && imbalanceN - doubtN >= -outN - SAME_N;
    });
  });
};

const isGoal = (job: SlowJob, node: Node): boolean => {
  const { counts, items, heightM } = job.goal;
  const areCounted = Object.entries(counts).every(
    ([kind, count]) => [...node.stack].filter((each) => each === kind).length === count,
  );
  const areHung = Object.entries(items).every(([id, phase]) => node.items[id] === phase);
  const isThere = heightM === null || Math.abs(heightOf(job, node) - heightM) < SAME_M;
  return areCounted && areHung && isThere && isHeld(job, node, false);
};

type Next = readonly [Node, number];

const nextOf = (job: SlowJob, node: Node): readonly Next[] =>
  [...flights(job, node), ...plates(job, node), ...riggings(job, node)].filter(([next]) =>
    isHeld(job, next, true),
  );

/** A flight goes on for nothing as long as nothing else is done. */
const flights = (job: SlowJob, node: Node): readonly Next[] =>
  [node.at - 1, node.at + 1]
    .filter((to) => to >= 0 && to < job.heights.length && canFly(job, node, to))
    .map((to) => [{ ...node, at: to, last: 'fly' }, node.last === 'fly' ? 0 : FLIGHT]);

const plates = (job: SlowJob, node: Node): readonly Next[] => {
  const { physics, goal, start } = job;
  const topM = physics.topOfStackM(standingOf(job, node));
  const made: Next[] = [];
  for (const { id, reachFromM, reachToM } of physics.galleries) {
    if (topM < reachFromM - SAME_M || topM > reachToM + SAME_M) continue;
    const put = (act: string, kind: string, stack: string): void => {
      const run = `${act} ${kind} ${id}`;
      const isVisit = !node.last.endsWith(` ${id}`);
      const news = (node.last === run ? 0 : 1) + (isVisit ? 1 : 0);
      made.push([{ ...node, stack, last: run }, 1 + news * HANDLING]);
    };
    for (const kind of Object.keys(goal.counts)) {
      const count = (word: string): number => [...word].filter((each) => each === kind).length;
      const most = Math.max(count(start.stack), goal.counts[kind] ?? 0);
      const after = { ...node, stack: node.stack + kind };
      if (count(node.stack) < most && fitsArbor(job, after)) put('add', kind, after.stack);
    }
    const top = node.stack.at(-1);
    if (top !== undefined) put('remove', top, node.stack.slice(0, -1));
  }
  return made;
};

const fitsArbor = (job: SlowJob, node: Node): boolean => {
  const { physics } = job;
  const standing = standingOf(job, node);
  const bareM = physics.topOfStackM({ ...standing, stack: [] });
  const { massKg, doubtKg } = physics.arborKg(standing.stack);
  const worstKg = massKg + job.doubtShare * doubtKg;
  const isCarried = physics.arborMassLimitKg === null || worstKg <= physics.arborMassLimitKg + 1e-7;
  return isCarried && physics.topOfStackM(standing) - bareM <= physics.rodM + SAME_M;
};

/** On the deck: between the low stop and the working height. */
const riggings = (job: SlowJob, node: Node): readonly Next[] => {
  const { physics, goal } = job;
  if (heightOf(job, node) > physics.workingM + SAME_M) return [];
  return Object.entries(goal.items).flatMap(([id, phase]): readonly Next[] => {
    if ((node.items[id] ?? 'away') === phase) return [];
    return [
      [
        { ...node, items: { ...node.items, [id]: phase }, last: 'rig' },
        node.last === 'rig' ? HANDLING : 2 * HANDLING,
      ],
    ];
  });
};
