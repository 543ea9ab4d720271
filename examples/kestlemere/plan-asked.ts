/** Asking the planner about a set of Kestlemere, and its answer in short. */
import { expect } from 'vitest';
import { type OrderGoal, type OrderOptions, type OrderPlan, planOrder } from '#sequence';
import type { Standing, Step } from '#state';
import { asPounds, type PlanSet } from './plan-sets.ts';

export const NOMINAL = { doubtShare: 0, lock: 'nominal', restraint: 'none' } as const;
export const PLANNING = { doubtShare: 0, lock: 'planning', restraint: 'none' } as const;

export type Found = Extract<OrderPlan, { found: unknown }>['found'];

export const ask = (
  set: PlanSet,
  start: Standing,
  goal: Partial<OrderGoal> & { readonly all?: 'on' | 'away' },
  options: Partial<OrderOptions> = NOMINAL,
): OrderPlan => {
  const { all, ...rest } = goal;
  const items = all === undefined ? {} : Object.fromEntries(set.items.map((id) => [id, all]));
  const whole: OrderGoal = { items, bricks: {}, height: null, service: 'in', ...rest };
  return planOrder(set.physics, start, whole, { rests: set.rigid, ...options });
};

export const must = (plan: OrderPlan): Found => {
  if (!('found' in plan)) throw new Error(JSON.stringify(plan));
  return plan.found;
};

const searched = (plan: OrderPlan): number => {
  if ('found' in plan) return plan.found.searched;
  return 'none' in plan ? plan.none.searched : plan.stopped.searched;
};

/** Steps in short: what is done, with zones and rigging left out. */
export const deeds = ({ steps }: Found): readonly string[] =>
  steps.flatMap((step): readonly string[] => {
    switch (step.act) {
      case 'add':
      case 'remove':
        return [`${step.act} ${step.count} ${step.kind} ${step.gallery}`];
      case 'attach':
      case 'takeUp':
      case 'rest':
      case 'release':
        return [`${step.act} ${step.item}`];
      case 'fly':
        return ['fly'];
      case 'rig':
      case 'unrig':
        return [`${step.act} ${step.restraint.kind}`];
      case 'hangOnSteel':
      case 'takeOffSteel':
        return [step.act];
      case 'close':
      case 'reopen':
        return [];
      case 'ease':
        return ['ease'];
      default:
        return [`unheard of: ${JSON.stringify(step)}`];
    }
  });

export const count = ({ steps }: Found, acts: readonly Step['act'][]): number =>
  steps.filter(({ act }) => acts.includes(act)).length;

/** Imbalance after each step but those of zones and rigging, pounds. */
export const highsLb = ({ steps, states }: Found): readonly number[] =>
  steps.flatMap(({ act }, index) => {
    const state = states[index + 1];
    const isQuiet = act === 'close' || act === 'reopen' || act === 'rig' || act === 'unrig';
    return isQuiet || state === undefined ? [] : [asPounds(state.imbalance.highN)];
  });

/** The plan prints whole pounds. */
export const expectLb = (actual: number | undefined, planLb: number): void => {
  expect(Math.abs((actual ?? Number.NaN) - planLb), `${actual} against ${planLb}`).toBeLessThan(1);
};

/** Every state is held each way by what the plan says holds it, for some share of its contact. */
export const expectHeld = ({ states }: Found): void => {
  for (const { imbalance, holds } of states) {
    expect(imbalance.lowN).toBeLessThanOrEqual(holds.in.ratedN + 1e-6);
    expect(imbalance.highN).toBeGreaterThanOrEqual(-holds.out.ratedN - 1e-6);
  }
};

export const allOn = ({ items }: PlanSet): Standing['items'] =>
  Object.fromEntries(items.map((id) => [id, 'flying' as const]));

export const title = (plan: OrderPlan): string => `${searched(plan)} states searched`;
