import { describe, expect, it } from 'vitest';
import { blankHouse, blankState } from './blank.ts';
import { house, show } from './provocations/specimens.ts';
import { readHouseValue } from './read-house.ts';
import { readShowValue } from './read-show.ts';
import { readStateValue } from './read-state.ts';
import { askedOf, unknownsOf } from './unknowns.ts';

const readHouse = (raw: unknown) => {
  const answer = readHouseValue(raw);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.house;
};

const readShow = (raw: unknown) => {
  const answer = readShowValue(raw);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.show;
};

const ofHouse = (raw: unknown) => unknownsOf(readHouse(raw));
const pathsOf = (raw: unknown): readonly string[] => ofHouse(raw).map(({ path }) => path);

describe('what is unknown', () => {
  it('of a blank house is all that a house knows', () => {
    const asked = { id: 'a', name: 'A', units: 'metric', words: 'UK' } as const;
    const unknown = pathsOf(blankHouse({ ...asked, operatingSide: 'stageLeft' }));
    expect(unknown).toContain('rules.lockLimit');
    expect(unknown).toContain('rules.staleAfter');
    expect(unknown).toContain('stage.gridHeight');
    expect(unknown).not.toContain('stage.operatingSide');
  });

  it('of a type is told once, with its sets', () => {
    const { wireEndAbove, ...rest } = house.setTypes.single;
    const setTypes = { ...house.setTypes, single: rest };
    const told = ofHouse({ ...house, setTypes }).filter(({ path }) => path.includes('wireEnd'));
    expect(told.map(({ path, what, blocks }) => ({ path, what, blocks }))).toEqual([
      {
        path: 'setTypes.single.wireEndAbove',
        what: 'end of the wire above the batten of line sets 1, 2',
        blocks: 'the balance over the travel, and the bricks',
      },
      {
        path: 'lineSets.3.wireEndAbove',
        what: 'end of the wire above the batten of line set 3',
        blocks: 'the balance over the travel, and the bricks',
      },
    ]);
  });

  it('of a test that belongs to one set is never told of its type', () => {
    const told = ofHouse(house).filter(({ path }) => path.includes('lock.grip'));
    expect(told.map(({ path, what }) => [path, what])).toEqual([
      ['lineSets.2.lock.grip', 'grip test of the rope lock of line set 2'],
      ['lineSets.3.lock.grip', 'grip test of the rope lock of line set 3'],
    ]);
    const lineSets = house.lineSets.map(({ id, type, y }) => ({ id, type, y }));
    const untested = pathsOf({ ...house, lineSets }).filter((path) => path.includes('lock.grip'));
    expect(untested).toEqual(['lineSets.1.lock.grip', 'lineSets.3.lock.grip']);
  });

  it('of one set names it, and says why', () => {
    const [first, ...others] = house.lineSets;
    const lineSets = [{ ...first, liveLimit: { unknown: 'plate is painted over' } }, ...others];
    const told = ofHouse({ ...house, lineSets }).filter(({ path }) => path.includes('liveLimit'));
    expect(told.map(({ path }) => path)).toEqual(['lineSets.1.liveLimit', 'lineSets.M1.liveLimit']);
    expect(told[0]?.what).toBe('live limit of the batten of line set 1: plate is painted over');
  });

  it('of a joint or a mule block is told at the list, and of a loft well by its id', () => {
    const { batten, lift, ...rest } = house.setTypes.single;
    const single = {
      ...rest,
      batten: { ...batten, splices: [{ x: '0 ft', strength: '50 %' }, { x: '9 ft' }] },
      lift: { ...lift, muleBlocks: [{ line: 1, x: '0 ft', z: '60 ft', rated: '1 kN' }] },
    };
    const told = ofHouse({ ...house, setTypes: { ...house.setTypes, single } });
    const whats = told.map(({ what }) => what);
    expect(whats).toContain('strength of a joint of line sets 1, 2');
    expect(whats.filter((what) => what.startsWith('rating of a mule block'))).toEqual([]);
    expect(whats).toContain('joints of the tube of line set M1');
    expect(told.find(({ path }) => path === 'loftWells.W2.limit')?.what).toBe(
      'limit of loft well W2',
    );
  });

  it('of a motor set asks for no arbor, and of a dead-hung one for no stops', () => {
    const paths = pathsOf(house).filter((path) => path.startsWith('lineSets.M1'));
    expect(paths.filter((path) => /arbor|handLine|wireEnd|headBlock/.test(path))).toEqual([]);
    expect(paths).toContain('lineSets.M1.lowStop.height');
    const electric = { ...house.setTypes.electric, suspension: 'deadHung' };
    const fixed = pathsOf({ ...house, setTypes: { ...house.setTypes, electric } });
    expect(fixed).not.toContain('lineSets.M1.lowStop.height');
  });

  it('of a show is what its balance waits for', () => {
    const [first, second, third] = show.hangs;
    const [cloth] = first?.items ?? [];
    const { drop, ...noDrop } = cloth ?? {};
    const hangs = [
      { ...first, items: [{ ...noDrop, takeoff: { by: 'mass', mass: { unknown: 'lost' } } }] },
      second,
      third,
    ];
    const told = unknownsOf(readHouse(house), readShow({ ...show, hangs }));
    const ofCloth = told.filter(({ path }) => path.startsWith('hangs.1.items.cloth'));
    expect(ofCloth.map(({ path, what }) => `${path} | ${what}`).toSorted()).toEqual([
      'hangs.1.items.cloth.drop | drop of Cloth (line set 1)',
      expect.stringContaining('hangs.1.items.cloth.takeoff.hem'),
      'hangs.1.items.cloth.takeoff.mass | mass of Cloth (line set 1): lost',
    ]);
  });

  it('asks for a centre of a tipping piece only, and for heights of parts only there', () => {
    const told = unknownsOf(readHouse(house), readShow(show)).map(({ path }) => path);
    expect(told.filter((path) => path.endsWith('centre') || path.endsWith('.z'))).toEqual([]);
    const hangs = show.hangs.map((hang) => ({
      ...hang,
      items: hang.items.map((item) => ({ ...item, centre: { unknown: 'odd shape' } })),
    }));
    const asked = unknownsOf(readHouse(house), readShow({ ...show, hangs }));
    expect(asked.map(({ path }) => path).filter((path) => path.endsWith('centre'))).toEqual([
      'hangs.3.items.tower.centre',
    ]);
  });
});

