/** Edges of a move and of what holds on it: hauling, contact, and steel that is not there. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Standing } from '#state';
import {
  breachOf,
  bullLine,
  DROPS,
  fly,
  RUN,
  rulesOf,
  standingAt,
  type Trial,
} from './example-order.ts';

const hung = { frame: 'flying' } as const;
const closed = [RUN, ...DROPS];

describe('what hauls', () => {
  // 70 N arbor heavy at 2 m, and 130 N at 8 m.
  const hauled = (handsBriefN: number, restraints: Standing['restraints'], toM = 8): Trial => ({
    plant: { more: { handsBriefN } },
    start: standingAt(2, 4, { items: hung, closed, restraints }),
    steps: [fly(toM)],
  });

  it('[ORD-009] is the strongest of hands and lines, and never two together', () => {
    const winch = (ratingN: number) =>
      bullLine({ kind: 'winch', resists: 'both', rating: newtons(ratingN) });
    expect(rulesOf(hauled(100, []))).toEqual(['ORD-009']);
    expect(rulesOf(hauled(100, [winch(130)]))).toEqual([]);
    expect(rulesOf(hauled(100, [winch(129)]))).toEqual(['ORD-009']);
    expect(rulesOf(hauled(130, [winch(50)]))).toEqual([]);
    expect(breachOf('ORD-009', hauled(100, [winch(120)])).finding.facts['what']).toBe(
      'the winch on the hand line',
    );
  });

  it('[ORD-009] is a bull line as well', () => {
    expect(rulesOf(hauled(100, [bullLine()]))).toEqual([]);
    expect(rulesOf(hauled(100, [bullLine({ rating: newtons(129) })]))).toEqual(['ORD-009']);
  });

  it('[ORD-009] is no line that resists the other way, and nothing that is tied', () => {
    const inward = bullLine({ kind: 'winch', resists: 'in' });
    expect(rulesOf(hauled(100, [inward]))).toEqual(['ORD-009']);
    const stands = bullLine({ kind: 'stands', resists: 'both' });
    expect(rulesOf(hauled(100, [stands]))).toEqual(['ORD-009']);
  });

  it('[ORD-009] hauls only where its heights reach', () => {
    const winch = bullLine({ kind: 'winch', resists: 'both', to: metres(5) });
    expect(rulesOf(hauled(100, [winch], 5))).toEqual([]);
    expect(rulesOf(hauled(100, [winch]))).toEqual(['ORD-009']);
  });
});

describe('a move that begins at a contact', () => {
  it('[ORD-008] is past what holds further on, and not at the contact', () => {
    // 40 − 30 · 5 + 500 − 400 = −10 N at 6 m, −200 N at 12.33 m, −220 N at 13 m.
    const trial: Trial = {
      plant: { slopeN: 30 },
      start: standingAt(6, 4, { items: { tower: 'attachedResting' }, closed }),
      steps: [fly(13)],
    };
    expect(rulesOf(trial)).toEqual(['ORD-008']);
    const breach = breachOf('ORD-008', trial);
    expect(breach.byN).toBeCloseTo(20, 9);
    const { passes } = breach.finding.facts;
    expect(typeof passes === 'object' ? passes.value : Number.NaN).toBeCloseTo(6 + 190 / 30, 9);
  });

  it('[ORD-010] is past what holds at the contact itself', () => {
    const trial: Trial = {
      start: standingAt(6, 2, { items: { tower: 'attachedResting' }, closed }),
      steps: [fly(7)],
    };
    expect(breachOf('ORD-010', trial).where).toBe(6);
    expect(rulesOf(trial)).not.toContain('ORD-008');
  });
});

describe('a move that begins unheld', () => {
  it('[ORD-007] counts the doubt against the lock that is opened, arbor heavy as well', () => {
    // 40 − 180 + 300 − 300 = −140 N on the high stop, and 70 N of doubt.
    const trial = (doubtN: number): Trial => ({
      plant: { pieces: { frame: { weightN: 300, doubtN } } },
      start: standingAt(19, 3, { items: hung, closed }),
      steps: [fly(18)],
      options: { doubt: 'worst' },
    });
    expect(breachOf('ORD-007', trial(70)).byN).toBeCloseTo(10, 9);
    expect(rulesOf(trial(60))).not.toContain('ORD-007');
  });

  it('[ORD-008] names no contact where nothing touches', () => {
    const trial: Trial = { start: standingAt(1, 1, { items: hung, closed }), steps: [fly(2)] };
    expect(rulesOf(trial)).toEqual(['ORD-007', 'ORD-008']);
  });
});

describe('faults after a step', () => {
  const CHECK = { faults: 'check' } as const;

  it('[ORD-031] lets nothing go while zones are closed or opened', () => {
    const start = standingAt(1, 3, { items: hung, closed: DROPS });
    for (const act of ['close', 'reopen'] as const) {
      const steps = [{ act, zone: { zone: 'drop', gallery: 'mid' } }] as const;
      expect(rulesOf({ start, steps, options: CHECK }), act).not.toContain('ORD-031');
    }
  });

  it('[ORD-001] is not said again as a fault of what is not held anyway', () => {
    const steps = [{ act: 'reopen', zone: { zone: 'drop', gallery: 'mid' } }] as const;
    expect(rulesOf({ start: standingAt(5.1, 2), steps, options: CHECK })).toEqual(['ORD-001']);
  });
});

describe('steel that is not there', () => {
  const steel = (ratingN: number) =>
    bullLine({ kind: 'deadHangSteel', resists: 'in', rating: newtons(ratingN) });
  const onSteel = (restraints: Standing['restraints']): Trial => ({
    start: standingAt(3, 3, { items: { frame: 'heldElsewhere' }, service: 'deadHung', restraints }),
  });

  it('[ORD-023] is no other restraint', () => {
    expect(breachOf('ORD-023', onSteel([bullLine()])).finding.limit).toMatchObject({ value: 0 });
  });

  it('[ORD-023] is missed also where nothing hangs yet', () => {
    const start = standingAt(3, 0, { items: { lamp: 'beside' } });
    expect(rulesOf({ start, steps: [{ act: 'hangOnSteel' }] })).toContain('ORD-023');
  });

  it('[ORD-023] is judged by the strongest of several, whichever comes first', () => {
    expect(rulesOf(onSteel([steel(400), steel(100)]))).not.toContain('ORD-023');
    expect(rulesOf(onSteel([steel(100), steel(400)]))).not.toContain('ORD-023');
    expect(rulesOf(onSteel([steel(200), steel(200)]))).toContain('ORD-023');
  });

  it('[ORD-023] takes what hangs there back into the imbalance', () => {
    // 40 − 20 + 300 − 300 = 20 N: with steel any share of it, without steel the whole.
    const low = (restraints: Standing['restraints']) => onSteel(restraints);
    expect(rulesOf(low([steel(306)]))).toEqual([]);
    expect(rulesOf(low([]))).toEqual(['ORD-023']);
  });
});
