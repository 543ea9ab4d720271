/** From the record into a call and back: nothing is made up on the way, and nothing lost. */
import { describe, expect, it } from 'vitest';
import { standingOf } from '#assessment';
import { type HouseState, type SetState, unknownSetState } from '#state';
import { openExample } from '../examples/open-example.ts';
import { openingOf, stateAfter, type WhoCloses } from './index.ts';
import {
  ask,
  CALL,
  count,
  crewed,
  feet,
  find,
  OFF,
  openStage,
  report,
  type Speaks,
  START_MS,
  second,
  unloaded,
  who,
} from './stage-for-tests.ts';

const demo = openExample('kestlemere');
const CLOSER: WhoCloses = {
  by: 'head flyman',
  atMs: START_MS + 3_600_000,
  nameOf: (by) => by.replace('pers_', ''),
};

const setIn = ({ sets }: HouseState, id: string): SetState => sets[id] ?? unknownSetState;

const opening = (state: HouseState, nowMs = START_MS) =>
  openingOf({ house: demo.house, state }, nowMs);

describe('how a call begins', () => {
  it('is with every set of the house as the record has it, and what it leaves out by name', () => {
    const { sets } = opening(demo.state);
    expect(Object.keys(sets)).toHaveLength(demo.house.lineSets.length);
    expect(sets['9']?.standing?.height).toBeCloseTo(feet(28.25), 9);
    expect(sets['M1']).toMatchObject({ standing: null, tag: null });
    expect(sets['M1']?.doubt).toContain('what is on the arbor');
    expect(opening({ ...demo.state, sets: {} }).sets['9']?.doubt).toContain('height of the batten');
  });

  it('is with the loose bricks as they were counted, and by whom', () => {
    expect(opening(demo.state).galleries['upper']).toEqual({
      stock: { F: 10, H: 12, O: 21 },
      countedMs: Date.UTC(2026, 10, 25, 14, 5),
      by: 'upper loader lead',
    });
    expect(opening({ ...demo.state, galleries: {} }).galleries['mid']).toEqual({
      ...{ stock: {}, countedMs: null, by: null },
    });
  });

  it('calls carried over what is older than the house lets stand, and keeps who said it', () => {
    const house = { ...demo.house, demo: false };
    const at = (nowMs: number) => openingOf({ house, state: demo.state }, nowMs).sets['11'];
    const counted = Date.UTC(2026, 10, 25, 13, 15);
    const FOUR_HOURS_MS = 4 * 3_600_000;
    expect(at(counted + FOUR_HOURS_MS)?.knowledge.basis).toBe('counted');
    expect(at(counted + FOUR_HOURS_MS + 1000)?.knowledge).toMatchObject({
      ...{ basis: 'carriedOver', by: 'upper loader lead', at: '2026-11-25T13:15:00Z' },
    });
    const rules = { ...house.rules, staleAfterSeconds: { known: false } as const };
    const nobody = openingOf({ house: { ...house, rules }, state: demo.state }, counted);
    expect(nobody.sets['11']?.knowledge.basis).toBe('carriedOver');
  });
});

describe('what is kept of a call', () => {
  it('opens again with the same standings', () => {
    const stage = unloaded(demo);
    const kept = stateAfter(demo.state, stage.now(), CLOSER);
    const again = opening(kept).sets;
    for (const [id, { standing }] of Object.entries(stage.now().sets)) {
      expect(again[id]?.standing, id).toEqual(
        standing === null ? null : { ...standing, closed: [] },
      );
    }
    expect(kept.galleries['upper']).toEqual({
      ...demo.state.galleries['upper'],
      stock: { F: 11, H: 12, O: 21 },
      countedAt: '2026-11-25T14:05:00.000Z',
    });
  });

  it('says who told it last, and when; and who closed the call', () => {
    const stage = unloaded(demo);
    const kept = stateAfter(demo.state, stage.now(), CLOSER);
    expect(setIn(kept, '4').knowledge).toMatchObject({
      ...{ basis: 'counted', by: 'upper', second: 'head flyman' },
    });
    expect(kept).toMatchObject({ by: 'head flyman', at: '2026-11-28T17:00:00.000Z' });
    expect(kept.remarks).toEqual(demo.state.remarks);
  });

  it('writes as unknown what is in doubt, and what was under way', () => {
    const stage = crewed(demo);
    stage.send('set doubted', stage.on('5'), { call: CALL, why: 'touched' }, who('deck'));
    const tag = { number: '7', reason: 'rope' };
    const placed = { call: CALL, tag, service: 'paused' as const };
    stage.send('tag placed', stage.on('5'), placed, who('deck'));
    const kept = stateAfter(demo.state, stage.now(), CLOSER);
    expect(setIn(kept, '5')).toEqual({ ...unknownSetState, tag });
    const busy = unloaded(demo);
    ask(busy, '4', 'gallery:upper', { ...OFF, act: 'add' });
    count(busy, '4', 1);
    const open = stateAfter(demo.state, busy.now(), CLOSER);
    expect(standingOf(setIn(open, '4')).known).toBe(false);
  });

  it('keeps a pull test by name, and an older one where none was made', () => {
    const stage = crewed(demo);
    const pull = { call: CALL, post: 'rail', out: 100, in: 60, height: feet(60) };
    stage.send('pull tested', stage.on('3'), pull, who('rail'));
    const kept = stateAfter(demo.state, stage.now(), CLOSER);
    expect(setIn(kept, '3').pullTest).toMatchObject({ out: 100, in: 60, by: 'rail' });
    expect(setIn(kept, '9').pullTest).toEqual(setIn(demo.state, '9').pullTest);
  });

  it('keeps what was counted at a gallery, with who counted it', () => {
    const stage = openStage(demo);
    stage.take('gallery:mid');
    const counted = {
      call: CALL,
      post: 'gallery:mid',
      gallery: 'mid',
      stock: { F: 3 },
      second: null,
    };
    stage.send('gallery counted', 'house', counted, who('gallery:mid'));
    const { galleries } = stateAfter(demo.state, stage.now(), CLOSER);
    expect(galleries['mid']).toMatchObject({ stock: { F: 3 }, countedBy: 'mid' });
    expect(galleries).toMatchObject({ mid: { reserved: [{ kind: 'F', count: 19 }] } });
  });

  it('writes no set as locked out without its tag', () => {
    const stage = crewed(demo);
    find(stage, '9', { service: 'lockedOut' });
    expect(setIn(stateAfter(demo.state, stage.now(), CLOSER), '9').service).toBeNull();
  });

  it('has a name for a pull at a machine without sign-in', () => {
    const stage = openStage(demo);
    const machine: Speaks = { by: null, device: 'dev_m', tasks: [], role: 'this machine' };
    stage.take('rail', machine);
    const pull = { call: CALL, post: 'rail', out: 100, in: 60, height: feet(60) };
    stage.send('pull tested', stage.on('3'), pull, machine);
    expect(setIn(stateAfter(demo.state, stage.now(), CLOSER), '3').pullTest?.by).toBe(
      'this machine',
    );
  });

  it('leaves no set standing that was found otherwise', () => {
    const stage = crewed(demo);
    find(stage, '9', { height: feet(40) });
    ask(stage, '9', 'marshal:run', { act: 'close', zone: { zone: 'run' } });
    if (stage.set('9').asked !== null) second(stage, '9');
    report(stage, '9');
    const kept = stateAfter(demo.state, stage.now(), CLOSER);
    expect(setIn(kept, '9').height).toEqual({ low: feet(40), high: feet(40) });
  });
});
