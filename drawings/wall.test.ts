import { describe, expect, it } from 'vitest';
import type { SetAssessment } from '#assessment';
import { metres, newtons, POUND_FORCE } from '#quantities';
import type { SetState } from '#state';
import { unknownSetState } from '#state';
import { openExample } from '../examples/open-example.ts';
import { arborDrawing, hungDrawing, sliceDrawing, wallDrawing, wallSigns } from './index.ts';
import type { Line, Shape } from './shape.ts';

const FOOT = 0.3048;
const HOUR_MS = 3_600_000;
const { house, assessment, state } = openExample('kestlemere');

const setNamed = (id: string): SetAssessment => {
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  return set;
};

/** A set as it would be recorded with another state, and an imbalance in pounds. */
const recorded = (
  set: SetAssessment,
  change: Partial<SetState>,
  imbalance?: readonly [low: number, high: number],
): SetAssessment => ({
  ...set,
  recorded: {
    ...set.recorded,
    state: { ...set.recorded.state, ...change },
    ...(imbalance === undefined
      ? {}
      : {
          imbalance: {
            known: true,
            value: {
              low: newtons(imbalance[0] * POUND_FORCE),
              high: newtons(imbalance[1] * POUND_FORCE),
            },
          },
        }),
  },
});

const span = (feet: number) => ({ low: metres(feet * FOOT), high: metres(feet * FOOT) });
const counted = { basis: 'counted', at: state.at, by: 'loader', second: 'lead' } as const;
const bare = { restraints: [], knowledge: counted, service: 'in', pullTest: null } as const;

describe('the signs beneath the wall', () => {
  const set = setNamed('11');

  it('name what holds a set: lock, stop, restraint, and nothing at all', () => {
    const aloft = { ...bare, height: span(40) };
    const hold = (change: Partial<SetState>, low: number, high: number) =>
      wallSigns(recorded(set, { ...aloft, ...change }, [low, high]), house, null).hold;
    expect(hold({ lock: 'closed' }, -24, -24)).toBe('lock');
    expect(hold({ lock: 'closed' }, -51, -51)).toBe('danger');
    expect(hold({ lock: 'open' }, -24, -24)).toBe('danger');
    expect(hold({ lock: null }, -24, -24)).toBe('unknown');
    expect(hold({ lock: 'closed', height: span(3) }, 48, 48)).toBe('stop');
    expect(hold({ lock: 'closed', height: span(61) }, -400, -400)).toBe('stop');
    expect(hold({ lock: 'closed', height: span(61) }, 400, 400)).toBe('danger');
  });

  it('let a restraint hold only its own way, and never add two together', () => {
    const line = {
      kind: 'bullLine',
      resists: 'out',
      rating: newtons(450 * POUND_FORCE),
      from: null,
      to: null,
      owner: null,
      tag: null,
    } as const;
    const hold = (restraints: SetState['restraints'], pounds: number) =>
      wallSigns(
        recorded(set, { ...bare, height: span(40), lock: 'closed', restraints }, [pounds, pounds]),
        house,
        null,
      ).hold;
    expect(hold([line], -400)).toBe('bullLine');
    expect(hold([line], 400)).toBe('danger');
    expect(hold([line, line], -600)).toBe('danger');
    expect(hold([{ ...line, rating: null }], -400)).toBe('danger');
    expect(hold(null, -400)).toBe('unknown');
  });

  it('let a resting piece find its balance, but hold every value of a doubtful height', () => {
    const signs = (height: SetState['height']) =>
      wallSigns(recorded(set, { ...bare, height, lock: 'closed' }, [-320, 25]), house, null);
    expect(signs(span(23))).toMatchObject({ balance: 'resting', hold: 'lock' });
    const doubtful = { low: metres(20 * FOOT), high: metres(23 * FOOT) };
    expect(signs(doubtful)).toMatchObject({ balance: 'unknown', hold: 'danger' });
  });

  it('say stale in a word once the house asks again, and not before', () => {
    const at = Date.parse(state.at);
    const fresh = recorded(set, { ...bare, height: span(40), lock: 'closed' }, [-24, -24]);
    expect(wallSigns(fresh, house, at + 3 * HOUR_MS)).toMatchObject({ balance: 'arborHeavy' });
    expect(wallSigns(fresh, house, at + 5 * HOUR_MS)).toMatchObject({
      balance: 'stale',
      word: 'STALE, 5 h',
    });
    const untimed = recorded(fresh, { knowledge: { ...counted, at: null } }, [-24, -24]);
    expect(wallSigns(untimed, house, at).word).toBe('STALE, no time');
  });

  it('show in balance only a set that was pulled and found within its friction', () => {
    const tested = { ...counted, basis: 'pullTested' } as const;
    const pulled = recorded(set, { ...bare, height: span(40), knowledge: tested }, [-3, -3]);
    const found = (pounds: number): SetAssessment => ({
      ...pulled,
      recorded: {
        ...pulled.recorded,
        pull: {
          known: true,
          value: {
            imbalance: newtons(pounds * POUND_FORCE),
            friction: newtons(18 * POUND_FORCE),
          },
        },
      },
    });
    expect(wallSigns(found(-3), house, null).balance).toBe('inBalance');
    expect(wallSigns(found(-20), house, null).balance).toBe('arborHeavy');
    const unpulled = recorded(set, { ...bare, height: span(40) }, [-3, -3]);
    expect(wallSigns(unpulled, house, null).balance).toBe('arborHeavy');
  });

  it('put a lock-out before everything else, and never guess what nobody recorded', () => {
    const tagged = { service: 'lockedOut', tag: { number: '7', reason: 'chafed' } } as const;
    expect(wallSigns(recorded(set, tagged), house, null)).toEqual({
      balance: 'lockedOut',
      hold: 'lockedOut',
      word: 'LOCKED OUT, tag 7',
    });
    const unknown = { ...set, recorded: { ...set.recorded, state: unknownSetState } };
    expect(wallSigns(unknown, house, null)).toMatchObject({ balance: 'unknown', hold: 'unknown' });
    expect(wallSigns(setNamed('M1'), house, null)).toMatchObject({ balance: null, hold: null });
    expect(wallSigns(recorded(set, { service: 'deadHung' }), house, null).hold).toBe('deadHung');
  });
});

