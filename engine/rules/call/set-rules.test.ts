/** What keeps one set from being worked: a step that breaks the rule, and one that does not. */
import { describe, expect, it } from 'vitest';
import { newtons } from '#quantities';
import { exampleHang, exampleItem, nobodyKnows } from '../example-house.ts';
import { add, attach, bullLine, fly, plantOf, remove, standingAt } from '../order/example-order.ts';
import {
  at,
  BRICKS,
  type Called,
  callHouse,
  DROP,
  findingOf,
  judged,
  judgedSet,
  leaveFor,
  MOVE,
  NOON_MS,
  READY,
  RUN,
  rulesOf,
  stop,
  without,
} from './example-call.ts';

describe('a step that breaks nothing', () => {
  it.each<[string, Called]>([
    ['bricks on', BRICKS],
    ['bricks off', { set: at(standingAt(1, 2, { closed: [RUN, DROP] })), step: remove(1) }],
    ['a move', MOVE],
    ['an item on', { step: attach('lamp') }],
    ['a zone closed', { step: { act: 'close', zone: RUN } }],
    ['a line rigged', { step: { act: 'rig', restraint: bullLine() } }],
  ])('%s has leave', (_, called) => {
    expect(rulesOf(called)).toEqual([]);
    expect(judged(called).expects).not.toBeNull();
  });
});

