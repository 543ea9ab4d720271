import { describe, expect, it } from 'vitest';
import { momentToJudge } from './moment-to-judge.ts';

const record = { at: '2026-11-25T14:31:00Z' };
const RECORDED = Date.UTC(2026, 10, 25, 14, 31);
const CLOCK = Date.UTC(2030, 0, 1);

describe('the moment at which records are judged', () => {
  it('of an invented house is the hour of its record', () => {
    expect(momentToJudge({ demo: true }, record, CLOCK)).toBe(RECORDED);
  });

  it('of a real house is the clock, and so it is where no record has a time', () => {
    expect(momentToJudge({ demo: false }, record, CLOCK)).toBe(CLOCK);
    expect(momentToJudge({ demo: true }, null, CLOCK)).toBe(CLOCK);
    expect(momentToJudge({ demo: true }, { at: 'yesterday' }, CLOCK)).toBe(CLOCK);
  });
});
