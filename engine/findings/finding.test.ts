import { describe, expect, it } from 'vitest';
import { LEVELS, worstLevel } from './finding.ts';
import { measure } from './measure.ts';

describe('worstLevel', () => {
  it('is the gravest, wherever it stands', () => {
    expect(worstLevel([{ level: 'note' }, { level: 'stop' }, { level: 'caution' }])).toBe('stop');
    expect(worstLevel([{ level: 'caution' }, { level: 'note' }])).toBe('caution');
    expect(worstLevel([{ level: 'note' }])).toBe('note');
  });

  it('is none among none', () => {
    expect(worstLevel([])).toBeNull();
  });

  it('goes by the order of the levels, gravest last', () => {
    expect(LEVELS).toEqual(['note', 'caution', 'stop']);
  });
});

describe('measure', () => {
  it('keeps a number with what it measures', () => {
    expect(measure(-12, 'imbalance')).toEqual({ value: -12, kind: 'imbalance' });
  });
});
