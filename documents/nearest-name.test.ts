import { describe, expect, it } from 'vitest';
import { nearestName } from './nearest-name.ts';

describe('the nearest name', () => {
  const names = ['lowStop', 'highStop', 'lines', 'lineLimit'];

  it.each([
    ['lowstop', 'lowStop'],
    ['hihgStop', 'highStop'],
    ['line', 'lines'],
    ['linelimits', 'lineLimit'],
  ])('of %s is %s', (written, meant) => {
    expect(nearestName(written, names)).toBe(meant);
  });

  it('is none for another word', () => {
    expect(nearestName('colour', names)).toBeUndefined();
    expect(nearestName('x'.repeat(1e6), names)).toBeUndefined();
    expect(nearestName('lowStop', [])).toBeUndefined();
  });
});