const linesIn = (shapes: readonly Shape[]): readonly Line[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return linesIn(shape.shapes);
    return shape.kind === 'line' ? [shape] : [];
  });

describe('the wall', () => {
  const options = { columnWidth: 28, height: 290, letter: 12.5, margin: 110, nowMs: null };
  const wall = wallDrawing(assessment, house, { ...options, chosen: '11' });

  it('has a column for every set in rail order, and one ruling behind them', () => {
    expect(wall.columns.map(({ set }) => set)).toEqual(house.lineSets.map(({ id }) => id));
    expect(wall.frame.width).toBe(110 + 45 * 28);
  });

  it('hangs each arbor at its true height', () => {
    const columnOf = (id: string) => wall.columns.find(({ set }) => set === id)?.drawing.shapes;
    const panOf = (id: string): number => {
      const pans = linesIn(columnOf(id) ?? []).filter(({ weight }) => weight === 3);
      return pans[0]?.from.y ?? Number.NaN;
    };
    const floorOf = (feet: number): number => {
      const floors = linesIn(wall.frame.shapes).filter(({ weight }) => weight === 'thin');
      const deck = linesIn(wall.frame.shapes).find(({ weight }) => weight === 'thick')?.from.y ?? 0;
      const upper = floors[0]?.from.y ?? 0;
      return deck - ((deck - upper) / 58) * feet;
    };
    // Set 11 stands at 60 ft: its pan hangs at 59.5 − 57 = 2.5 ft. Set 4 is on its low stop.
    expect(panOf('11')).toBeCloseTo(floorOf(2.5), 1);
    expect(panOf('4')).toBeCloseTo(floorOf(59.5), 1);
    // Double purchase: batten at 30.25 ft, pan at 57 − 27.25 / 2.
    expect(panOf('D4')).toBeCloseTo(floorOf(57 - 27.25 / 2), 1);
  });

  it('says of each column what a person would read off it', () => {
    const names = wall.columns.map(({ name }) => name.replaceAll('\u00A0', ' '));
    const eleven = names.find((name) => name.startsWith('Set 11,'));
    expect(eleven).toBe(
      'Set 11, Clock tower flat, batten at 60\'-0", 25 lb arbor heavy, held by lock',
    );
    expect(names.find((name) => name.startsWith('Set 20,'))).toContain('LOCKED OUT, tag 7');
  });

  it('shows no planned name on a set on which nothing was hung', () => {
    const set = setNamed('11');
    const away = recorded(set, { items: [{ item: 'tower', phase: 'away' }] });
    const column = wallDrawing({ ...assessment, sets: [away] }, house, options).columns[0];
    expect(column?.name).toContain('empty');
    const unsaid = recorded(set, { items: null });
    const other = wallDrawing({ ...assessment, sets: [unsaid] }, house, options).columns[0];
    expect(other?.name).toContain('not recorded');
  });
});

describe('the drawings beside the curve', () => {
  const size = { width: 440, height: 500, letter: 14 };

  it('show the arbor now and where the trims put it', () => {
    const words = JSON.stringify(arborDrawing(setNamed('11'), house, size));
    expect(words).toContain('now: batten');
    expect(words).toContain('in trim:');
    expect(JSON.stringify(arborDrawing(setNamed('M1'), house, size))).toContain('takes no bricks');
  });

  it('show the set from the house, or that nothing hangs', () => {
    const words = JSON.stringify(hungDrawing(setNamed('11'), house, size));
    expect(words).toContain('opening');
    expect(hungDrawing(setNamed('4'), house, size).title).toContain('Nothing is planned');
    // The house is drawn all the same, so that the empty set is seen for what it is.
    expect(JSON.stringify(hungDrawing(setNamed('4'), house, size))).toContain('loft blocks');
  });

  it('slice the curve at its edges: bracket of the lock, free travel, what lands', () => {
    const edgeN = 500 * POUND_FORCE;
    const options = { width: 206, height: 24, edgeN };
    const slice = sliceDrawing(setNamed('11'), house, options);
    const thick = linesIn(slice.shapes).filter(({ weight }) => weight === 'thick');
    const perPound = (206 / 2 - 3) / 500;
    expect(thick[0]?.from.x).toBeCloseTo(103 - 24 * perPound, 0);
    expect(thick[0]?.to.x).toBeCloseTo(103 + 25 * perPound, 0);
    const landed = slice.shapes.filter((shape) => shape.kind === 'group');
    expect(landed).toHaveLength(1);
    const now = sliceDrawing(setNamed('11'), house, { ...options, nowN: 0 });
    expect(JSON.stringify(now)).toContain('"part":"now"');
  });
});
