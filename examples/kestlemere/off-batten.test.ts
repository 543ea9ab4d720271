/** An item that is said to pull past the end of its batten: asked for, and never a defect. */
import { expect, it } from 'vitest';
import { assess } from '#assessment';
import { readShowValue } from '#documents';
import { judge } from '#rules';
import type { Show } from '#show';
import { openExample } from '../open-example.ts';
import clockmaker from './clockmaker.show.json' with { type: 'json' };

const { house, show } = openExample('kestlemere');

const spreadTo = (x: number): Show => ({
  ...show,
  hangs: show.hangs.map((hang) =>
    hang.set === '9'
      ? {
          ...hang,
          items: hang.items.map((item) => ({
            ...item,
            placement: { at: 'spread', from: -x, to: x } as never,
          })),
        }
      : hang,
  ),
});

it('is worked out without what hangs, and says which place it needs', () => {
  const far = assess(house, spreadTo(9), null);
  const structure = far.sets.find(({ lineSet }) => lineSet.id === '9')?.structure;
  expect(structure?.known).toBe(true);
  if (!structure?.known) return;
  expect(structure.value.hungNeeds).toEqual(['Harbour drop: a place that is on the batten']);
  expect(structure.value.states.map(({ kind }) => kind)).toEqual(['bare']);
  const said = judge(house, spreadTo(9), null, far).filter(({ code }) => code === 'UNK-001');
  expect(JSON.stringify(said)).toContain('a place that is on the batten');
});

it('is worked out whole where the place is at the very end', () => {
  const near = assess(house, spreadTo(25 * 0.3048), null);
  const structure = near.sets.find(({ lineSet }) => lineSet.id === '9')?.structure;
  expect(structure?.known && structure.value.hungNeeds).toEqual([]);
});

it('[DOC-117] is refused in a document of a house that knows the batten', () => {
  const hangs = clockmaker.hangs.map((hang) =>
    hang.set === '9'
      ? {
          ...hang,
          items: hang.items.map((item) => ({ ...item, placement: { points: ['26 ft'] } })),
        }
      : hang,
  );
  const read = readShowValue({ ...clockmaker, hangs }, house);
  expect(read.ok ? [] : read.error.map(({ code }) => code)).toEqual(['DOC-117']);
});
