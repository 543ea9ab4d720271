import { describe, expect, it } from 'vitest';
import type { House } from '#house';
import type { Show, Takeoff } from '#show';
import { blankShow } from './blank.ts';
import { house as houseSpecimen, show as specimen } from './provocations/specimens.ts';
import { readHouseValue } from './read-house.ts';
import { readShow, readShowValue } from './read-show.ts';

const house = ((): House => {
  const answer = readHouseValue(houseSpecimen);
  if (!answer.ok) throw new Error('the specimen of a house is sound');
  return answer.value.house;
})();

const read = (raw: unknown, within?: House): Show => {
  const answer = readShowValue(raw, within);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error.slice(0, 3)));
  return answer.value.show;
};

const codesOf = (raw: unknown, within?: House): readonly string[] => {
  const answer = readShowValue(raw, within);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

const takeoffOf = (takeoff: object, kind = 'clear'): Takeoff | undefined => {
  const item = { id: 'a', name: 'A', kind, takeoff };
  const hangs = [{ set: '1', name: 'A', family: 'other', items: [item] }];
  return read({ ...specimen, hangs, cues: [] }).hangs[0]?.items[0]?.takeoff;
};

describe('a show', () => {
  it('keeps the order of the file without its house, and takes rail order with it', () => {
    const hangs = specimen.hangs.toReversed();
    expect(read({ ...specimen, hangs }).hangs.map(({ set }) => set)).toEqual(['3', '2', '1']);
    expect(read({ ...specimen, hangs }, house).hangs.map(({ set }) => set)).toEqual([
      '1',
      '2',
      '3',
    ]);
  });

  it('tells faults by their place in the file, whatever the rail order', () => {
    const hangs = specimen.hangs.toReversed();
    const cues = [{ number: '2', set: '1', from: '1 ft', to: '24 ft' }];
    expect(codesOf({ ...specimen, hangs, cues }, house)).toEqual(['DOC-109 cues[0].from']);
  });

  it('asks nothing of a house that it was not given', () => {
    const keptEmpty = { 99: 'depth of 98' };
    expect(codesOf({ ...specimen, keptEmpty })).toEqual([]);
    expect(codesOf({ ...specimen, keptEmpty }, house)).toEqual(['DOC-101 keptEmpty.99']);
  });

  it('for another house is told that, and not a fault for each set', () => {
    const hangs = specimen.hangs.map((hang) => ({ ...hang, set: `x${hang.set}`, coupledWith: [] }));
    expect(codesOf({ ...specimen, house: 'else', hangs }, house)).toEqual(['DOC-100 house']);
  });

  it('that is blank reads', () => {
    const blank = blankShow({ id: 'a', name: 'A', house: 'marl' });
    expect(read(blank, house)).toMatchObject({ hangs: [], cues: [], keptEmpty: {}, demo: false });
  });

  it('may have heights that are not those of the batten beyond the stops', () => {
    const [first, ...others] = specimen.hangs;
    const trims = [{ name: 'hem', height: '0 ft', reference: 'lowestPoint' }];
    expect(codesOf({ ...specimen, hangs: [{ ...first, trims }, ...others] }, house)).toEqual([]);
  });

  it('comes with the text that was typed', () => {
    const answer = readShow(JSON.stringify(specimen), house);
    expect(answer.ok && answer.value.raw).toEqual(specimen);
  });
});

describe('a hang', () => {
  const [curtain, electric, tower] = read(specimen, house).hangs;

  it('has no bricks fixed where none are written', () => {
    expect(curtain?.bricks?.counts).toEqual({ F: 6, H: 1 });
    expect(electric?.bricks).toBeNull();
  });

  it('pulls at points or between two', () => {
    expect(curtain?.items[0]?.placement).toEqual({ at: 'spread', from: -6.096, to: 6.096 });
    expect(tower?.items[0]?.placement).toMatchObject({ at: 'points' });
    expect(electric?.items[0]?.placement).toBeNull();
  });

  it('has nothing that carries a person unless that is written', () => {
    const flags = [curtain, electric, tower].flatMap((hang) =>
      hang?.items.map(({ carriesPerson }) => carriesPerson),
    );
    expect(new Set(flags)).toEqual(new Set([false]));
    const [first] = specimen.hangs;
    const items = first?.items.map((item) => ({ ...item, carriesPerson: true }));
    const flown = read({ ...specimen, hangs: [{ ...first, items, coupledWith: [] }], cues: [] });
    expect(flown.hangs[0]?.items[0]?.carriesPerson).toBe(true);
  });
});

describe('a take-off', () => {
  it('by mass has no hem unless one is written, and an unknown mass where none is', () => {
    expect(takeoffOf({ by: 'mass' })).toEqual({ by: 'mass', mass: { known: false }, hem: null });
  });

  it('of a cloth has an unknown hem until somebody says what is in it', () => {
    expect(takeoffOf({ by: 'mass' }, 'cloth')).toMatchObject({ hem: { known: false } });
    expect(takeoffOf({ by: 'cloth' }, 'cloth')).toMatchObject({
      bottomMassPerLength: { known: false },
    });
    const none = { value: '0 lb/ft', basis: 'measured' };
    expect(takeoffOf({ by: 'cloth', bottomMassPerLength: none }, 'cloth')).toMatchObject({
      bottomMassPerLength: { known: true, value: 0 },
    });
  });

  it('by hem in a cloth may be plainly unknown, which is not none', () => {
    const hem = { unknown: 'chain or pipe, not seen' };
    expect(takeoffOf({ by: 'mass', hem }, 'cloth')).toMatchObject({
      hem: { known: false, why: 'chain or pipe, not seen' },
    });
  });

  it('by cloth reads shares as parts of one and weights per area in SI', () => {
    const cloth = takeoffOf({ by: 'cloth', areaMass: '16 oz/yd²', fullness: '50 %' }, 'cloth');
    // 16 oz is a pound, over a square yard of 0.9144 m: 0.5425 kg/m².
    expect(cloth).toMatchObject({ fullness: { value: 0.5 }, paint: { known: false }, ties: null });
    expect(cloth?.by === 'cloth' && cloth.areaMass.known && cloth.areaMass.value).toBeCloseTo(
      0.45359237 / 0.9144 ** 2,
      12,
    );
  });

  it('by pipe and by hardware reads', () => {
    expect(takeoffOf({ by: 'pipe', length: '20 ft' })).toMatchObject({ fittings: null });
    const lines = [{ name: 'shackle', count: 4, each: '1 lb' }];
    expect(takeoffOf({ by: 'hardware', lines })).toMatchObject({
      lines: [{ name: 'shackle', count: 4, each: { value: 0.45359237 } }],
    });
  });

  it('by frame has empty lists where nothing is written', () => {
    expect(takeoffOf({ by: 'frame' })).toMatchObject({ members: [], sheets: [], hardware: [] });
  });
});
