/**
 * A crew that asks, reports and walks about as it likes: whatever it does, no leave is given by
 * which an invariant of the-job.md 4.4 would break. Each is looked for with code of its own.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unreachable } from '#outcome';
import { postOf, verifyOrder } from '#rules';
import type { HouseNow, PostId, Step } from '#state';
import { openExample } from '../examples/open-example.ts';
import { platesOf } from './index.ts';
import {
  allClear,
  ask,
  CALL,
  CREW,
  crewed,
  feet,
  find,
  report,
  type Stage,
  who,
} from './stage-for-tests.ts';

const demo = openExample('kestlemere');
const SEED = 44_015;

const SETS = ['4', '6', '9'] as const;
const PIPE = [{ kind: 'O', count: 3, tag: 'pipe' }] as const;

type Act =
  | { readonly do: 'ask'; readonly set: string; readonly step: Step }
  | { readonly do: 'second' | 'report' | 'find' | 'doubt' | 'wet'; readonly set: string }
  | { readonly do: 'clear'; readonly post: PostId; readonly isClear: boolean }
  | { readonly do: 'leave' | 'join'; readonly post: PostId }
  | { readonly do: 'stop' | 'allClear' };

const set = fc.constantFrom(...SETS);
const post = fc.constantFrom(...Object.keys(CREW));
const ZONES = [
  { zone: 'run' },
  { zone: 'drop', gallery: 'upper' },
  { zone: 'drop', gallery: 'mid' },
] as const;

const bricks = fc
  .record({
    act: fc.constantFrom('add' as const, 'remove' as const),
    kind: fc.constant('F'),
    count: fc.constantFrom(1, 1, 2, 4),
    gallery: fc.constantFrom('upper', 'upper', 'mid'),
  })
  .map((each): Step => each);

const zones = fc
  .record({
    act: fc.constantFrom('close' as const, 'reopen' as const),
    zone: fc.constantFrom(...ZONES),
  })
  .map((each): Step => each);

const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 5, arbitrary: bricks },
  { weight: 1, arbitrary: zones },
  {
    weight: 3,
    arbitrary: fc.constantFrom(3, 8, 20, 30).map((n): Step => ({ act: 'fly', to: feet(n) })),
  },
  { weight: 1, arbitrary: fc.constant<Step>({ act: 'release', item: 'cloth' }) },
);

const on = <D extends 'second' | 'report' | 'find' | 'doubt' | 'wet'>(weight: number, what: D) => ({
  weight,
  arbitrary: set.map((id): Act => ({ do: what, set: id })),
});

const act: fc.Arbitrary<Act> = fc.oneof(
  { weight: 16, arbitrary: fc.record({ set, step }).map((each): Act => ({ do: 'ask', ...each })) },
  on(6, 'second'),
  on(5, 'report'),
  on(2, 'find'),
  on(1, 'doubt'),
  on(1, 'wet'),
  { weight: 4, arbitrary: fc.constant<Act>({ do: 'allClear' }) },
  {
    weight: 2,
    arbitrary: fc
      .record({ post, isClear: fc.boolean() })
      .map((each): Act => ({ do: 'clear', ...each })),
  },
  { weight: 1, arbitrary: post.map((each): Act => ({ do: 'leave', post: each })) },
  { weight: 3, arbitrary: post.map((each): Act => ({ do: 'join', post: each })) },
  { weight: 1, arbitrary: fc.constant<Act>({ do: 'stop' }) },
);

const found = (stage: Stage, id: string): void => {
  const stack = [...PIPE, { kind: 'F', count: 2, tag: 'show' }] as const;
  find(
    stage,
    id,
    id === '9' ? { closed: ZONES } : { height: feet(3), stack, items: {}, closed: ZONES },
  );
};

const stopAndLift = ({ send }: Stage): void => {
  const payload = { call: CALL, post: 'deck', set: null, words: '' };
  const { seq } = send('stop called', 'house', payload, who('deck'));
  const substitute = { name: 'Ida', why: 'the deck lead is away' };
  send(
    'stop lifted',
    'house',
    { call: CALL, post: 'headFly', stop: seq, substitute },
    who('headFly'),
  );
};

const secondTo = (stage: Stage, id: string): void => {
  const { asked, standing } = stage.set(id);
  if (asked === null) return;
  const plates = platesOf(standing?.stack ?? []);
  const payload = { call: CALL, post: asked.secondOf, asked: asked.seq, plates };
  stage.send('leave seconded', stage.on(id), payload, who(asked.secondOf));
};

const take = (stage: Stage, each: Act): void => {
  switch (each.do) {
    case 'ask':
      ask(stage, each.set, postOf(each.step), each.step);
      return;
    case 'second':
      secondTo(stage, each.set);
      return;
    case 'report':
      if (stage.set(each.set).leave !== null) report(stage, each.set);
      return;
    case 'find':
      found(stage, each.set);
      return;
    case 'doubt':
      stage.send('set doubted', stage.on(each.set), { call: CALL, why: 'touched' }, who('deck'));
      return;
    case 'wet':
      stage.send('lock doubted', stage.on(each.set), { call: CALL, why: 'wet' }, who('deck'));
      return;
    case 'clear':
      stage.send(
        'post said',
        'house',
        { call: CALL, post: each.post, isClear: each.isClear },
        who(each.post),
      );
      return;
    case 'leave':
      stage.send('post left', 'house', { call: CALL, post: each.post }, who(each.post));
      return;
    case 'join':
      stage.take(each.post);
      return;
    case 'allClear':
      allClear(stage);
      return;
    case 'stop':
      stopAndLift(stage);
      return;
    default:
      unreachable(each);
  }
};

const leavesOf = ({ sets }: HouseNow) =>
  Object.entries(sets).flatMap(([id, { leave }]) => (leave === null ? [] : [{ id, leave }]));

const isManned = ({ posts }: HouseNow, at: PostId): boolean => posts[at] !== undefined;

/** What would be wrong with leave that has just been given, by invariant. */
const wrongWith = (stage: Stage, id: string): readonly string[] => {
  const now = stage.now();
  const { leave, lockDoubt } = stage.set(id);
  const physics = stage.desk.physicsOf(now, id);
  if (leave === null || physics === null) return ['no leave, or nothing known'];
  const { step: given, before } = leave;
  const lockLimitN = lockDoubt === null ? physics.lockLimitN : 0;
  const verdict = verifyOrder({ ...physics, lockLimitN }, before, [given], {
    doubt: 'worst',
    faults: 'check',
  });
  const breaches = [verdict.broken, ...verdict.alsoBroken].filter((each) => each?.step === 0);
  const isBrick = given.act === 'add' || given.act === 'remove';
  const isMove = given.act === 'fly';
  const others = leavesOf(now).filter((other) => other.id !== id);
  const isOther = (acts: readonly string[]) =>
    others.some((other) => acts.includes(other.leave.step.act));
  const isKept = (zone: string, at?: string) =>
    now.zones.some(
      (each) =>
        each.set === id &&
        each.zone.zone === zone &&
        (each.zone.zone === 'run' || each.zone.gallery === at) &&
        now.posts[each.post] !== undefined,
    );
  const notOut = Object.entries(now.posts).filter(
    ([at, { isClear }]) => !isClear && ['rail', 'deck', 'watcher', 'bullLine'].includes(at),
  );
  return [
    ...breaches.map((each) => `V1 ${each?.rule}`),
    ...(isBrick && !isKept('drop', given.gallery) ? ['V5 zone'] : []),
    ...(isBrick && notOut.length > 0 ? ['V5 people'] : []),
    ...(isBrick && isOther(['add', 'remove']) ? ['V6'] : []),
    ...(isBrick && isOther(['fly', 'release']) ? ['V5 work under bricks'] : []),
    ...(isMove && !isKept('run') ? ['V8 zone'] : []),
    ...(isMove && !(isManned(now, 'rail') && isManned(now, 'watcher')) ? ['V8 people'] : []),
    ...(isMove && isOther(['fly', 'add', 'remove']) ? ['V7 V8'] : []),
    ...(now.stops.length > 0 ? ['stop'] : []),
    ...(stage.set(id).standing === null && given.act !== 'close' ? ['V12'] : []),
  ];
};

describe('leave', () => {
  it(`is given into no state that breaks an invariant (seed ${SEED})`, () => {
    let given = 0;
    const acts = new Set<string>();
    fc.assert(
      fc.property(fc.array(act, { minLength: 80, maxLength: 120 }), (all) => {
        const stage = crewed(demo);
        for (const id of SETS) found(stage, id);
        let before = new Map(leavesOf(stage.now()).map(({ id, leave }) => [id, leave.seq]));
        for (const each of all) {
          take(stage, each);
          for (const { id, leave } of leavesOf(stage.now())) {
            if (before.get(id) === leave.seq) continue;
            given += 1;
            acts.add(leave.step.act);
            expect(wrongWith(stage, id), JSON.stringify([id, leave.step])).toEqual([]);
          }
          before = new Map(leavesOf(stage.now()).map(({ id, leave }) => [id, leave.seq]));
        }
      }),
      { seed: SEED, numRuns: 16 },
    );
    // A desk that gives no leave at all would pass as well.
    expect(given).toBeGreaterThan(30);
    expect([...acts].toSorted((one, other) => (one < other ? -1 : 1))).toEqual(
      expect.arrayContaining(['add', 'close', 'fly', 'remove']),
    );
  });
});
