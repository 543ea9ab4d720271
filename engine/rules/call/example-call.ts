/**
 * A call on the plain set 7 with a neighbour and its whole crew, in which a step breaks nothing;
 * each test changes what it is about.
 */
import { assert } from '#outcome';
import { metres } from '#quantities';
import type {
  HouseNow,
  LeaveNow,
  PostId,
  PostNow,
  SetNow,
  Standing,
  Step,
  StopNow,
  ZoneNow,
} from '#state';
import { unsaid } from '../example-assessment.ts';
import { exampleHang, exampleHouse, exampleSet, given } from '../example-house.ts';
import { add, BARE, fly, plantOf, standingAt } from '../order/example-order.ts';
import type { CallFacts } from './call-case.ts';
import type { CallFinding } from './finding.ts';
import { type CallJudgement, judgeCall, judgeNow, type SetJudged } from './judge-call.ts';
import { postOf } from './posts.ts';

export const NOON_MS = Date.UTC(2026, 10, 28, 12);

export const setOf = (changes: Partial<SetNow> = {}): SetNow => {
  const standing = changes.standing === undefined ? BARE : changes.standing;
  return {
    standing,
    last: standing,
    doubt: null,
    knowledge: { basis: 'counted', at: '2026-11-28T11:00:00Z', by: 'loader', second: null },
    ...{ held: 'held', rule: null, lock: 'closed', ring: 'on', collar: 'secured' },
    ...{ lockDoubt: null, tag: null, asked: null, leave: null, plan: null },
    since: standing === null ? null : { start: standing, steps: [] },
    ...{ changed: false, notes: [], noteBy: {}, overrides: [] },
    ...{ pullTest: null, pulledAs: null, weighed: {} },
    ...changes,
  };
};

const POSTS: readonly PostId[] = [
  'headFly',
  'rail',
  'watcher',
  'deck',
  'bullLine',
  'gallery:upper',
  'gallery:mid',
  'marshal:run',
  'marshal:drop:upper',
  'marshal:drop:mid',
];

export const postNow = (name: string, changes: Partial<PostNow> = {}): PostNow => ({
  ...{ by: `pers_${name}`, device: `dev_${name}`, name, sinceMs: NOON_MS },
  ...{ answeredBy: null, isClear: true },
  ...changes,
});

const crew = (): HouseNow['posts'] =>
  Object.fromEntries(POSTS.map((post) => [post, postNow(post)]));

/** Every zone that the standing has closed, with its marshal. */
const zonesOf = (set: string, { closed }: Standing): readonly ZoneNow[] =>
  closed.map((zone) => ({
    ...{ zone, set, sinceMs: NOON_MS },
    post: zone.zone === 'run' ? 'marshal:run' : `marshal:drop:${zone.gallery}`,
  }));

export type Called = {
  readonly set?: Partial<SetNow>;
  /** The neighbour, half a metre upstage. */
  readonly other?: Partial<SetNow>;
  readonly posts?: (posts: HouseNow['posts']) => HouseNow['posts'];
  readonly now?: Partial<HouseNow>;
  readonly facts?: Partial<CallFacts>;
  readonly post?: PostId;
  readonly step: Step;
};

const mid = exampleHouse.galleries.map((gallery) => ({
  ...gallery,
  id: 'mid',
  name: 'mid gallery',
  floor: given(metres(10)),
}));

export const callHouse: CallFacts['house'] = {
  ...exampleHouse,
  galleries: [...exampleHouse.galleries, ...mid],
  lineSets: [exampleSet, { ...exampleSet, id: '8', y: given(metres(2.5)) }],
};

export const nowOf = ({
  set,
  other,
  posts = (all) => all,
  now,
}: Omit<Called, 'step'>): HouseNow => {
  const seven = setOf(set);
  const eight = setOf(other);
  return {
    seq: 9,
    call: null,
    sets: { 7: seven, 8: eight },
    galleries: {
      upper: { stock: { B: 20, C: 4 }, countedMs: NOON_MS, countedBy: 'loader' },
      mid: { stock: { B: 5, C: 0 }, countedMs: NOON_MS, countedBy: 'loader' },
    },
    posts: posts(crew()),
    zones: [
      ...(seven.standing === null ? [] : zonesOf('7', seven.standing)),
      ...(eight.standing === null ? [] : zonesOf('8', eight.standing)),
    ],
    stops: [],
    ...now,
  };
};

export const factsOf = (facts: Partial<CallFacts> = {}): CallFacts => ({
  house: callHouse,
  hang: { ...exampleHang, items: [] },
  physics: plantOf(),
  needs: [],
  planStops: [],
  nowMs: NOON_MS,
  ...facts,
});

export const judged = (called: Called): CallJudgement =>
  judgeCall(
    nowOf(called),
    { set: '7', post: called.post ?? postOf(called.step), step: called.step },
    factsOf(called.facts),
  );

export const judgedSet = (called: Omit<Called, 'step'>): SetJudged =>
  judgeNow(nowOf(called), '7', factsOf(called.facts));

export const rulesOf = (called: Called): readonly string[] =>
  judged(called).findings.map(({ rule }) => rule);

/** The finding of one rule, whose sentence can be said with what it carries. */
export const findingOf = (rule: string, called: Called): CallFinding => {
  const found = judged(called).findings.find((each) => each.rule === rule);
  assert(found !== undefined, `${rule} is broken; found ${rulesOf(called).join(', ')}`);
  const lacks = found.finding === null ? [] : unsaid(found.finding);
  assert(lacks.length === 0, `${rule} can be said; it lacks ${lacks.join(', ')}`);
  return found;
};

export const DROP = { zone: 'drop', gallery: 'upper' } as const;
export const RUN = { zone: 'run' } as const;

/** With both zones closed, on the low stop, so that bricks and a move are both to be had. */
export const READY = standingAt(1, 0, { closed: [RUN, DROP] });

export const at = (standing: Standing, more: Partial<SetNow> = {}): Partial<SetNow> => ({
  standing,
  ...more,
});

export const BRICKS: Called = { set: at(READY), step: add(1) };
export const MOVE: Called = { set: at(READY), step: fly(2) };

export const leaveFor = (step: LeaveNow['step'], before: Standing = READY): LeaveNow => ({
  ...{ seq: 4, by: 'pers_x', device: 'dev_x', post: 'rail', step, atMs: NOON_MS },
  ...{ second: null, before, expects: before, plates: 0 },
});

export const stop = (set: string | null): StopNow => ({
  ...{ seq: 3, by: 'pers_x', device: 'dev_x', post: 'deck', set, words: 'somebody is under it' },
  ...{ atMs: NOON_MS, heard: {}, isAgreed: false },
});

export const without =
  (...posts: readonly string[]): NonNullable<Called['posts']> =>
  (all) =>
    Object.fromEntries(Object.entries(all).filter(([post]) => !posts.includes(post)));
