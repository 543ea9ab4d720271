/** Asking for the order of a pair in the tests, and its answer in short. */
import { FOOT, metres } from '#quantities';
import type { OrderPhysics, PairStep, Standing } from '#state';
import { type ExampleSet, examplePhysics } from '../../../validation/sequence/set-physics.ts';
import { bare, clearItem, ft, setWith } from '../example-jobs.contract.ts';
import type { OrderGoal } from '../types.ts';
import { type PairOptions, planPair } from './plan-pair.ts';
import type { Pair, PairJob, PairPlan } from './types.ts';

export type FoundPair = Extract<PairPlan, { readonly found: unknown }>['found'];

export const physicsOf = (set: string, example: ExampleSet): OrderPhysics => ({
  ...examplePhysics(example),
  set,
});

/** As listed, at the nominal limit, by staging alone. */
const QUIET = { doubtShare: 0, lock: 'nominal', restraint: 'none', neatM: FOOT / 4 } as const;

export const PIECE = [{ first: 'header', second: 'header' }] as const;

type Asked = {
  readonly set: ExampleSet;
  readonly start?: Standing;
  readonly goal?: Partial<OrderGoal>;
};

const jobOf = (id: string, { set, start = bare, goal = {} }: Asked): PairJob => ({
  physics: physicsOf(id, set),
  start,
  goal: { items: {}, bricks: {}, height: null, service: 'in', ...goal },
});

export const pairOf = (first: Asked, second: Asked, bandFt: readonly [number, number]): Pair => ({
  first: jobOf('A', first),
  second: jobOf('B', second),
  shared: PIECE,
  band: { leastM: ft(bandFt[0]), mostM: ft(bandFt[1]) },
});

export const askedPair = (pair: Pair, options: PairOptions = {}): PairPlan =>
  planPair(pair, { ...QUIET, ...options });

export const foundPair = (plan: PairPlan): FoundPair => {
  if (!('found' in plan)) throw new Error(JSON.stringify(plan));
  return plan.found;
};

export const nonePair = (plan: PairPlan) => {
  if (!('none' in plan)) throw new Error(`found ${JSON.stringify(plan)}`);
  return plan.none;
};

const feet = (heightM: number): string => `${Math.round((heightM / FOOT) * 100) / 100}`;

/** Every step, in a word or five. */
export const pairWords = ({ steps }: { readonly steps: readonly PairStep[] }): readonly string[] =>
  steps.map((each) => {
    if ('together' in each) {
      const [first, second] = each.together;
      return `${first.set} to ${feet(first.to)}, ${second.set} to ${feet(second.to)}`;
    }
    const { set, step } = each;
    switch (step.act) {
      case 'add':
      case 'remove':
        return `${set} ${step.act} ${step.count} ${step.kind} ${step.gallery}`;
      case 'attach':
      case 'takeUp':
      case 'rest':
      case 'release':
        return `${set} ${step.act} ${step.item}`;
      case 'fly':
        return `${set} to ${feet(step.to)}`;
      case 'rig':
      case 'unrig':
        return `${set} ${step.act} ${step.restraint.kind}`;
      case 'close':
      case 'reopen':
        return `${step.act} ${step.zone.zone === 'run' ? 'run' : step.zone.gallery}`;
      case 'hangOnSteel':
      case 'takeOffSteel':
      case 'ease':
        return `${set} ${step.act}`;
      default:
        throw new Error('a step that nobody knows');
    }
  });

export const standsAt = (
  heightFt: number,
  bricks: Readonly<Record<string, number>>,
  items: Standing['items'],
): Standing => ({
  ...bare,
  height: metres(ft(heightFt)),
  stack: Object.entries(bricks).map(([kind, count]) => ({ kind, count, tag: 'show' })),
  items,
});

/** One header on both: 230 lb in front and 190 lb behind. */
export const front = setWith({ header: clearItem(230) });
export const rear = setWith({ header: clearItem(190) });
export const ON = { header: 'on' } as const;
export const AWAY = { header: 'away' } as const;
export const FLYING = { header: 'flying' } as const;
export const at = (heightFt: number) => metres(ft(heightFt));

/** Loaded, at trims of 52 ft and 57.5 ft. */
export const frontOn = { items: ON, bricks: { F: 9, H: 1 }, height: at(52) };
export const rearOn = { items: ON, bricks: { F: 8 }, height: at(57.5) };
export const loading = { front: { set: front, goal: frontOn }, rear: { set: rear, goal: rearOn } };