describe('what is asked', () => {
  it('is what is known with what is unknown, and how many sets wait for it', () => {
    const asked = askedOf(readHouse(house), readShow(show));
    const unknown = asked.filter(({ isUnknown }) => isUnknown).map(({ path }) => path);
    expect(unknown).toEqual(unknownsOf(readHouse(house), readShow(show)).map(({ path }) => path));
    expect(asked.length).toBeGreaterThan(unknown.length);
    const grip = asked.filter(({ path }) => path.includes('lock.grip'));
    expect(grip.map(({ path, isUnknown, sets }) => [path, isUnknown, sets])).toEqual([
      ['lineSets.2.lock.grip', true, 1],
      ['lineSets.3.lock.grip', true, 1],
    ]);
  });

  it('of a rule is asked for every set, and of a brick for those with an arbor', () => {
    const read = readHouse(house);
    const setsOf = (path: string) => askedOf(read).find((each) => each.path === path)?.sets;
    const withArbor = read.lineSets.filter(({ suspension }) => suspension.endsWith('Purchase'));
    expect(setsOf('rules.lockLimit')).toBe(read.lineSets.length);
    expect(setsOf(`brickKinds.${read.brickKinds[0]?.id}.mass`)).toBe(withArbor.length);
    expect(withArbor.length).toBeLessThan(read.lineSets.length);
  });
});

describe('a record to begin with', () => {
  it('reads, and knows nothing of any set', () => {
    const raw = blankState({
      house: 'a',
      demo: false,
      at: '2026-11-25T14:31:00Z',
      by: 'head flyperson',
    });
    const answer = readStateValue(raw);
    expect(answer.ok && answer.value.state).toMatchObject({
      houseId: 'a',
      sets: {},
      galleries: {},
    });
  });
});
