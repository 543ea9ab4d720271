/** Planted traps of the demo (10.7) that an order of work has to see; figures are its own. */
import { describe, expect, it } from 'vitest';
import {
  bareStart,
  type CheckedOrder,
  isAccepted,
  loadGoal,
  type OrderJob,
  openJob,
  recordedStart,
  strikeGoal,
  type WorkedOrder,
  workOut,
} from '#orders';
import type { HouseState } from '#state';
import { openExample } from '../open-example.ts';

const { house, show, state } = openExample('kestlemere');

const must = <T>(answer: { readonly ok: true; readonly value: T } | { readonly ok: false }): T => {
  if (!answer.ok) throw new Error('it can be asked for');
  return answer.value;
};

const jobOf = (set: string, record: HouseState): OrderJob =>
  must(openJob({ house, show, state: record }, set));

const asked = { lock: 'nominal', restraint: 'either', steelN: null, doubt: 'none' } as const;

/** Nobody has recorded the set, so its bricks are not taken to lie anywhere. */
const loadOf = (set: string, record: HouseState): WorkedOrder => {
  const { [set]: _, ...sets } = record.sets;
  const job = jobOf(set, { ...record, sets });
  const start = must(bareStart(job));
  return workOut({ ...asked, job, start, goal: must(loadGoal(job, null)), kind: 'load' });
};

const strikeOf = (set: string, record: HouseState): WorkedOrder => {
  const job = jobOf(set, record);
  const start = must(recordedStart(job));
  const goal = must(strikeGoal(job, start.standing, null));
  return workOut({ ...asked, job, start, goal, kind: 'strike' });
};

/** The most that an order has taken away from a gallery at any moment of it. */
const mostTaken = ({ steps }: CheckedOrder, gallery: string, kind: string): number => {
  let [taken, most] = [0, 0];
  for (const step of steps) {
    if (step.act !== 'add' && step.act !== 'remove') continue;
    if (step.gallery !== gallery || step.kind !== kind) continue;
    taken += step.act === 'add' ? step.count : -step.count;
    most = Math.max(most, taken);
  }
  return most;
};

const midOf = (full: number, kept: boolean): HouseState => ({
  ...state,
  galleries: Object.fromEntries(
    Object.entries(state.galleries).map(([id, gallery]) => [
      id,
      id === 'mid'
        ? {
            ...gallery,
            stock: { ...gallery.stock, F: full },
            reserved: kept ? gallery.reserved : [],
          }
        : gallery,
    ]),
  ),
});

describe('[trap 11] 19 full are kept at the mid gallery for the release of D3', () => {
  it('no other set takes one of them; where nobody keeps them, one does', () => {
    const kept = loadOf('9', state);
    expect('found' in kept.plan && isAccepted(kept.order)).toBe(true);
    expect(mostTaken(kept.order, 'mid', 'F')).toBe(0);
    expect(kept.order.assumed).toContainEqual({
      is: 'stockKept',
      gallery: 'mid',
      kept: [{ kind: 'F', count: 19, for: 'releasing D3' }],
    });
    const free = loadOf('9', midOf(19, false));
    expect(mostTaken(free.order, 'mid', 'F')).toBe(2);
    expect(free.order.assumed.some(({ is }) => is === 'stockKept')).toBe(false);
  });

  it('the release of D3 takes them: 18 to 19, as the steel is eased batten heavy', () => {
    const release = strikeOf('D3', state);
    expect('found' in release.plan && isAccepted(release.order)).toBe(true);
    expect([18, 19]).toContain(mostTaken(release.order, 'mid', 'F'));
    expect(release.order.steps.some(({ act }) => act === 'takeOffSteel')).toBe(true);
  });

  it('is held with 18, and with 17 of them it stays on its steel', () => {
    const of = (stock: number) => strikeOf('D3', midOf(stock, true)).plan;
    expect('found' in of(18)).toBe(true);
    expect(of(17)).toMatchObject({ none: { rule: 'STOCK', exhaustive: true } });
  });
});
