/** Asking for orders in the tests: a set, what hangs on it, and the answer in short. */
import type { BalanceItem } from '#balance';
import { FOOT, GRAVITY, metres, POUND } from '#quantities';
import type { Standing } from '#state';
import {
  type ExampleSet,
  examplePhysics,
  SIX_LINE_SET,
} from '../../validation/sequence/set-physics.ts';
import { planOrder } from './plan-order.ts';
import type { OrderGoal, OrderOptions, OrderPlan } from './types.ts';

export const lb = (n: number): number => n * POUND;
export const ft = (n: number): number => n * FOOT;
export const asLb = (forceN: number): number => forceN / GRAVITY / POUND;

export const clearItem = (massLb: number, uncertaintyLb = 0): BalanceItem => ({
  kind: 'clear',
  mass: lb(massLb),
  uncertainty: lb(uncertaintyLb),
});

export const setWith = (
  items: Readonly<Record<string, BalanceItem>>,
  more: Partial<ExampleSet> = {},
): ExampleSet => ({ ...SIX_LINE_SET, ...more, items });

export const bare: Standing = {
  height: metres(ft(3)),
  stack: [],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
};

export const hung = (
  set: ExampleSet,
  heightFt: number,
  stack: readonly (readonly [string, number])[],
): Standing => ({
  ...bare,
  height: metres(ft(heightFt)),
  stack: stack.map(([kind, count]) => ({ kind, count, tag: 'show' })),
  items: Object.fromEntries(Object.keys(set.items).map((id) => [id, 'flying'])),
});

export const asked = (
  set: ExampleSet,
  start: Standing,
  goal: Partial<OrderGoal>,
  options: Partial<OrderOptions> = {},
): OrderPlan => {
  const whole = { items: {}, bricks: {}, height: null, service: 'in' as const, ...goal };
  return planOrder(examplePhysics(set), start, whole, {
    doubtShare: 0,
    lock: 'nominal',
    restraint: 'none',
    ...options,
  });
};

export type Found = Extract<OrderPlan, { readonly found: unknown }>['found'];
export type None = Extract<OrderPlan, { readonly none: unknown }>['none'];

export const found = (plan: OrderPlan): Found => {
  if (!('found' in plan)) throw new Error(JSON.stringify(plan));
  return plan.found;
};

export const none = (plan: OrderPlan): None => {
  if (!('none' in plan)) throw new Error(`found ${JSON.stringify(plan)}`);
  return plan.none;
};

/** Every step, in a word or three. */
export const words = ({ steps }: Found): readonly string[] =>
  steps.map((step) => {
    switch (step.act) {
      case 'add':
      case 'remove':
        return `${step.act} ${step.count} ${step.kind} ${step.gallery}`;
      case 'attach':
        return `attach ${step.item} ${step.as}`;
      case 'takeUp':
      case 'rest':
      case 'release':
        return `${step.act} ${step.item}`;
      case 'fly':
        return `fly ${(step.to / FOOT).toFixed(2)}`;
      case 'rig':
      case 'unrig':
        return `${step.act} ${step.restraint.kind}`;
      case 'close':
      case 'reopen':
        return `${step.act} ${step.zone.zone === 'run' ? 'run' : step.zone.gallery}`;
      case 'hangOnSteel':
      case 'takeOffSteel':
      case 'ease':
        return step.act;
      default:
        throw new Error('a step that nobody knows');
    }
  });
