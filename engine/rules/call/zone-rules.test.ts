/** People and sets around a step, and limits of the house: broken, and kept by a hair. */
import { describe, expect, it } from 'vitest';
import { metres, pascals } from '#quantities';
import { exampleHang, exampleItem, given, nobodyKnows } from '../example-house.ts';
import { add, attach, bullLine, fly, plantOf, remove, standingAt } from '../order/example-order.ts';
import {
  at,
  BRICKS,
  type Called,
  callHouse,
  DROP,
  findingOf,
  leaveFor,
  MOVE,
  postNow,
  READY,
  RUN,
  rulesOf,
  without,
} from './example-call.ts';

describe('people and sets around a step', () => {
  it('[CAL-008] a closed zone has its marshal at the post', () => {
    expect(rulesOf({ ...BRICKS, posts: without('marshal:drop:upper') })).toEqual(['CAL-008']);
    expect(findingOf('CAL-008', { ...MOVE, posts: without('marshal:run') }).isHold).toBe(true);
    expect(rulesOf({ ...BRICKS, now: { zones: [] } })).toEqual(['CAL-008']);
  });

  it('[CAL-009] who may stand under the bricks has said that they do not', () => {
    for (const post of ['rail', 'watcher', 'deck', 'bullLine', 'gallery:mid', 'motor']) {
      const posts: Called['posts'] = (all) => ({
        ...all,
        [post]: postNow(post, { isClear: false }),
      });
      expect(findingOf('CAL-009', { ...BRICKS, posts }).finding?.facts['posts']).toBe(post);
    }
    const elsewhere = ['headFly', 'caller', 'marshal:run', 'gallery:upper'];
    const posts: Called['posts'] = (all) => ({
      ...all,
      ...Object.fromEntries(elsewhere.map((post) => [post, postNow(post, { isClear: false })])),
    });
    expect(rulesOf({ ...BRICKS, posts })).toEqual([]);
  });

  it('[CAL-009] a gallery above is not under the bricks, and one of unknown height may be', () => {
    const step = add(1, 'B', 'mid');
    const closed = [RUN, { zone: 'drop', gallery: 'mid' }] as const;
    const posts: Called['posts'] = (all) => ({
      ...all,
      'gallery:upper': postNow('u', { isClear: false }),
    });
    const set = at(standingAt(9.5, 0, { closed }));
    expect(rulesOf({ set, step, posts })).not.toContain('CAL-009');
    const galleries = callHouse.galleries.map((each) => ({ ...each, floor: nobodyKnows }));
    const facts = { house: { ...callHouse, galleries } };
    expect(rulesOf({ set, step, posts, facts })).toContain('CAL-009');
  });

  it('[CAL-010] bricks are in hand for one set at one gallery', () => {
    for (const gallery of ['upper', 'mid']) {
      const other = at(READY, { leave: leaveFor(add(1, 'B', gallery)) });
      expect(findingOf('CAL-010', { ...BRICKS, other }).isHold).toBe(true);
    }
    expect(rulesOf({ ...BRICKS, other: at(READY, { leave: leaveFor(attach('lamp')) }) })).toEqual(
      [],
    );
  });

  it('[CAL-011] nothing moves within reach of a loader, either way round', () => {
    const bricks = at(READY, { leave: leaveFor(add(1)) });
    const moving = at(READY, { leave: leaveFor(fly(2)) });
    findingOf('CAL-011', { ...MOVE, other: bricks });
    expect(findingOf('CAL-011', { ...BRICKS, other: moving }).isHold).toBe(true);
    const [seven, eight] = callHouse.lineSets;
    if (seven === undefined || eight === undefined) throw new Error('the house has two sets');
    const apart = (y: typeof seven.y) => ({
      house: { ...callHouse, lineSets: [seven, { ...eight, y }] },
    });
    expect(rulesOf({ ...BRICKS, other: moving, facts: apart(given(metres(2.74))) })).toContain(
      'CAL-011',
    );
    expect(rulesOf({ ...BRICKS, other: moving, facts: apart(given(metres(2.76))) })).not.toContain(
      'CAL-011',
    );
    expect(rulesOf({ ...BRICKS, other: moving, facts: apart(nobodyKnows) })).toContain('CAL-011');
  });

  it('[CAL-012] a move has one at the line and another who watches', () => {
    expect(rulesOf({ ...MOVE, posts: without('watcher') })).toEqual(['CAL-012']);
    expect(rulesOf({ ...MOVE, posts: without('rail') })).toEqual(['CAL-003', 'CAL-012']);
    const alone: Called['posts'] = (all) => ({ ...all, watcher: postNow('rail') });
    expect(findingOf('CAL-012', { ...MOVE, posts: alone }).isHold).toBe(true);
    const oneMore: Called['posts'] = (all) => ({
      ...all,
      watcher: postNow('rail', { device: 'dev_other' }),
    });
    expect(rulesOf({ ...MOVE, posts: oneMore })).toEqual(['CAL-012']);
  });

  it('[CAL-012] without a sign-in two names on two devices are two, and one name is one', () => {
    const named =
      (watcher: string): NonNullable<Called['posts']> =>
      (all) => ({
        ...all,
        rail: postNow('Ro', { by: null }),
        watcher: postNow(watcher, { by: null, device: 'dev_w' }),
      });
    expect(rulesOf({ ...MOVE, posts: named('Wim') })).toEqual([]);
    expect(rulesOf({ ...MOVE, posts: named(' ro ') })).toEqual(['CAL-012']);
  });

  it('[CAL-012] a line that goes along is led, and not by the rail', () => {
    const set = at({ ...READY, restraints: [bullLine()] });
    expect(rulesOf({ ...MOVE, set })).toEqual([]);
    expect(rulesOf({ ...MOVE, set, posts: without('bullLine') })).toEqual(['CAL-012']);
    const both: Called['posts'] = (all) => ({ ...all, bullLine: postNow('rail') });
    expect(rulesOf({ ...MOVE, set, posts: both })).toEqual(['CAL-012']);
  });

  it('[CAL-013] one line is in hand, and nobody is at line or batten under bricks', () => {
    const far = { y: given(metres(9)) };
    const [seven, eight] = callHouse.lineSets;
    if (seven === undefined || eight === undefined) throw new Error('the house has two sets');
    const facts = { house: { ...callHouse, lineSets: [seven, { ...eight, ...far }] } };
    const moving = at(READY, { leave: leaveFor(fly(2)) });
    expect(rulesOf({ ...MOVE, other: moving, facts })).toEqual(['CAL-013']);
    expect(rulesOf({ ...BRICKS, other: moving, facts })).toEqual(['CAL-013']);
    const bricks = at(READY, { leave: leaveFor(add(1)) });
    expect(findingOf('CAL-013', { ...MOVE, other: bricks, facts }).isHold).toBe(true);
    const rig = { act: 'rig', restraint: bullLine() } as const;
    for (const step of [attach('lamp'), rig]) {
      expect(rulesOf({ step, other: bricks, facts })).toEqual(['CAL-013']);
      expect(rulesOf({ step, other: moving, facts })).toEqual([]);
    }
    expect(rulesOf({ step: { act: 'close', zone: RUN }, other: bricks, facts })).toEqual([]);
  });

  it('[CAL-014] coupled sets are one as soon as a piece is on either, or is to be', () => {
    const facts = { hang: { ...exampleHang, items: [], coupledWith: ['8'] } };
    expect(rulesOf({ ...MOVE, facts })).toEqual([]);
    expect(rulesOf({ ...BRICKS, facts })).toEqual([]);
    const onIt = at({ ...READY, items: { lamp: 'flying' } });
    const steps = [fly(2), add(1), remove(1), attach('frame'), { act: 'release', item: 'lamp' }];
    for (const step of steps as readonly Called['step'][]) {
      expect(findingOf('CAL-014', { step, set: onIt, facts }).isHold).toBe(true);
      expect(rulesOf({ step, set: onIt })).not.toContain('CAL-014');
    }
    expect(rulesOf({ ...MOVE, other: onIt, facts })).toEqual(['CAL-014']);
    expect(rulesOf({ ...MOVE, other: { standing: null }, facts })).toEqual(['CAL-014']);
    const lies = at({ ...READY, items: { lamp: 'beside' } });
    expect(rulesOf({ ...MOVE, other: lies, facts })).toEqual([]);
    expect(rulesOf({ step: attach('lamp'), facts })).toEqual(['CAL-014']);
    expect(rulesOf({ step: { act: 'close', zone: DROP }, set: onIt, facts })).toEqual([]);
  });
});

