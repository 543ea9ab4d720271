import { describe, expect, it } from 'vitest';
import { blankHouse, readHouseValue } from '#documents';
import type { JsonObject } from '../keeping/json.ts';
import {
  givenAbove,
  houseRefusals,
  inheritedAt,
  referencesTo,
  withHouseValue,
  withoutEntry,
  withRenamed,
} from './house-edits.ts';

const blank = blankHouse({
  id: 'hall',
  name: 'Lower Yard Hall',
  units: 'metric',
  words: 'UK',
  operatingSide: 'stageLeft',
});

const house: JsonObject = {
  ...blank,
  given: { basis: 'measured', source: 'tape' },
  brickKinds: [
    { id: 'F', name: 'full', serves: ['show'], looksLike: ['O'] },
    { id: 'O', name: 'old', serves: ['pipeWeight'] },
  ],
  setTypes: {
    BASE: { suspension: 'singlePurchase', lowStop: { height: '1 m' } },
    SP5: {
      extends: 'BASE',
      lift: { cable: { diameter: '6 mm', breakingStrength: '25 kN' } },
      arbor: { pipeWeight: [{ kind: 'O', count: 4 }] },
    },
  },
  lineSets: [
    { id: '1', type: 'SP5', y: '0.5 m' },
    { id: '2', type: 'SP5', y: '0.8 m', lock: { remark: 'new jaws' } },
  ],
  bays: [{ id: 'A', sets: ['1', '2'] }],
};

const show: JsonObject = {
  format: 'counterpoise-show',
  version: 1,
  id: 'first',
  name: 'First show',
  house: 'hall',
  hangs: [{ set: '2', name: 'Drape', family: 'soft', items: [], trims: [] }],
  cues: [],
};

const state: JsonObject = {
  format: 'counterpoise-state',
  version: 1,
  house: 'hall',
  at: '2026-11-25T14:31:00Z',
  by: 'flyman',
  sets: { '1': { stack: [{ kind: 'O', count: 4, tag: 'pipe' }] } },
};

const referring = { shows: [show], state };

const read = (document: JsonObject) => {
  const answer = readHouseValue(document);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.house;
};

describe('a value of a house', () => {
  it('is from the kind of its set, or from what that is a variety of', () => {
    expect(inheritedAt(house, ['lineSets', 0, 'lowStop', 'height'])).toEqual({
      value: '1 m',
      from: 'BASE',
      given: { basis: 'measured', source: 'tape' },
    });
    expect(inheritedAt(house, ['setTypes', 'SP5', 'suspension'])?.from).toBe('BASE');
    expect(inheritedAt(house, ['lineSets', 0, 'highStop', 'height'])).toBe(null);
    expect(inheritedAt(house, ['rules', 'lockLimit'])).toBe(null);
  });

  it('begins a set’s own cable as a copy of its kind’s, with who stands behind it', () => {
    const next = withHouseValue(house, ['lineSets', 0, 'lift', 'cable', 'diameter'], '8 mm');
    expect(next['lineSets']).toMatchObject([
      {
        lift: {
          cable: { diameter: '8 mm', breakingStrength: '25 kN', given: { basis: 'measured' } },
        },
      },
      {},
    ]);
    const [first] = read(next).lineSets;
    expect(first?.lift.cable.breakingStrength).toMatchObject({ known: true, value: 25_000 });
    expect(first?.lift.cable.diameter).toMatchObject({ known: true, value: 0.008 });
  });

  it('leaves no empty object behind, and no kind of set without its name', () => {
    const bare = withHouseValue(house, ['lineSets', 1, 'lock', 'remark'], undefined);
    expect(bare['lineSets']).toEqual([
      { id: '1', type: 'SP5', y: '0.5 m' },
      { id: '2', type: 'SP5', y: '0.8 m' },
    ]);
    const noStop = withHouseValue(house, ['setTypes', 'BASE', 'lowStop', 'height'], undefined);
    expect(noStop['setTypes']).toMatchObject({ BASE: { suspension: 'singlePurchase' } });
    const { suspension: _gone, ...kind } = { suspension: 'motor' };
    const one = withHouseValue(
      { setTypes: { X: { suspension: 'motor' } } },
      ['setTypes', 'X', 'suspension'],
      undefined,
    );
    expect(one).toEqual({ setTypes: { X: kind } });
  });

  it('begins a purchase with an arbor that nobody knows, and ends it with the purchase', () => {
    const path = ['setTypes', 'M', 'suspension'];
    const motor: JsonObject = {
      ...house,
      setTypes: { M: { suspension: 'motor' } },
      lineSets: [{ id: 'M1', type: 'M' }],
      bays: [],
    };
    const purchase = withHouseValue(motor, path, 'singlePurchase');
    expect(purchase['setTypes']).toEqual({ M: { suspension: 'singlePurchase', arbor: {} } });
    expect(read(purchase).lineSets[0]?.arbor).not.toBe(null);
    expect(withHouseValue(purchase, path, 'motor')['setTypes']).toEqual({
      M: { suspension: 'motor' },
    });
    const limit = ['setTypes', 'M', 'arbor', 'massLimit'];
    const typed = withHouseValue(purchase, limit, '300 kg');
    expect(withHouseValue(typed, limit, undefined)).toEqual(purchase);
  });

  it('has the nearest "given" above it', () => {
    expect(givenAbove(house, ['stage', 'gridHeight'])).toEqual({
      basis: 'measured',
      source: 'tape',
    });
    expect(givenAbove(blank, ['stage', 'gridHeight'])).toBe(undefined);
  });
});

