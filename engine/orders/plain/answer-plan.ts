import { assert, fail, ok, type Refusal, type Result } from '#outcome';
import { metres } from '#quantities';
import { type OrderPlan, planOrder } from '#sequence';
import type { Step } from '#state';
import type { PlanAsked } from './asked.ts';
import { physicsOf, standingOf } from './plain-set.ts';
import {
  type Replayed,
  replayed,
  type StateAnswer,
  statesOf,
  type VerdictAnswer,
  verdictOf,
} from './replayed.ts';

type Found = Extract<OrderPlan, { readonly found: unknown }>['found'];
type None = Extract<OrderPlan, { readonly none: unknown }>['none'];

export type PlanAnswer =
  | {
      readonly found: Pick<Found, 'searched' | 'optimal' | 'restraint'> & {
        readonly steps: readonly Step[];
        readonly states: readonly StateAnswer[];
        readonly verdict: VerdictAnswer;
        /** J that could be set free at most while riggers are at the batten; see `exposedJ`. */
        readonly exposed: number | null;
      };
    }
  | {
      readonly none: Pick<None, 'searched' | 'exhaustive' | 'rule' | 'smallestChange'> & {
        readonly height: number | null;
        readonly by: number | null;
      };
    }
  | { readonly stopped: { readonly searched: number } };

export type PlannedPlain = { readonly plan: OrderPlan; readonly order: Replayed };

/** Finds an order of work, and has it replayed by the judge; without steps where none is found. */
export const planPlain = (asked: PlanAsked): Result<PlannedPlain, readonly Refusal[]> => {
  const { set, goal, doubt, lock, restraint, steel, spare, callHeights } = asked;
  const { height, ...rest } = goal;
  const wanted = { ...rest, height: height === null ? null : metres(height) };
  const plan = planOrder(physicsOf(set), standingOf(asked.start), wanted, {
    doubtShare: doubt === 'worst' ? 1 : 0,
    lock,
    restraint,
    rests: asked.rests ?? tippingItems(set),
    steelN: steel ?? null,
    ...(spare === undefined ? {} : { spare }),
    ...(callHeights === undefined ? {} : { neatM: callHeights }),
  });
  const order = replayed(asked, 'found' in plan ? plan.found.steps : []);
  const { refused } = order.verdict;
  if (refused === null) return ok({ plan, order });
  assert(refused.step < 0, `an order that was found can be replayed: ${refused.refusal.found}`);
  return fail([{ ...refused.refusal, path: 'start' }]);
};

/** Built pieces stand on horses with their picks tight; cloth and cable do not. */
const tippingItems = ({ items }: PlanAsked['set']): readonly string[] =>
  Object.keys(items).filter((id) => items[id]?.kind === 'tipping');

/** Everything that `compute plan` says of the order of work on one set. */
export const answerPlan = (asked: PlanAsked): Result<PlanAnswer, readonly Refusal[]> => {
  const planned = planPlain(asked);
  if (!planned.ok) return planned;
  const { plan, order } = planned.value;
  if ('stopped' in plan) return ok({ stopped: { searched: plan.stopped.searched } });
  if ('none' in plan) {
    const { searched, exhaustive, rule, smallestChange, atHeight, byN } = plan.none;
    const none = { searched, exhaustive, rule, smallestChange, height: atHeight, by: byN };
    return ok({ none });
  }
  const { searched, optimal, restraint, steps, exposedJ } = plan.found;
  const answer = { states: statesOf(order), verdict: verdictOf(order) };
  return ok({ found: { searched, optimal, restraint, exposed: exposedJ, steps, ...answer } });
};
