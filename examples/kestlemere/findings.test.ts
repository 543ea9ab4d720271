/**
 * The demo house and its shows through the shipped doors, from file to finding. The numbers that
 * are expected are those of the demo's own plan, worked out apart from this program.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '#assessment';
import { readHouse, readShowValue, readState } from '#documents';
import type { Finding } from '#findings';
import { FOOT, POUND, POUND_FORCE } from '#quantities';
import { judge, momentMs, RULES } from '#rules';
import type { Show } from '#show';
import type { HouseState } from '#state';

const textOf = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');

const taken = <T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false }): T => {
  if (!result.ok) throw new Error('a file of the demo was refused');
  return result.value;
};

const { house } = taken(readHouse(textOf('house.json')));

type RawHang = {
  set: string;
  bricks?: { counts: Record<string, number>; reason: string };
  [field: string]: unknown;
};
type RawShow = { hangs: RawHang[] };

/** A show of the demo, with what a test changes of the hang on one set. */
const showFrom = (name: string, set?: string, change?: (hang: RawHang) => void): Show => {
  const raw = JSON.parse(textOf(name)) as RawShow;
  const hang = raw.hangs.find((one) => one.set === set);
  if (hang !== undefined) change?.(hang);
  return taken(readShowValue(raw, house)).show;
};

const vell = (set?: string, change?: (hang: RawHang) => void): Show =>
  showFrom('clockmaker.show.json', set, change);

const record = taken(readState(textOf('state.json'), house, vell())).state;
const nowMs = momentMs(record.at) ?? Number.NaN;

const judged = (show: Show, state: HouseState | null = null): readonly Finding[] =>
  judge(house, show, state, assess(house, show, state), { nowMs });

const on = (findings: readonly Finding[], code: string): readonly (string | undefined)[] =>
  findings.filter((finding) => finding.code === code).map(({ at }) => at.set);

const lbOf = (finding: Finding | undefined): number =>
  (finding?.measured?.value ?? Number.NaN) / POUND_FORCE;

const find = (findings: readonly Finding[], code: string, set: string): Finding | undefined =>
  findings.find((finding) => finding.code === code && finding.at.set === set);

