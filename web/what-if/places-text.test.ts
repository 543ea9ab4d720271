import { expect, it } from 'vitest';
import type { Tongue } from '#texts';
import { placesFrom, placesText, readPlaces, shownPlaces } from './places-text.ts';

it.each([
  ['-20 ft to 20 ft', { from: '-20 ft', to: '20 ft' }],
  ['-4.5 ft; 4.5 ft', { points: ['-4.5 ft', '4.5 ft'] }],
  ['2 m', { points: ['2 m'] }],
])('reads %s as it writes it', (text, placement) => {
  expect(placesFrom(text)).toEqual(placement);
  expect(placesText(placement)).toBe(text);
});

it('takes a place away where nothing is typed, and lets the documents judge the rest', () => {
  expect(placesFrom('  ')).toBeUndefined();
  expect(placesText(undefined)).toBe('');
  expect(placesFrom('somewhere')).toEqual({ points: ['somewhere'] });
});

const texts = { '{from} to {to}': '{from} bis {to}' };
const tongue: Tongue = { language: 'de', decimalMark: ',', months: [], date: '', texts };
const OTHER = { words: 'US', tongue } as const;

it.each([
  ['-20.5 ft to 20 ft', '-20,5 ft bis 20 ft'],
  ['-4.5 ft; 4.5 ft', '-4,5 ft; 4,5 ft'],
  ['', ''],
])('shows and reads %s in another language', (written, shown) => {
  expect(shownPlaces(written, OTHER)).toBe(shown);
  expect(readPlaces(shown, OTHER)).toEqual({ ok: true, value: written });
  expect(readPlaces(written, { words: 'US' })).toEqual({ ok: true, value: written });
});

it('takes the English word as well, and refuses what is no length', () => {
  expect(readPlaces('1,5 m to 2 m', OTHER)).toEqual({ ok: true, value: '1.5 m to 2 m' });
  expect(readPlaces('1,5 m, 2 m', OTHER).ok).toBe(false);
});
