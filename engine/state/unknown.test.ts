import { describe, expect, it } from 'vitest';
import { isStale, unknownSetState } from './unknown.ts';

const HOUR = 3_600_000;
const NOON = Date.UTC(2026, 10, 25, 12);
const after4h = { nowMs: NOON, staleAfterSeconds: 4 * 3600 } as const;

describe('isStale', () => {
  it('is so only past the period', () => {
    expect(isStale({ ...after4h, recordedAtMs: NOON - 4 * HOUR + 1 })).toBe(false);
    expect(isStale({ ...after4h, recordedAtMs: NOON - 4 * HOUR })).toBe(false);
    expect(isStale({ ...after4h, recordedAtMs: NOON - 4 * HOUR - 1 })).toBe(true);
  });

  it('follows the period of the house', () => {
    const hourOld = { nowMs: NOON, recordedAtMs: NOON - HOUR };
    expect(isStale({ ...hourOld, staleAfterSeconds: 1800 })).toBe(true);
    expect(isStale({ ...hourOld, staleAfterSeconds: 7200 })).toBe(false);
  });

  it('holds for a record without a time, and for one whose time cannot be read', () => {
    expect(isStale({ ...after4h, recordedAtMs: null })).toBe(true);
    expect(isStale({ ...after4h, recordedAtMs: Date.parse('this morning') })).toBe(true);
  });

  it('answers the same tomorrow: both moments are given', () => {
    const question = { ...after4h, recordedAtMs: NOON - HOUR };
    expect(isStale(question)).toBe(isStale(question));
  });
});

describe('unknownSetState', () => {
  it('knows nothing at all: not bare, not closed, not empty', () => {
    const { knowledge, ...rest } = unknownSetState;
    expect(Object.values(rest).every((value) => value === null)).toBe(true);
    expect(knowledge).toEqual({ basis: 'unknown', at: null, by: null, second: null });
  });
});