describe('an id', () => {
  it('is renamed wherever the house names it', () => {
    const next = withRenamed(house, 'brickKinds', { from: 'O', to: 'cast' });
    expect(next['brickKinds']).toMatchObject([{ id: 'F', looksLike: ['cast'] }, { id: 'cast' }]);
    expect(next['setTypes']).toMatchObject({ SP5: { arbor: { pipeWeight: [{ kind: 'cast' }] } } });
    const kinds = withRenamed(house, 'setTypes', { from: 'BASE', to: 'SP' });
    expect(Object.keys(kinds['setTypes'] ?? {})).toEqual(['SP', 'SP5']);
    expect(read(kinds).lineSets.map(({ lowStop }) => lowStop.height.known)).toEqual([true, true]);
  });

  it('goes out of its bay with its set', () => {
    const next = withoutEntry(house, ['lineSets', 0], '1');
    expect(next['bays']).toEqual([{ id: 'A', sets: ['2'] }]);
    expect(read(next).lineSets.map(({ id }) => id)).toEqual(['2']);
  });

  it('is told with what refers to it from show and record', () => {
    expect(referencesTo('lineSets', '2', referring)).toEqual(['what hangs on it in First show']);
    expect(referencesTo('lineSets', '1', referring)).toEqual(['the record of how things stand']);
    expect(referencesTo('brickKinds', 'O', referring)).toEqual(['the record of how things stand']);
    expect(referencesTo('brickKinds', 'F', referring)).toEqual([]);
    expect(referencesTo('rails', 'deck', referring)).toEqual([]);
  });
});

describe('a house that was changed', () => {
  it('is refused with its own faults, and with those of what names it', () => {
    const bad = withHouseValue(house, ['stage', 'gridHeight'], '-3 m');
    expect(houseRefusals(bad, read(house), referring)).toMatchObject([
      { path: 'stage.gridHeight' },
    ]);
    const gone = withoutEntry(house, ['lineSets', 1], '2');
    const [refusal] = houseRefusals(gone, read(house), referring);
    expect(refusal?.path).toBe('show First show: hangs[0].set');
    const uncounted = withoutEntry(house, ['lineSets', 0], '1');
    expect(houseRefusals(uncounted, read(house), referring)).toMatchObject([
      { path: 'state: sets.1' },
    ]);
  });

  it('asks nothing of a show that could not be read before', () => {
    const broken = { ...show, hangs: [{ set: '9', name: 'Gone', family: 'soft' }] };
    const next = withHouseValue(house, ['stage', 'gridHeight'], '18 m');
    expect(houseRefusals(next, read(house), { shows: [broken], state: null })).toEqual([]);
  });
});
