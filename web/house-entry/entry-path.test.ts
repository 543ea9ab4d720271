import { describe, expect, it } from 'vitest';
import { documentPath, fieldName, idFrom, idKeys, keysOf } from './entry-path.ts';

const house = {
  brickKinds: [{ id: 'F' }, { id: 'old.cast' }],
  setTypes: { SP6: { lift: { muleBlocks: [{ line: 1 }] } } },
};

describe('the place of a value', () => {
  it('is read from the path that names it', () => {
    expect(keysOf('setTypes.SP6.arbor')).toEqual(['setTypes', 'SP6', 'arbor']);
    expect(keysOf('brickKinds["old.cast"].mass')).toEqual(['brickKinds', 'old.cast', 'mass']);
    expect(keysOf('hangs[3].trims')).toEqual(['hangs', '3', 'trims']);
  });

  it('goes from ids to the places of lists, and back', () => {
    const keys = ['brickKinds', 'old.cast', 'mass'];
    const path = documentPath(house, keys);
    expect(path).toEqual(['brickKinds', 1, 'mass']);
    expect(idKeys(house, path ?? [])).toEqual(keys);
    expect(keysOf(fieldName(keys))).toEqual(keys);
    expect(documentPath(house, ['brickKinds', 'X', 'mass'])).toBe(null);
  });

  it('is a number where an entry has no id', () => {
    const path = ['setTypes', 'SP6', 'lift', 'muleBlocks', 0, 'x'];
    expect(idKeys(house, path)).toEqual(['setTypes', 'SP6', 'lift', 'muleBlocks', '0', 'x']);
    expect(documentPath(house, idKeys(house, path))).toEqual(path);
  });

  it('gets an id from its name, and none that is taken', () => {
    expect(idFrom('Upper loading gallery', [])).toBe('upper-loading-gallery');
    expect(idFrom('Café, rear', ['cafe-rear'])).toBe('cafe-rear-2');
    expect(idFrom('…', [])).toBe('');
  });
});
