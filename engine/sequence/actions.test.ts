/** What can be done next on the six-line set, each deed with the heights at which it can be. */
import { describe, expect, it } from 'vitest';
import { FOOT, metres, newtons, POUND_FORCE } from '#quantities';
import type { OrderPhysics, Restraint, Standing } from '#state';
import { type ExampleSet, examplePhysics } from '../../validation/sequence/set-physics.ts';
import { deedsFrom, firstPlace, flightsFrom, type Move, type Place } from './actions.ts';
import { bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { heldLoads } from './held-loads.ts';
import { type LoadChange, loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { AWAY, HANGING, RESTING, SLACK, siteOf } from './site.ts';
import type { Span } from './span.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const LAMPS = setWith({ lamp: clearItem(40), other: clearItem(60), twin: clearItem(40) });

type Asked = {
  readonly set?: ExampleSet;
  readonly start?: Standing;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
  readonly physics?: Partial<OrderPhysics>;
  /** The place to go on from: where, and what has changed since the start. */
  readonly spanFt?: readonly [number, number];
  readonly change?: LoadChange;
  readonly order?: string;
};

const asked = ({ set = LAMPS, start = bare, goal = {}, options = {}, ...more }: Asked) => {
  const physics = { ...examplePhysics(set), ...more.physics };
  const wanted: OrderGoal = { items: {}, bricks: {}, height: null, service: 'in', ...goal };
  const usual = { ...USUAL, doubtShare: 0, lock: 'nominal' as const, ...options };
  const loads = loadsOf(siteOf(physics, start, wanted, usual));
  const trust = { lockN: 50 * POUND_FORCE, exposedJ: Number.POSITIVE_INFINITY, extra: null };
  const world = { loads, held: heldLoads(loads, trust) };
  const first = firstPlace(world);
  const span = more.spanFt === undefined ? first.span : spanOf(more.spanFt);
  const load = loads.changed(first.load, more.change ?? {});
  const place: Place = { ...first, load, span, order: more.order ?? first.order };
  return { world, first, place, ids: loads.site.items.map(({ id }) => id) };
};

const spanOf = ([lo, hi]: readonly [number, number]): Span => ({ lo: ft(lo), hi: ft(hi) });

const heights = ({ lo, hi }: Span): string =>
  [lo, hi].map((heightM) => (heightM / FOOT).toFixed(2)).join('-');

/** `release lamp 003 3.00-4.00`: the phases after it, and where it leaves the set. */
const wordsOf = (ids: readonly string[], { deed, place }: Move): string => {
  const after = `${place.load.phases.join('')} ${heights(place.span)}`;
  if (deed.deed === 'fly') return `fly ${deed.isWhole ? 'all' : 'part'} ${after}`;
  if (deed.deed === 'brick') {
    const { act, kind, gallery } = deed;
    return `${act} ${kind} at ${gallery}: ${place.load.counts.join()} ${heights(place.span)}`;
  }
  const item = 'item' in deed ? ` ${ids[deed.item]}` : '';
  const as = deed.deed === 'attach' ? ` as ${deed.as}` : '';
  return `${deed.deed}${item}${as} ${after}`;
};

const deeds = (question: Asked): readonly string[] => {
  const { world, place, ids } = asked(question);
  return deedsFrom(world, place).map((move) => wordsOf(ids, move));
};

const flights = (question: Asked): readonly string[] => {
  const { world, place, ids } = asked(question);
  return flightsFrom(world, place).map((move) => wordsOf(ids, move));
};

describe('where it begins', () => {
  it('is as the set stands, and no gallery has given anything', () => {
    const start = hung(LAMPS, 24, [
      ['F', 2],
      ['H', 1],
    ]);
    expect(asked({ start }).first).toMatchObject({
      order: '001',
      taken: [0, 0, 0, 0],
      span: { lo: ft(24), hi: ft(24) },
    });
  });
});

describe('plates', () => {
  const TWO = { goal: { bricks: { F: 1, H: 1 } } } as const;

  it('go on from a gallery that reaches the top of the stack', () => {
    // 48.59 lb on the low stop; pan at 60.06 ft, upper reach 58.25 to 63.5 ft: 3 to 4.81 ft.
    expect(deeds(TWO)).toEqual(['add 0 at 0: 1,0 3.00-3.00', 'add 1 at 0: 0,1 3.00-3.00']);
    // 48.59 − 1.32 h − 25 is held; 3 ft on the stop to the end of the reach.
    expect(deeds({ ...TWO, spanFt: [3, 61] })).toEqual([
      'add 0 at 0: 1,0 3.00-4.81',
      'add 1 at 0: 0,1 3.00-4.81',
      'add 0 at 1: 1,0 19.56-24.81',
      'add 1 at 1: 0,1 19.56-24.81',
    ]);
  });

  it('are handled at multiples of a step only, where one is asked for', () => {
    const step = { ...TWO, options: { heightStepM: ft(1) } };
    expect(deeds({ ...step, spanFt: [3.5, 20.5] })).toEqual([
      'add 0 at 0: 1,0 4.00-4.00',
      'add 1 at 0: 0,1 4.00-4.00',
      'add 0 at 1: 1,0 20.00-20.00',
      'add 1 at 1: 0,1 20.00-20.00',
    ]);
    expect(deeds({ ...step, spanFt: [3.2, 3.8] })).toEqual([]);
  });

  it('go on up to the arbor, and come off an arbor that has too many', () => {
    const rodM = ft(0.25);
    const start: Standing = { ...bare, stack: [{ kind: 'F', count: 4, tag: 'show' }] };
    const question = { physics: { rodM }, start, goal: { bricks: { F: 6 } } };
    // Four are 0.4 ft high already, and three too high still.
    expect(deeds(question)).toEqual(['remove 0 at 0: 3 3.00-3.00']);
    const change = { counts: [1] };
    expect(deeds({ ...question, change, order: '0' })).toEqual([
      'add 0 at 0: 2 3.00-3.00',
      'remove 0 at 0: 0 3.00-3.00',
    ]);
    expect(deeds({ ...question, change: { counts: [2] }, order: '00' })).toEqual([
      'remove 0 at 0: 1 3.00-3.00',
    ]);
  });

  it('are counted by gallery and kind where they are few', () => {
    const galleries = LAMPS.galleries.map((each) => ({ ...each, stock: { F: 1, H: 1 } }));
    const { world, place } = asked({
      set: { ...LAMPS, galleries },
      goal: { bricks: { F: 2, H: 2 } },
      spanFt: [3, 61],
    });
    const moves = deedsFrom(world, place);
    expect(moves.map((move) => move.place.taken)).toEqual([
      [1, 0, 0, 0],
      [0, 1, 0, 0],
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ]);
    const [first] = moves;
    if (first === undefined) throw new Error('no move');
    const after = deedsFrom(world, { ...first.place, span: place.span });
    // The upper gallery has no F left; and a plate that comes off again is no stock anywhere.
    expect(after.map(({ deed, place: { taken } }) => [deed, taken.join('')])).toEqual([
      [{ deed: 'brick', act: 'add', kind: 1, gallery: 0 }, '1100'],
      [{ deed: 'brick', act: 'remove', kind: 0, gallery: 0 }, '1000'],
      [{ deed: 'brick', act: 'add', kind: 0, gallery: 1 }, '1010'],
      [{ deed: 'brick', act: 'add', kind: 1, gallery: 1 }, '1001'],
      [{ deed: 'brick', act: 'remove', kind: 0, gallery: 1 }, '1000'],
    ]);
  });
});

describe('items', () => {
  const all = { lamp: 'on', other: 'on', twin: 'on' } as const;
  const none = { lamp: 'away', other: 'away', twin: 'away' } as const;
  const withAll = (phase: 'flying' | 'attachedSlack'): Standing => ({
    ...bare,
    items: { lamp: phase, other: phase, twin: phase },
  });

  it('come on where riggers reach, equal ones in one order', () => {
    expect(deeds({ goal: { items: all } })).toEqual([
      `attach lamp as ${HANGING} 300 3.00-3.00`,
      `attach other as ${HANGING} 030 3.00-3.00`,
    ]);
    expect(deeds({ goal: { items: all }, change: { phases: [HANGING, HANGING, AWAY] } })).toEqual([
      `attach twin as ${HANGING} 333 3.00-3.00`,
    ]);
    // Whichever is named first of all.
    const otherFirst = { items: { other: 'on', lamp: 'on', twin: 'on' } } as const;
    expect(deeds({ goal: otherFirst })).toEqual([
      `attach other as ${HANGING} 300 3.00-3.00`,
      `attach lamp as ${HANGING} 030 3.00-3.00`,
    ]);
  });

  it('go where riggers reach, equal ones in one order', () => {
    expect(deeds({ start: withAll('flying'), goal: { items: none } })).toEqual([
      'release lamp 033 3.00-3.00',
      'release other 303 3.00-3.00',
    ]);
    expect(deeds({ start: withAll('attachedSlack'), goal: { items: none } })).toEqual([
      'release lamp 011 3.00-3.00',
      'release other 101 3.00-3.00',
    ]);
  });

  it('stay as they are where that is wanted or nobody says', () => {
    expect(deeds({ start: withAll('flying'), goal: { items: all } })).toEqual([]);
    expect(deeds({ start: withAll('flying') })).toEqual([]);
    expect(deeds({ goal: { items: none } })).toEqual([]);
    // Slack with nothing to lie on: it is not taken up.
    const slack = { start: withAll('attachedSlack'), goal: { items: all } };
    expect(deeds({ ...slack, spanFt: [3, 4] })).toEqual([]);
  });

  it('come only after what goes, unless there is room for both', () => {
    const start: Standing = { ...bare, items: { lamp: 'flying', other: 'away' } };
    const goal = { items: { lamp: 'away', other: 'on' } } as const;
    expect(deeds({ start, goal })).toEqual(['release lamp 00 3.00-3.00']);
    expect(deeds({ start, goal, options: { sharesBatten: true } })).toEqual([
      'release lamp 00 3.00-3.00',
      `attach other as ${HANGING} 33 3.00-3.00`,
    ]);
  });
});

const FLAT = setWith({ flat: clearItem(40), lamp: clearItem(10) });

describe('a piece that can lie by itself', () => {
  const rests = { set: FLAT, options: { rests: ['flat'] } } as const;
  const ON = { ...rests, goal: { items: { flat: 'on' } } } as const;
  const OFF = { ...rests, goal: { items: { flat: 'away' } } } as const;
  // The rest is at the working height of 4 ft; 47.27 lb batten heavy there, within the lock.
  it('is tied on slack below its rest, or taut on it', () => {
    expect(deeds({ ...ON, spanFt: [3, 4] })).toEqual([
      `attach flat as ${SLACK} 1 3.00-4.00`,
      `attach flat as ${RESTING} 2 4.00-4.00`,
    ]);
    expect(deeds({ ...ON, spanFt: [3, 3.9] })).toEqual([`attach flat as ${SLACK} 1 3.00-3.90`]);
  });

  it('is taken up on its rest, and goes from it or slack, never hanging', () => {
    const slack = { change: { phases: [SLACK] }, spanFt: [3, 4] } as const;
    expect(deeds({ ...ON, ...slack })).toEqual(['takeUp flat 2 4.00-4.00']);
    expect(deeds({ ...OFF, ...slack })).toEqual([
      'takeUp flat 2 4.00-4.00',
      'release flat 0 3.00-4.00',
    ]);
    const resting = { change: { phases: [RESTING] }, spanFt: [4, 4] } as const;
    expect(deeds({ ...ON, ...resting })).toEqual([]);
    expect(deeds({ ...OFF, ...resting })).toEqual(['release flat 0 4.00-4.00']);
    // Hanging, with two bricks: 47.27 + 40 − 50 at 4 ft.
    const start = hung(FLAT, 4, [['F', 2]]);
    expect(deeds({ ...OFF, start, spanFt: [3, 5] }).filter((word) => !/remove/.test(word))).toEqual(
      ['rest flat 23 4.00-4.00'],
    );
  });

  it('is laid down on no set that is tied', () => {
    const restraint: Restraint = {
      kind: 'bullLine',
      resists: 'out',
      rating: newtons(100),
      from: metres(ft(3)),
      to: metres(ft(30)),
      owner: null,
      tag: null,
    };
    const start = { ...hung(FLAT, 4, [['F', 2]]), restraints: [restraint] };
    const words = deeds({ ...OFF, start });
    expect(words.filter((word) => /rest|untie/.test(word))).toEqual(['untie 33 4.00-4.00']);
  });

  it('is drawn tight where the lock is worth more than with riggers at the batten', () => {
    // 47.27 lb at 4 ft is past the planning limit of 25, and within the 50 of a closed run.
    const planning = { ...ON, options: { ...ON.options, lock: 'planning' } } as const;
    expect(deeds({ ...planning, change: { phases: [SLACK] }, spanFt: [4, 4] })).toEqual([
      'takeUp flat 2 4.00-4.00',
    ]);
    expect(deeds({ ...planning, spanFt: [4, 4] })).toEqual([]);
  });
});

describe('flights', () => {
  const ON = { set: FLAT, goal: { items: { flat: 'on' } }, options: { rests: ['flat'] } } as const;

  it('go over all of the stretch that is joined to where the set may be', () => {
    // 48.59 lb on the stop and −27.97 at the top: all of the travel.
    expect(flights({})).toEqual(['fly all  3.00-61.00']);
    // One brick: −50 lb where 1.32 · h is 73.59, past the stop at 58.75 ft; the stop holds 61 ft.
    expect(flights({ change: { counts: [1] }, goal: { bricks: { F: 1 } } })).toEqual([
      'fly all  3.00-58.75',
    ]);
    expect(
      flights({ change: { counts: [1] }, goal: { bricks: { F: 1 } }, spanFt: [61, 61] }),
    ).toEqual([]);
  });

  it('lift what rests, or let its picks go slack, and leave the others as they are', () => {
    const start: Standing = { ...bare, items: { flat: 'away', lamp: 'away' } };
    const resting = { change: { phases: [RESTING, AWAY] }, spanFt: [4, 4] } as const;
    // Lifted it is 47.27 + 40 lb, too much; with two bricks 37.27 at 4 ft and −38 at 61.
    expect(flights({ ...ON, start, ...resting })).toEqual(['fly part 10 3.00-4.00']);
    const goal = { ...ON.goal, bricks: { F: 2 } };
    const change = { phases: [RESTING, AWAY], counts: [2] } as const;
    expect(flights({ ...ON, goal, start, spanFt: [4, 4], change })).toEqual([
      'fly part 30 4.00-61.00',
      'fly part 10 3.00-4.00',
    ]);
  });

  it('do not begin on a rest from which nothing is joined', () => {
    // With one brick it is 62.27 lb lifted at 4 ft, and held only from 13.3 ft upwards.
    const change = { phases: [RESTING], counts: [1] } as const;
    const goal = { ...ON.goal, bricks: { F: 1 } };
    expect(flights({ ...ON, goal, spanFt: [4, 4], change })).toEqual(['fly part 1 3.00-4.00']);
    // A rest on the low stop leaves no way down.
    const low = { ...ON, goal, options: { rests: ['flat'], restAtM: ft(3) } } as const;
    expect(flights({ ...low, change: { ...change, counts: [2] }, spanFt: [3, 3] })).toEqual([
      'fly part 3 3.00-61.00',
    ]);
  });
});

describe('steel', () => {
  const height = metres(ft(24));
  const HANG = {
    goal: { service: 'deadHung', height, bricks: { F: 1 } },
    spanFt: [20, 30],
    // Rests are at the same height, so that nothing else speaks against them.
    options: { steelN: 5000, restAtM: ft(24) },
  } as const;
  // 45.87 lb at 24 ft with one brick, and nobody reaches the arbor.
  const lamp = {
    set: FLAT,
    start: hung(FLAT, 24, [['F', 1]]),
    physics: { galleries: [] },
  } as const;

  it('is hung on at its height, where all hangs, and once', () => {
    expect(deeds({ ...lamp, ...HANG })).toEqual(['hangOnSteel 33 24.00-24.00']);
    expect(deeds({ ...lamp, ...HANG, spanFt: [25, 30] })).toEqual([]);
    expect(deeds({ ...lamp, ...HANG, options: {} })).toEqual([]);
    expect(deeds({ ...lamp, ...HANG, change: { onSteel: true } })).toEqual([]);
    expect(deeds({ ...lamp, ...HANG, goal: { height, bricks: { F: 1 } } })).toEqual([]);
    for (const phases of [
      [SLACK, HANGING],
      [HANGING, RESTING],
      [RESTING, RESTING],
    ] as const) {
      expect(deeds({ ...lamp, ...HANG, change: { phases } })).toEqual([]);
    }
  });

  const onSteel: Standing = {
    ...bare,
    height,
    items: { flat: 'heldElsewhere', lamp: 'away' },
    service: 'deadHung',
  };
  const at = (lowN: number) => () => ({ lowN, highN: lowN, doubtN: 10 });

  it('comes off only where it is tight for every mass in doubt, and no item is touched', () => {
    // One brick and the piece: 35.87 lb at 24 ft, within the lock.
    const start: Standing = { ...onSteel, stack: [{ kind: 'F', count: 1, tag: 'show' }] };
    const goal = { items: { flat: 'away', lamp: 'on' }, bricks: { F: 1 } } as const;
    const options = { steelN: 5000, doubtShare: 0.5, work: [{ fromM: 0, toM: ft(30) }] };
    const off = (lowN: number) =>
      deeds({ set: FLAT, start, goal, options, physics: { at: at(lowN), galleries: [] } });
    expect(off(5)).toEqual(['takeOffSteel 30 24.00-24.00']);
    expect(off(4.9)).toEqual([]);
  });

  it('bears what hangs and nothing that is away', () => {
    const heard: Standing['items'][] = [];
    const physics = {
      at: ({ items }: Standing) => {
        heard.push(items);
        return { lowN: 1, highN: 1, doubtN: 0 };
      },
    };
    deeds({ set: FLAT, start: onSteel, options: { steelN: 5000 }, physics });
    expect(heard).toEqual([{ flat: 'flying' }]);
  });

  it('stays where the goal is to hang on it, and nothing flies from it', () => {
    const start: Standing = { ...onSteel, stack: [{ kind: 'F', count: 1, tag: 'show' }] };
    const question = { ...HANG, set: FLAT, start, physics: { galleries: [] } };
    expect(deeds(question)).toEqual([]);
    expect(flights(question)).toEqual([]);
  });
});