describe('what keeps a set from being worked', () => {
  it('[CAL-001] is a stop on it or on everything, and no word covers that', () => {
    for (const set of [null, '7']) {
      const found = findingOf('CAL-001', { ...MOVE, now: { stops: [stop(set)] } });
      expect(found.isHold).toBe(true);
    }
    expect(rulesOf({ ...MOVE, now: { stops: [stop('8')] } })).toEqual([]);
  });

  it('[CAL-002] is a step that is asked for or under way on it', () => {
    expect(rulesOf({ ...BRICKS, set: at(READY, { leave: leaveFor(fly(2)) }) })).toContain(
      'CAL-002',
    );
    const asked = {
      ...{ seq: 4, by: 'pers_x', device: 'dev_x', post: 'rail', step: fly(2) },
      ...{ atMs: NOON_MS, override: null, secondOf: 'headFly' },
    };
    expect(findingOf('CAL-002', { ...BRICKS, set: at(READY, { asked }) }).isHold).toBe(true);
  });

  it('[CAL-003] is the wrong post, or nobody at it', () => {
    expect(rulesOf({ ...MOVE, post: 'deck' })).toContain('CAL-003');
    const { finding } = findingOf('CAL-003', { step: attach('lamp'), posts: without('deck') });
    expect(finding?.facts).toEqual({ post: 'deck', what: 'nobody is' });
  });

  it('[CAL-004] is that nobody knows how it stands: only a zone is closed', () => {
    const doubted = { standing: null, last: READY, doubt: 'somebody else was at it' };
    expect(rulesOf({ set: doubted, step: add(1) })).toContain('CAL-004');
    expect(rulesOf({ set: doubted, step: { act: 'reopen', zone: RUN } })).toContain('CAL-004');
    const closed = judged({
      set: { ...doubted, last: standingAt(1, 0, { closed: [] }) },
      step: { act: 'close', zone: RUN },
    });
    expect(closed).toMatchObject({ findings: [], expects: { closed: [RUN] } });
    expect(rulesOf({ set: { ...doubted, last: null }, step: { act: 'close', zone: RUN } })).toEqual(
      ['CAL-004'],
    );
  });

  it('[CAL-005] is that it is not held, and would not be after the step', () => {
    // Six bricks at half height: 650 N arbor heavy, and the lock holds 200 N.
    const loose = at(standingAt(10, 6, { closed: [RUN, { zone: 'drop', gallery: 'mid' }] }));
    const rig = (ratedN: number): Called => ({
      set: loose,
      step: { act: 'rig', restraint: bullLine({ rating: newtons(ratedN) }) },
    });
    expect(findingOf('CAL-005', rig(500)).isHold).toBe(true);
    expect(rulesOf(rig(1000))).toEqual([]);
    expect(rulesOf({ set: loose, step: { act: 'close', zone: DROP } })).toEqual([]);
    expect(rulesOf({ set: loose, step: { act: 'reopen', zone: RUN } })).toContain('CAL-005');
  });

  it('[CAL-006] is a lock that is open or a ring that is off at rest', () => {
    expect(rulesOf({ ...BRICKS, set: at(READY, { lock: 'open' }) })).toEqual(['CAL-006']);
    expect(findingOf('CAL-006', { ...BRICKS, set: at(READY, { ring: 'off' }) }).isHold).toBe(true);
    expect(
      rulesOf({ set: at(READY, { ring: 'off' }), step: { act: 'close', zone: DROP } }),
    ).toEqual([]);
  });

  it('[CAL-007] is a collar that is loose while no bricks are handled', () => {
    expect(findingOf('CAL-007', { ...MOVE, set: at(READY, { collar: 'loose' }) }).isHold).toBe(
      true,
    );
  });

  it('[CAL-015] is a tag; people are kept out all the same', () => {
    const tag = { number: '12', reason: 'head block' };
    expect(findingOf('CAL-015', { ...MOVE, set: at(READY, { tag }) }).isHold).toBe(true);
    expect(rulesOf({ set: { tag }, step: { act: 'close', zone: RUN } })).toEqual([]);
  });

  it('[CAL-021] is an item that carries a person, for every step', () => {
    const items = [{ ...exampleItem, carriesPerson: true }];
    const facts = { hang: { ...exampleHang, items } };
    for (const step of [add(1), fly(2), { act: 'close', zone: RUN } as const]) {
      expect(findingOf('CAL-021', { ...BRICKS, step, facts }).isHold).toBe(true);
    }
  });

  it('[CAL-022] is what was carried over and is older than the house lets stand', () => {
    const old = {
      basis: 'carriedOver',
      at: '2026-11-20T11:00:00Z',
      by: 'x',
      second: null,
    } as const;
    const found = findingOf('CAL-022', { ...MOVE, set: at(READY, { knowledge: old }) });
    expect(found.isHold).toBe(false);
    const nobody = { ...old, basis: 'counted', by: null } as const;
    expect(rulesOf({ ...MOVE, set: at(READY, { knowledge: nobody }) })).toEqual(['CAL-022']);
    const counted = { ...old, basis: 'counted' } as const;
    expect(rulesOf({ ...MOVE, set: at(READY, { knowledge: counted }) })).toEqual([]);
    const fresh = { ...old, at: '2026-11-28T11:59:00Z' };
    expect(rulesOf({ ...MOVE, set: at(READY, { knowledge: fresh }) })).toEqual([]);
  });

  it('[CAL-022] is every record that was carried over where the house gives no age', () => {
    const fresh = {
      basis: 'carriedOver',
      at: '2026-11-28T11:59:00Z',
      by: 'x',
      second: null,
    } as const;
    const rules = { ...callHouse.rules, staleAfterSeconds: nobodyKnows };
    const facts = { house: { ...callHouse, rules } };
    findingOf('CAL-022', { ...MOVE, set: at(READY, { knowledge: fresh }), facts });
  });

  it('[CAL-023] is paper about it that nobody has settled', () => {
    expect(findingOf('CAL-023', { ...MOVE, set: at(READY, { notes: [5] }) }).isHold).toBe(true);
  });

  it('[CAL-024] is a mass at its worst, where the written one is held', () => {
    // A frame of 600 N and five bricks: 135 N heavy as written, and up to 225 N; the lock has 200.
    const pieces = { frame: { weightN: 600, doubtN: 90 } };
    const standing = standingAt(1.5, 5, { items: { frame: 'flying' }, closed: [RUN, DROP] });
    const called: Called = {
      set: at(standing),
      step: fly(2),
      facts: { physics: plantOf({ pieces }) },
    };
    const found = findingOf('CAL-024', called);
    expect(found.isHold).toBe(false);
    expect(rulesOf(called)).toEqual(['CAL-024']);
    expect(judgedSet(called)).toEqual({ held: 'held', rule: 'CAL-024' });
    const known = { frame: { weightN: 600, doubtN: 10 } };
    expect(rulesOf({ ...called, facts: { physics: plantOf({ pieces: known }) } })).toEqual([]);
  });

  it('[CAL-025] is a value that nobody has given', () => {
    const facts = { physics: null, needs: ['working height'] };
    expect(findingOf('CAL-025', { ...MOVE, facts }).finding?.facts).toEqual({
      needs: 'working height',
    });
    expect(rulesOf({ ...MOVE, facts, step: { act: 'close', zone: DROP } })).toEqual([]);
  });
});