describe('The Clockmaker of Vell as planned', () => {
  const findings = judged(vell());

  it('raises nothing at stop level without a record', () => {
    expect(findings.filter(({ level }) => level === 'stop')).toEqual([]);
  });

  it('raises these codes and no others', () => {
    const expected = [
      'BAL-003',
      'BAL-004',
      'BAL-008',
      'BAL-009',
      'BRK-002',
      'DCK-001',
      'KIN-002',
      'LCK-001',
      'LCK-004',
      'LFT-010',
      'LOD-002',
      'LOM-002',
      'PIP-005',
      'STA-005',
      'STL-002',
      'UNK-001',
    ];
    expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(expected));
  });

  it('can say every finding with what it carries', () => {
    for (const { code, measured, limit, at, facts } of findings) {
      const says = RULES.find((rule) => rule.code === code)?.says ?? '{no rule}';
      const given = { ...facts, measured, limit, set: at.set, item: at.item };
      const excess = measured !== null && limit !== null ? 'given' : null;
      const all: Readonly<Record<string, unknown>> = { ...given, excess };
      for (const [, name = ''] of says.matchAll(/\{(\w+)\}/g)) {
        expect(all[name] ?? null, `${code} ${name}`).not.toBeNull();
      }
    }
  });

  it('[BAL-003] needs the order of work on every set whose piece lands past the lock', () => {
    expect(on(findings, 'BAL-003')).toEqual([
      '1',
      '2',
      '3',
      '7',
      '8',
      '9',
      '11',
      '15',
      '16',
      '17',
      '21',
      '22',
      '23',
      '27',
      '28',
      '29',
      '36',
      '38',
      'D2',
      'D4',
    ]);
  });

  it('[BAL-003] has tower and bridge 321 lb and 482 lb arbor heavy a hair below lift-off', () => {
    expect(lbOf(find(findings, 'BAL-003', '11'))).toBeCloseTo(-320.9, 1);
    expect(lbOf(find(findings, 'BAL-003', '36'))).toBeCloseTo(-482.4, 1);
    expect(lbOf(find(findings, 'BAL-003', '1'))).toBeCloseTo(-445.6, 1);
  });

  it('[BAL-003] has the house curtain past the lock from 27.7 ft in', () => {
    const passes = find(findings, 'BAL-003', '1')?.facts['passes'];
    expect(passes).toEqual({ kind: 'length', value: expect.closeTo(27.7 * FOOT, 2) });
  });

  it('[LOM-002] has 8 ft of loom on the deck at 4 ft on electrics, lamps and star drop', () => {
    expect(on(findings, 'LOM-002')).toEqual(['5', '19', '21', '32', '40', 'D2']);
    for (const { code, measured } of findings) {
      if (code === 'LOM-002') expect(measured?.value).toBeCloseTo(8 * FOOT, 9);
    }
  });

  it('[KIN-002] has the speaker frame 236 lb batten heavy if its steel is released now', () => {
    expect(lbOf(find(findings, 'KIN-002', 'D3'))).toBeCloseTo(235.7, 1);
    // Of the house: what nobody has surveyed of bays, blocks and battens.
    expect(on(findings, 'UNK-001')).toEqual([undefined, 'M1']);
  });

  it('[STL-002] has bay C at 92 % of what it may carry, 7,879 lb on 17 sets', () => {
    const near = findings.filter(({ code }) => code === 'STL-002');
    expect(near).toMatchObject([{ level: 'caution', facts: { sets: { value: 17 }, most: 'D2' } }]);
    expect(lbOf(near[0])).toBeCloseTo(7879.4, 0);
    expect(near[0]?.facts['share']).toMatchObject({ value: expect.closeTo(0.92, 2) });
  });

  it('[LFT-010] moves about 6 lb by an eighth of an inch, as 50 lb by an inch', () => {
    const taken = findings.find(({ code }) => code === 'LFT-010');
    expect(Math.abs(lbOf(taken) - 50 / 8)).toBeLessThan(1);
  });

  it('[BRK-002] knows the old cast bricks that look like full ones', () => {
    const [alike] = findings.filter(({ code }) => code === 'BRK-002');
    expect(alike?.facts).toMatchObject({ kind: 'F', other: 'O' });
    expect((alike?.measured?.value ?? 0) / POUND).toBeCloseTo(3, 9);
  });

  it('[LOD-002] has Electric 1 above nine tenths of its live limit once all its loom hangs', () => {
    expect(on(findings, 'LOD-002')).toEqual(['5']);
  });

  it.each(['clockmaker.show.json', 'winterferry.show.json'])(
    '[UNI-001] [UNI-002] asks about no unit in %s, where none is wrong',
    (name) => {
      const codes = judged(showFrom(name)).map(({ code }) => code);
      expect(codes.filter((code) => code.startsWith('UNI'))).toEqual([]);
    },
  );
});

