import { describe, expect, it } from 'vitest';
import { judgedOrder } from '#orders';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf, workedOn } from './example-work.ts';
import { momentFor } from './keys.ts';
import { momentsOf, sizeWords } from './moments.ts';

const DOCUMENTS = documentsOf({ house: kestlemere, show: clockmaker, state: record });

const { house } = DOCUMENTS;
const worked = workedOn(DOCUMENTS, { set: '9', job: 'strike', from: 'planned' });
const { job, start, kind } = worked.question;
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

describe('the moments of an order', () => {
  const moments = momentsOf(worked.order, job.set, house);

  it('are the start and one after each step, each with words, picture and sign', () => {
    expect(moments).toHaveLength(worked.order.steps.length + 1);
    expect(moments.map(({ number }) => number)).toEqual(moments.map((_, index) => index));
    expect(moments[0]?.said).toBeNull();
    expect(moments.slice(1).every(({ said }) => said !== null && said.who !== '')).toBe(true);
    for (const { sign, cell, drawn } of moments) {
      const { lowN, highN } = drawn.state.imbalance;
      if (lowN > 0)
        expect([sign, plain(cell.balance)]).toEqual(['battenHeavy', expect.any(String)]);
      if (highN < 0) expect(sign).toBe('arborHeavy');
      if (lowN > 0) expect(plain(cell.balance)).toContain('batten heavy');
      if (highN < 0) expect(plain(cell.balance)).toContain('arbor heavy');
    }
  });

  it('know zones, which leave the set as it was', () => {
    const zones = moments.filter(({ isZone }) => isZone);
    expect(zones.length).toBeGreaterThan(1);
    for (const { number, drawn } of zones) {
      expect(drawn.state.imbalance).toEqual(moments[number - 1]?.drawn.state.imbalance);
    }
  });

  it('have nothing broken in an order that the judge accepts', () => {
    expect(moments.flatMap(({ breaches }) => breaches)).toEqual([]);
    expect(moments.every(({ drawn }) => drawn.isHeld)).toBe(true);
  });

  it('name the broken rule at its own step, when the cloth comes off before the bricks', () => {
    const isBricksOff = ({ act }: { act: string }) => act === 'remove';
    const last = worked.order.steps.findLastIndex(isBricksOff);
    const steps = worked.order.steps.toSpliced(last, 1);
    const judged = judgedOrder(job, start, steps, kind, worked.order.checked);
    const wrong = momentsOf(judged, job.set, house);
    const untie = wrong.find(({ drawn }) => drawn.step?.act === 'release');
    expect(untie?.breaches.map(({ rule }) => rule)).toContain('ORD-005');
    expect(untie?.drawn.isHeld).toBe(false);
    expect(untie?.cell.isBroken).toBe(true);
    const firstBroken = wrong.find(({ breaches }) => breaches.length > 0);
    expect(firstBroken?.breaches[0]).toEqual(judged.verdict.broken);
  });

  it('are judged again in less than a twentieth of a second', () => {
    const times = Array.from({ length: 9 }, () => {
      const from = performance.now();
      judgedOrder(job, start, worked.order.steps, kind, worked.order.checked);
      return performance.now() - from;
    });
    // The least of them: other tests run beside this one, and can only add to a time.
    expect(Math.min(...times)).toBeLessThan(50);
  });

  it('say how many steps and galleries', () => {
    const steps = [
      { act: 'remove', kind: 'F', count: 1, gallery: 'mid' },
      { act: 'add', kind: 'F', count: 1, gallery: 'upper' },
    ] as const;
    expect(sizeWords({ steps })).toBe('2 steps, 2 galleries');
    expect(sizeWords({ steps: steps.slice(0, 1) })).toBe('1 step, 1 gallery');
    expect(sizeWords({ steps: [] })).toBe('no steps, no galleries');
  });
});

describe('keys among the moments', () => {
  it('go left and right and to both ends, and stay inside', () => {
    expect(momentFor('ArrowRight', null, 5)).toBe(0);
    expect(momentFor('ArrowRight', 3, 5)).toBe(4);
    expect(momentFor('ArrowRight', 4, 5)).toBe(4);
    expect(momentFor('ArrowLeft', 0, 5)).toBe(0);
    expect(momentFor('Home', 3, 5)).toBe(0);
    expect(momentFor('End', 1, 5)).toBe(4);
  });

  it('close with Escape what is open, and leave other keys alone', () => {
    expect(momentFor('Escape', 2, 5)).toBeNull();
    expect(momentFor('Escape', null, 5)).toBeUndefined();
    expect(momentFor('a', 2, 5)).toBeUndefined();
  });
});
