import { describe, expect, it } from 'vitest';
import { readTyped, shownText } from './typed-marks.ts';

describe('a measure typed where a comma is the decimal mark', () => {
  it.each([
    ['mass', '12,5 kg', '12.5 kg'],
    ['mass', '12.5 kg', '12.5 kg'],
    ['length', '7,480 m', '7.480 m'],
    ['length', '24\'-6 1/2"', '24\'-6 1/2"'],
    ['length', '', ''],
  ] as const)('goes into the document with a point: a %s of "%s"', (dimension, typed, written) => {
    expect(readTyped(dimension, typed, ',')).toStrictEqual({ ok: true, value: written });
  });

  it.each([
    ['mass', '1,250 kg', 'QTY-011'],
    ['mass', '1,250 lb', 'QTY-011'],
    ['length', '7.480 m', 'QTY-023'],
  ] as const)('is refused where it reads two ways: a %s of "%s"', (dimension, typed, code) => {
    expect(readTyped(dimension, typed, ',')).toMatchObject({ ok: false, error: { code } });
  });

  it('is shown with a comma, and read back the same', () => {
    for (const written of ['7.480 m', '12.5 kg', '40 lb', '24\'-6 1/2"']) {
      const shown = shownText(written, ',');
      expect(shown).not.toContain('.');
      expect(readTyped(/m$|"$/.test(written) ? 'length' : 'mass', shown, ',')).toStrictEqual({
        ok: true,
        value: written,
      });
    }
  });
});

describe('a measure typed in English', () => {
  it('goes on as it is, for the document to judge', () => {
    expect(readTyped('mass', '1,250 kg', '.')).toStrictEqual({ ok: true, value: '1,250 kg' });
    expect(shownText('7.480 m', '.')).toBe('7.480 m');
  });
});