describe('Vell as it was recorded', () => {
  const findings = judged(vell(), record);

  it('[STA-003] stops set 20, which is locked out, and nothing else', () => {
    const stops = findings.filter(({ level }) => level === 'stop');
    expect(stops.map(({ code, at }) => `${code} ${at.set}`)).toEqual(['STA-003 20']);
  });

  it('[STA-002] finds the record of set 40 a day old, and no other', () => {
    expect(on(findings, 'STA-002')).toEqual(['40']);
  });

  it('[STA-001] finds the record and the plan alike', () => {
    expect(on(findings, 'STA-001')).toEqual([]);
    expect(on(findings, 'BAL-011')).toEqual([]);
    expect(on(findings, 'STA-004')).toEqual([]);
  });

  it('[BAL-004] leaves sets alone that a pull test has settled', () => {
    const tested = ['8', '16', '19', '29', '32', 'D4'];
    expect(on(findings, 'BAL-004').filter((set) => tested.includes(set ?? ''))).toEqual([]);
    // Without the record nothing is settled, and Electric 3 may be past the lock.
    expect(on(judged(vell()), 'BAL-004')).toContain('32');
  });

  it('[BRK-002] names the gallery where old cast bricks lie beside full ones', () => {
    expect(findings.find(({ code }) => code === 'BRK-002')?.at.gallery).toBe('upper');
  });

  const setRecord = (set: string, change: Partial<HouseState['sets'][string]>): HouseState => {
    const before = record.sets[set];
    if (before === undefined) throw new Error(`set ${set} is in the record`);
    return { ...record, sets: { ...record.sets, [set]: { ...before, ...change } } };
  };

  it('[STA-001] finds ten old cast bricks among the full ones of Electric 1 by tally', () => {
    const stack = [
      { kind: 'O', count: 3, tag: 'pipe' as const },
      { kind: 'F', count: 23, tag: 'show' as const },
      { kind: 'O', count: 10, tag: 'show' as const },
    ];
    const [differs] = judged(vell(), setRecord('5', { stack })).filter(
      ({ code }) => code === 'STA-001',
    );
    expect(differs).toMatchObject({
      level: 'caution',
      at: { set: '5' },
      facts: { recorded: '23 F, 10 O', planned: '33 F' },
    });
  });

  it('[STA-004] stops the bridge a hair too low, where only the lock holds 482 lb', () => {
    const metres = record.sets['36']?.height?.low;
    if (metres === undefined) throw new Error('set 36 has a height');
    const at = ((15 - 0.05) * FOOT) as typeof metres;
    const findingsThen = judged(vell(), setRecord('36', { height: { low: at, high: at } }));
    const stop = find(findingsThen, 'STA-004', '36');
    expect(stop?.level).toBe('stop');
    expect(lbOf(stop)).toBeCloseTo(-482.3, 1);
  });
});

