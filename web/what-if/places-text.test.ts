import { expect, it } from 'vitest';
import { placesFrom, placesText } from './places-text.ts';

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
