import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import type { JsonObject } from '../keeping/json.ts';
import { writtenHang } from './show-edits.ts';
import { withTrims } from './trims.ts';

const SHOW = clockmaker as JsonObject;
const NONE = { low: null, high: null };
const trimsOf = (show: JsonObject, set: string) => writtenHang(show, set)?.['trims'];

// Set 1 of the demo has two heights, set 2 one called "playing".
const PLACES = { low: { index: 0 }, high: { index: 1 } };
const ONE = { low: { index: 0 }, high: null };

describe('both heights of a set', () => {
  it('are typed in one edit, the others of the hang left alone', () => {
    const show = withTrims(SHOW, '1', { in: '29 ft', out: '59 ft' }, PLACES);
    expect(trimsOf(show, '1')).toMatchObject([
      { name: 'in', height: '29 ft' },
      { name: 'out', height: '59 ft' },
    ]);
    expect(writtenHang(show, '2')).toBe(writtenHang(SHOW, '2'));
  });

  it('go one by one, whichever stands first', () => {
    expect(trimsOf(withTrims(SHOW, '1', { in: '', out: '59 ft' }, PLACES), '1')).toMatchObject([
      { name: 'out', height: '59 ft' },
    ]);
    const turned = { low: PLACES.high, high: PLACES.low };
    const show = withTrims(SHOW, '1', { in: ' ', out: '59 ft' }, turned);
    expect(trimsOf(show, '1')).toMatchObject([{ name: 'in', height: '59 ft' }]);
    expect(trimsOf(withTrims(SHOW, '1', { in: '', out: '' }, PLACES), '1')).toEqual([]);
  });

  it('come beside the one that is there, by a name that is free', () => {
    const show = withTrims(SHOW, '2', { out: '50 ft' }, ONE);
    expect(trimsOf(show, '2')).toMatchObject([{ name: 'playing' }, { name: 'out' }]);
    const again = withTrims(show, '2', { out: '55 ft' }, ONE);
    expect(trimsOf(again, '2')).toMatchObject([{}, {}, { name: 'high', height: '55 ft' }]);
    expect(trimsOf(withTrims(SHOW, '2', { in: '', out: '' }, ONE), '2')).toEqual([]);
  });

  it('stay as they are where nothing hangs or nothing is said', () => {
    expect(withTrims(SHOW, '4', { in: '9 ft' }, NONE)).toBe(SHOW);
    expect(trimsOf(withTrims(SHOW, '1', {}, PLACES), '1')).toEqual(trimsOf(SHOW, '1'));
  });
});