describe('the traps of the demo', () => {
  const outAt = (height: string) => (hang: RawHang) => {
    const [inTrim] = hang['trims'] as unknown[];
    hang['trims'] = [inTrim, { name: 'out', height, reference: 'batten' }];
  };

  it('[BAL-007] [trap 8] holds the silk at 57 ft after its release, and not at 60 ft', () => {
    expect(on(judged(vell('34', outAt('57 ft'))), 'BAL-007')).toEqual([]);
    const findings = judged(vell('34', outAt('60 ft')));
    expect(lbOf(find(findings, 'BAL-007', '34'))).toBeCloseTo(-52, 0);
  });

  it('[BAL-007] does not hold half a brick more on the silk: 65 lb at 60 ft', () => {
    const findings = judged(
      vell('34', (hang) => {
        outAt('60 ft')(hang);
        hang.bricks = { counts: { F: 3, H: 1 }, reason: 'to be judged' };
      }),
    );
    expect(lbOf(find(findings, 'BAL-007', '34'))).toBeCloseTo(-65, 0);
  });

  it('[BAL-007] [trap 9] does not hold the snow bag with 3 F once the snow has fallen', () => {
    const findings = judged(
      vell('30', (hang) => {
        hang.bricks = { counts: { F: 3 }, reason: 'to be judged' };
      }),
    );
    expect(lbOf(find(findings, 'BAL-007', '30'))).toBeCloseTo(-51, 0);
    expect(on(judged(vell()), 'BAL-007')).toEqual([]);
  });

  it('[DCK-001] [trap 21] wants the bridge out of the deck on which the tower is laid', () => {
    const laid = judged(vell()).filter(({ code }) => code === 'DCK-001');
    const [bridge] = laid.filter(({ facts }) => facts['otherSet'] === '36');
    expect(bridge?.at.set).toBe('11');
    const feetOf = (fact: Finding['facts'][string] | undefined) =>
      (typeof fact === 'object' ? fact.value : Number.NaN) / FOOT;
    expect(feetOf(bridge?.facts['from'])).toBeCloseTo(9, 6);
    expect(feetOf(bridge?.facts['to'])).toBeCloseTo(31, 6);
    const out = (hang: RawHang) => {
      hang['trims'] = [{ name: 'out', height: '58 ft', reference: 'batten' }];
    };
    expect(on(judged(vell('36', out)), 'DCK-001')).toEqual([]);
  });

  it('[BAL-010] knows 16 F on the star drop as a count for single purchase', () => {
    const findings = judged(
      vell('D2', (hang) => {
        hang.bricks = { counts: { F: 16 }, reason: 'to be judged' };
      }),
    );
    const found = find(findings, 'BAL-010', 'D2');
    expect((found?.measured?.value ?? 0) / POUND).toBeCloseTo(400, 9);
    expect(find(findings, 'BAL-001', 'D2')?.level).toBe('stop');
  });

  /** The tower flat hung elsewhere: the plan's own cases of a batten on its lines. */
  const towerAt = (points: readonly string[], mass = '640 lb') =>
    judged(
      vell('11', (hang) => {
        const [flat] = hang['items'] as Record<string, unknown>[];
        hang['items'] = [
          { ...flat, placement: { points }, takeoff: { by: 'mass', mass: weighedAs(mass) } },
        ];
      }),
    );

  const weighedAs = (value: string) => ({ value, tolerance: '0 %', basis: 'weighed' });

  const footPounds = (finding: Finding | undefined): number =>
    (finding?.measured?.value ?? Number.NaN) / (FOOT * POUND_FORCE);

  it('[PIP-002] stops the tower on one pick in the middle: 1,167 lbf ft in the tube', () => {
    const bent = find(towerAt(['0 ft']), 'PIP-002', '11');
    // The plan reckons with half-foot elements, which are within 0.2 % of the whole.
    expect(Math.abs(footPounds(bent) / 1167 - 1)).toBeLessThan(0.002);
    // Computed in check-values 3.3 for a nominal wall: 9.381 kip in over 12.
    expect((bent?.limit?.value ?? 0) / (FOOT * POUND_FORCE)).toBeCloseTo(9381 / 12, 0);
    expect(bent?.facts['method']).toBe('plastic moment over 1.67, nominal wall');
  });

  it('[PIP-002] takes the tower on three picks as on two', () => {
    for (const points of [
      ['-6 ft', '0 ft', '6 ft'],
      ['-4.5 ft', '4.5 ft'],
    ]) {
      const codes = towerAt(points).map(({ code }) => code);
      expect(codes.filter((code) => /^(PIP-00[1-4]|LFT-00)/.test(code))).toEqual([]);
    }
  });

  it('[LFT-004] names line 5, which 250 lb at the stage left end makes slack', () => {
    const found = find(towerAt(['25 ft'], '250 lb'), 'LFT-004', '11');
    expect(found).toMatchObject({
      level: 'caution',
      facts: { end: 'stage left', last: { value: 6 }, slack: { value: 5 } },
    });
    expect((found?.measured?.value ?? 0) / POUND).toBeCloseTo(250, 9);
  });

  it('[COU-001] stops the front edge of the header when the rear edge does not hang', () => {
    const show = vell();
    const alone = { ...show, hangs: show.hangs.filter(({ set }) => set !== '27') };
    expect(find(judged(alone), 'COU-001', '23')?.level).toBe('stop');
  });

  it('[UNI-002] asks about profiles that were typed in kilograms on one of two electrics', () => {
    const findings = judged(
      vell('32', (hang) => {
        const items = JSON.stringify(hang['items']).replace('"18.5 lb"', '"18.5 kg"');
        hang['items'] = JSON.parse(items);
      }),
    );
    expect(on(findings, 'UNI-002')).toEqual(['32']);
  });

  it('[LOD-001] stops heads of 95 lb in place of 79 lb on Electric 1', () => {
    const findings = judged(
      vell('5', (hang) => {
        hang['items'] = JSON.parse(JSON.stringify(hang['items']).replace('"79 lb"', '"95 lb"'));
      }),
    );
    expect(find(findings, 'LOD-001', '5')?.level).toBe('stop');
  });
});
