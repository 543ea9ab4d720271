import { describe, expect, it } from 'vitest';
import { readHouseValue, readShowValue } from '#documents';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import { writtenHang } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { withMovedHang, withNewPiece } from './move-hang.ts';

const plan = clockmaker as JsonObject;
const read = readHouseValue(kestlemere);
if (!read.ok) throw new Error(JSON.stringify(read.error));
const { house } = read.value;
const railOrder = house.lineSets.map(({ id }) => id);

const showOf = (document: JsonObject) => {
  const answer = readShowValue(document, house);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.show;
};

describe('a piece on another set', () => {
  it('is moved with its cues, without its bricks, in rail order, and is read', () => {
    const moved = withMovedHang(plan, '17', { to: '18', railOrder });
    const show = showOf(moved);
    expect(writtenHang(moved, '17')).toBeNull();
    expect(show.hangs.find(({ set }) => set === '18')).toMatchObject({
      name: 'Shop sign',
      bricks: null,
    });
    expect(show.keptEmpty['18']).toBeUndefined();
    const before = showOf(plan).cues.filter(({ set }) => set === '17').length;
    expect(show.cues.filter(({ set }) => set === '18')).toHaveLength(before);
    expect(show.cues.filter(({ set }) => set === '17')).toEqual([]);
    const written = (moved['hangs'] as JsonObject[]).map(({ set }) => railOrder.indexOf(`${set}`));
    expect(written).toEqual(written.toSorted((one, other) => one - other));
  });

  it('stays coupled with the other half of its pair', () => {
    const show = showOf(withMovedHang(plan, '23', { to: '24', railOrder }));
    const coupled = (id: string) => show.hangs.find(({ set }) => set === id)?.coupledWith;
    expect([coupled('24'), coupled('27')]).toEqual([['27'], ['24']]);
  });

  it('leaves the show as it is where nothing moves', () => {
    expect(withMovedHang(plan, '17', { to: '17', railOrder })).toBe(plan);
    expect(withMovedHang(plan, '18', { to: '20', railOrder })).toBe(plan);
  });
});

const typed = {
  from: '',
  name: 'Lantern',
  mass: '120 lb',
  halfDepth: '6 in',
  width: '10 ft',
  low: '20 ft',
  high: '',
  place: '',
  within: '',
  keptEmptyToo: true,
};

it('hangs a new piece as it was typed, and leaves the blank ones unknown', () => {
  const asked = { to: '10', railOrder, widthM: 3.048 };
  const hang = showOf(withNewPiece(plan, typed, asked)).hangs.find(({ set }) => set === '10');
  expect(hang?.name).toBe('Lantern');
  expect(hang?.trims.map(({ name }) => name)).toEqual(['low']);
  expect(hang?.items[0]?.placement).toEqual({ at: 'spread', from: -1.524, to: 1.524 });
  const blank = withNewPiece(plan, { ...typed, name: '', mass: '', low: '' }, asked);
  const bare = showOf(blank).hangs.find(({ set }) => set === '10');
  expect(bare?.name).toBe('New piece');
  expect(bare?.items[0]?.takeoff).toMatchObject({ mass: { known: false } });
});
