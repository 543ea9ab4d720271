/**
 * Whole plans of sets of the demo against a record of them: every step, what hangs on which hold
 * after it, the restraint, what riggers are exposed to, and the states that were searched.
 */
import { describe, expect, it } from 'vitest';
import { GRAVITY, POUND } from '#quantities';
import { DEMO_JOBS, planOf } from '../../examples/kestlemere/plan-jobs.ts';
import { DEMO_PLANS } from './example-demo-plans.ts';
import { type Found, words } from './example-jobs.contract.ts';
import type { Hold, OrderPlan, OrderState, SmallestChange } from './types.ts';

const inLb = (forceN: number): string => (forceN / GRAVITY / POUND).toFixed(1);
const inFt = (heightM: number): string => (heightM / 0.3048).toFixed(2);

const holdWords = ({ by, ratedN }: Hold): string => `${by} ${inLb(ratedN)}`;

/** `+12.3..14.5 | in lowStop 1400.0 out lock 25.0, planning`: pounds, batten heavy positive. */
const stateWords = ({ imbalance, holds, lockUsed }: OrderState): string => {
  const [low, high] = [inLb(imbalance.lowN), inLb(imbalance.highN)];
  const both = `in ${holdWords(holds.in)} out ${holdWords(holds.out)}`;
  return `${low === high ? low : `${low}..${high}`} | ${both}${lockUsed ? `, ${lockUsed}` : ''}`;
};

const restraintWords = ({ restraint }: Found): string => {
  if (restraint === null) return 'no restraint';
  const { resists, rated, from, to, refutedStates } = restraint;
  const where = `${inFt(from)} to ${inFt(to)} ft`;
  return `${inLb(rated)} lb against ${resists}, ${where}, less not in ${refutedStates}`;
};

const changeWords = (change: SmallestChange | null): string =>
  Object.entries(change ?? { change: 'nothing' })
    .map(([key, value]) => `${key} ${typeof value === 'number' ? value.toFixed(4) : value}`)
    .join(', ');

/** A line for each step; zones that are closed or opened go with the step after them. */
const stepWords = (found: Found): readonly string[] => {
  const [lines, zones]: [string[], string[]] = [[], []];
  const after = found.states.slice(1).map(stateWords);
  words(found).forEach((step, index) => {
    if (/^(close|reopen) /.test(step)) zones.push(`${step}; `);
    else lines.push(`${zones.splice(0).join('')}${step}: ${after[index]}`);
  });
  return [...lines, `${zones.join('')}${after.length} steps: ${after.at(-1)}`];
};

/** A line for the whole, one for the start, those of the steps, and the end. */
const planWords = (plan: OrderPlan): readonly string[] => {
  if ('stopped' in plan) return [`stopped after ${plan.stopped.searched} states`];
  if ('none' in plan) {
    const { searched, rule, atHeight, byN, smallestChange } = plan.none;
    const at = atHeight === null ? '' : ` at ${inFt(atHeight)} ft`;
    const by = byN === null ? '' : ` by ${inLb(byN)} lb`;
    return [`none in ${searched} states: ${rule}${at}${by}`, changeWords(smallestChange)];
  }
  const { found } = plan;
  const exposed = found.exposedJ === null ? 'nobody' : `${found.exposedJ.toFixed(1)} J`;
  const best = found.optimal ? 'best' : 'not known to be best';
  return [
    `${best} in ${found.searched} states, exposed ${exposed}, ${restraintWords(found)}`,
    `start: ${found.states.slice(0, 1).map(stateWords).join('')}`,
    ...stepWords(found),
  ];
};

describe('plans of the demo are as they were', () => {
  for (const { job: name, options, plan } of DEMO_PLANS) {
    it(`${name}, ${JSON.stringify(options)}`, () => {
      const job = DEMO_JOBS.find((each) => each.name === name);
      expect(job).toBeDefined();
      if (job === undefined) return;
      expect(planWords(planOf(job, options))).toEqual(plan);
    });
  }
});
