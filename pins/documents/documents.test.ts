/** Yesterday's documents: each old form is read today, and becomes the same new form every day. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readHouse, readShow, readState, writeDocument } from '#documents';
import type { Known } from '#house';
import { FOOT } from '#quantities';

const pinned = (name: string): string =>
  readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8');

const valueOf = <T>(known: Known<T> | undefined): T | string | undefined =>
  known?.known ? known.value : known?.why;

const READERS = { house: readHouse, show: readShow, state: readState };

describe.each(['house', 'show', 'state'] as const)('a %s', (kind) => {
  const read = READERS[kind];

  it('of version 0 becomes the pinned version 1, byte for byte', () => {
    const answer = read(pinned(`${kind}.v0`));
    expect(answer.ok && writeDocument(answer.value.raw)).toBe(pinned(`${kind}.v1`));
  });

  it('of version 1 stays as it is', () => {
    const answer = read(pinned(`${kind}.v1`));
    expect(answer.ok && writeDocument(answer.value.raw)).toBe(pinned(`${kind}.v1`));
  });

  it('says the same in both versions', () => {
    const [old, now] = [read(pinned(`${kind}.v0`)), read(pinned(`${kind}.v1`))];
    expect(old).toEqual(now);
    expect(old.ok).toBe(true);
  });

  it('keeps no mark of the old form in the new version', () => {
    const mixed = JSON.parse(pinned(`${kind}.v0`));
    const answer = read(JSON.stringify({ ...mixed, version: 1 }));
    const codes = answer.ok ? [] : answer.error.map(({ code }) => code);
    expect(codes).toContain(kind === 'show' ? 'DOC-032' : 'DOC-031');
  });
});

describe('what a draft said', () => {
  it('is the stops of a house, their rating not said', () => {
    const answer = readHouse(pinned('house.v0'));
    const [first, second] = answer.ok ? answer.value.house.lineSets : [];
    expect(valueOf(first?.lowStop.height)).toBeCloseTo(3 * FOOT, 12);
    expect(valueOf(first?.highStop.height)).toBeCloseTo(60 * FOOT, 12);
    expect(first?.lowStop.rated).toEqual({ known: false });
    expect(valueOf(second?.lowStop.height)).toBe('stop moved in spring');
  });

  it('is the limit of the lock', () => {
    const answer = readHouse(pinned('house.v0'));
    // 50 lbf at 4.4482216152605 N each, from the definition of the pound-force.
    expect(answer.ok && valueOf(answer.value.house.rules.lockLimit)).toBeCloseTo(222.411, 3);
  });

  it('is the bricks of a hang, counted together', () => {
    const answer = readShow(pinned('show.v0'));
    const [hang] = answer.ok ? answer.value.show.hangs : [];
    expect(hang?.bricks).toEqual({
      counts: { F: 6, H: 1 },
      reason: 'loadable from the upper gallery',
    });
  });

  it('is who knew how a set stood', () => {
    const answer = readState(pinned('state.v0'));
    const set = answer.ok ? answer.value.state.sets['1'] : undefined;
    expect(set?.lock).toBe('closed');
    expect(set?.knowledge).toEqual({
      basis: 'counted',
      at: '2025-03-01T09:30:00Z',
      by: 'loader lead',
      second: null,
    });
  });
});

describe('a draft', () => {
  it('keeps both names of a field, and the reading refuses the old one', () => {
    const raw = JSON.parse(pinned('house.v0'));
    raw.rules.lockLimit = '60 lbf';
    raw.setTypes.single.lowStop = { height: '4 ft' };
    const answer = readHouse(JSON.stringify(raw));
    const paths = answer.ok ? [] : answer.error.map(({ path }) => path);
    expect(paths).toEqual(['rules.brakeLimit', 'setTypes.single.lowTrim']);
  });

  it('is refused without a reason for its bricks, since none is made up', () => {
    const raw = JSON.parse(pinned('show.v0'));
    delete raw.hangs[0].brickReason;
    const answer = readShow(JSON.stringify(raw));
    expect(answer.ok ? [] : answer.error.map(({ path }) => path)).toEqual([
      'hangs[0].bricks.reason',
    ]);
  });
});