describe('limits of the house', () => {
  const vent = { id: 'v', name: 'the smoke vent', z: [metres(1.8), null] } as const;
  const withBox = (box: object): NonNullable<Called['facts']> => ({
    house: { ...callHouse, keepOuts: [{ ...vent, ...box }] },
  });

  it('[CAL-016] nothing enters what is kept clear, and what stands in it may leave it', () => {
    expect(findingOf('CAL-016', { ...MOVE, facts: withBox({}) }).isHold).toBe(true);
    expect(rulesOf({ ...MOVE, step: fly(1.8), facts: withBox({}) })).toEqual([]);
    const high = at(standingAt(2, 0, { closed: [RUN, DROP] }));
    expect(rulesOf({ set: high, step: fly(1.5), facts: withBox({}) })).toEqual([]);
    expect(rulesOf({ set: high, step: fly(2.5), facts: withBox({}) })).toEqual(['CAL-016']);
  });

  it('[CAL-016] a box beside the batten, or up or down stage of it, is not entered', () => {
    const metresOf = (a: number, b: number) => [metres(a), metres(b)] as const;
    expect(rulesOf({ ...MOVE, facts: withBox({ x: metresOf(5, 9) }) })).toEqual([]);
    expect(rulesOf({ ...MOVE, facts: withBox({ x: metresOf(4, 9) }) })).toEqual(['CAL-016']);
    const hang = { ...exampleHang, items: [], halfDepth: given(metres(0.3)) };
    const beside = (from: number): Called => ({
      ...MOVE,
      facts: { ...withBox({ y: metresOf(from, 9) }), hang },
    });
    expect(rulesOf(beside(2.3))).toEqual([]);
    expect(rulesOf(beside(2.2))).toEqual(['CAL-016']);
    const thin = { ...hang, halfDepth: nobodyKnows };
    expect(rulesOf({ ...MOVE, facts: { ...withBox({ y: metresOf(1, 3) }), hang: thin } })).toEqual([
      'CAL-016',
    ]);
  });

  it('[CAL-016] what hangs enters before the batten does', () => {
    const item = { ...exampleItem, id: 'lamp', drop: given(metres(3)), pick: given(metres(0.5)) };
    const hang = { ...exampleHang, items: [item] };
    const low = { ...withBox({ z: [null, metres(5)] }), hang, physics: plantOf() };
    const set = at(standingAt(9, 0, { items: { lamp: 'flying' }, closed: [RUN, DROP] }));
    expect(rulesOf({ set, step: fly(8.6), facts: low })).not.toContain('CAL-016');
    expect(rulesOf({ set, step: fly(8), facts: low })).toContain('CAL-016');
    const away = at(standingAt(9, 0, { closed: [RUN, DROP] }));
    expect(rulesOf({ set: away, step: fly(8), facts: low })).not.toContain('CAL-016');
  });

  it('[CAL-017] nothing is rigged without owner and tag', () => {
    for (const lacks of [{ owner: null }, { tag: null }, { owner: ' ' }]) {
      const step = { act: 'rig', restraint: bullLine(lacks) } as const;
      expect(findingOf('CAL-017', { step }).isHold).toBe(true);
    }
  });

  it('[CAL-018] what does not go along comes off before a move', () => {
    const tied = (restraint: Parameters<typeof bullLine>[0]) =>
      at({ ...READY, restraints: [bullLine(restraint)] });
    // A sling that holds at another height stops nothing here, and is forgotten here.
    const sling = tied({ kind: 'arborSling', from: metres(12), to: metres(13) });
    expect(rulesOf({ ...MOVE, set: sling })).toEqual(['CAL-018']);
    expect(findingOf('CAL-018', { ...MOVE, set: tied({ owner: null }) }).isHold).toBe(true);
    expect(rulesOf({ ...MOVE, set: tied({ kind: 'winch' }) })).toEqual([]);
  });

  it('[CAL-019] the floor of a gallery takes what comes off', () => {
    const set = at(standingAt(1, 2, { closed: [RUN, DROP] }));
    const floor = (changes: object): Called => {
      const galleries = callHouse.galleries.map((each) =>
        each.id === 'upper' ? { ...each, ...changes } : each,
      );
      return { set, step: remove(1), facts: { house: { ...callHouse, galleries } } };
    };
    // By hand: 21 bricks of 10 kg, 4 of 5 kg and 400 kg of people on 20 m² are 309 Pa.
    const pressurePa = (9.80665 * (210 + 20 + 400)) / 20;
    expect(rulesOf(floor({ floorLimit: given(pascals(pressurePa)) }))).toEqual([]);
    expect(rulesOf(floor({ floorLimit: given(pascals(pressurePa - 0.1)) }))).toEqual(['CAL-019']);
    // 25 bricks of at most 0.15 m on 1.5 m of floor: ten to a course, three courses.
    const row = { length: given(metres(1.5)), width: given(metres(14)) };
    expect(rulesOf(floor({ ...row, coursesAllowed: given(3) }))).toEqual([]);
    const found = findingOf('CAL-019', floor({ ...row, coursesAllowed: given(2) }));
    expect(found).toMatchObject({ isHold: true, finding: { measured: { value: 3 } } });
    const unsaid = { floorLimit: nobodyKnows, coursesAllowed: nobodyKnows };
    expect(rulesOf(floor(unsaid))).toEqual([]);
  });

  it('[CAL-020] what a rule stops in the plan is not loaded for, and may come off', () => {
    const { finding } = findingOf('CAL-004', { set: { standing: null }, step: fly(2) });
    if (finding === null) throw new Error('the rule has a finding');
    const facts = { planStops: [{ ...finding, code: 'LOD-001' }] };
    expect(findingOf('CAL-020', { ...BRICKS, facts }).finding?.facts).toEqual({ rules: 'LOD-001' });
    const laden = at(standingAt(1, 2, { closed: [RUN, DROP] }));
    expect(rulesOf({ set: laden, step: remove(1), facts })).toEqual([]);
    expect(rulesOf({ ...MOVE, facts })).toEqual([]);
  });
});
