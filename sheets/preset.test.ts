import { describe, expect, it } from 'vitest';
import { assess } from '#assessment';
import type { HouseNow } from '#state';
import { openExample } from '../examples/open-example.ts';
import { openedNow, withSets } from './example-now.ts';
import { feet } from './example-orders.ts';
import { allWords, exampleContext, mustMake, tablesOf, textOf } from './example-sheets.ts';

const example = openExample('kestlemere');
const context = exampleContext(example);
const opened = openedNow(context);

/** Set, expected, on record and rule, row after row of all its tables. */
const walkOf = (now: HouseNow | null) =>
  tablesOf(mustMake({ ...context, now }, 'preset-check')).flatMap(({ rows }) =>
    rows.map(({ cells, rule }) => [...[0, 2, 3].map((at) => textOf(cells[at] ?? [])), rule]),
  );

const rowOf = (set: string, now: HouseNow | null = opened) =>
  walkOf(now).find(([id]) => id === set);

describe('the preset check', () => {
  it('walks the rails of the house, each from down stage up', () => {
    const walked = walkOf(opened).map(([set]) => set);
    const rails = example.house.rails.flatMap(({ id }) =>
      example.house.lineSets.filter(({ railId }) => railId === id).map((set) => set.id),
    );
    expect(walked).toEqual(rails);
    expect(walked).toHaveLength(example.house.lineSets.length);
  });

  it('wants each set where its first cue takes it from, else at its only trim', () => {
    // By the cues: the house curtain and the harbour drop are in, the tower is out.
    expect(rowOf('1')).toEqual(['1', 'in 30\'-6"', '30\'-6"', 'hair']);
    expect(rowOf('9')).toEqual(['9', 'in 28\'-3"', '28\'-3"', 'hair']);
    expect(rowOf('11')).toEqual(['11', 'out 60\'-0"', '60\'-0"', 'hair']);
    expect(rowOf('5')?.[1]).toBe('playing 36\'-0"');
    expect(rowOf('4')?.[1]).toBe('empty');
    expect(rowOf('D3')?.slice(1, 3)).toEqual(['38\'-0"', '38\'-0", restraint']);
  });

  it('asks a person where the show has two trims and no cue', () => {
    const show = { ...example.show, cues: [] };
    const silent = { ...context, show, assessment: assess(example.house, show, example.state) };
    expect(allWords(mustMake(silent, 'preset-check'))).toContain(
      'which one: in 30\'-6", out 60\'-6"',
    );
  });

  it('rules thick what stands elsewhere, is not held, not known, open or locked out', () => {
    const eleven = opened.sets['11']?.standing ?? null;
    const now = withSets(opened, {
      '11': { standing: eleven === null ? null : { ...eleven, height: feet(23) }, held: 'unheld' },
      '9': { standing: null, doubt: 'touched' },
      '17': { lock: 'open', ring: 'off' },
    });
    expect(rowOf('11', now)?.slice(2)).toEqual(['ELSEWHERE: 23\'-0", NOT HELD', 'thick']);
    expect(rowOf('9', now)?.slice(2)).toEqual(['NOT KNOWN', 'thick']);
    expect(rowOf('17', now)?.slice(2)).toEqual(['58\'-0", LOCK OPEN, RING OFF', 'thick']);
    expect(rowOf('20', now)?.slice(2)).toEqual(['3\'-0", LOCKED OUT', 'thick']);
    // Half a foot off is read off at the rail as the same height.
    const near = withSets(opened, {
      '11': { standing: eleven === null ? null : { ...eleven, height: feet(59.75) } },
    });
    expect(rowOf('11', near)?.[3]).toBe('hair');
  });

  it('leaves a box for each thing to look at, and none where there is none', () => {
    const boxes = (set: string): readonly string[] => {
      const rows = tablesOf(mustMake(context, 'preset-check')).flatMap((table) => table.rows);
      const row = rows.find(({ cells }) => textOf(cells[0] ?? []) === set);
      return (row?.cells ?? [])
        .slice(4)
        .map((cell) =>
          cell
            .map((each) =>
              typeof each === 'object' && 'box' in each ? '[]' : textOf([each]).trim(),
            )
            .join(''),
        );
    };
    expect(boxes('1')).toEqual(['[]', '[]', '[]', '[]', '[]']);
    expect(boxes('20')).toEqual(['–', '[]', '[]', '[]7', '[]']);
    // A motor has no rope lock.
    expect(boxes('M1')).toEqual(['[]', '–', '–', '[]', '[]']);
  });

  it('ends with two names, and says who looks', () => {
    const words = allWords(mustMake(context, 'preset-check'));
    expect(words).toContain('Walk the rail and look; do not tick from the column beside it.');
    expect(words).toMatch(/Confirmed by both, at the half hour[\s\S]*Rail [\s\S]*Head flyperson/);
  });
});
