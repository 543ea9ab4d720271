import { expect, it } from 'vitest';
import type { Voice } from '#texts';
import { aboutWords, headingWords } from './heading-words.ts';

const US: Voice = { words: 'US' };
const OTHER: Voice = {
  words: 'US',
  tongue: {
    language: 'de',
    decimalMark: ',',
    months: [],
    date: '',
    texts: {
      Name: 'Benennung',
      batten: 'Laststange',
      'Bricks: why': 'Gewichte: warum',
      'Bricks: {kind}': 'Gewichte: {kind}',
      'Trim: {name} ({reference})': 'Marke: {name} ({reference})',
      'Set {id}, {name}': 'Zug {id}, {name}',
    },
  },
};

it('calls a column in English as the file does', () => {
  const to = { is: 'trim', name: 'in', reference: 'batten' } as const;
  expect(headingWords({ words: 'UK' }, 'schedule', to)).toBe('Trim: in (batten)');
  expect(aboutWords(US, 'Set 5, Trim: in (batten)')).toBe('Set 5, Trim: in (batten)');
});

it('has words of another language for our columns, and none for names', () => {
  const trim = { is: 'trim', name: 'batten', reference: 'batten' } as const;
  expect(headingWords(OTHER, 'schedule', trim)).toBe('Marke: batten (Laststange)');
  expect(headingWords(OTHER, 'schedule', { is: 'field', field: 'name' })).toBe('Benennung');
  expect(headingWords(OTHER, 'schedule', { is: 'bricks', kind: 'F' })).toBe('Gewichte: F');
});

it.each([
  ['Set 5, Trim: in (batten)', 'Zug 5, Marke: in (Laststange)'],
  ['Set 5, Trim: in, late (batten)', 'Zug 5, Marke: in, late (Laststange)'],
  ['Set 5, Bricks: why', 'Zug 5, Gewichte: warum'],
  ['Set 5, Bricks: F', 'Zug 5, Gewichte: F'],
  ['Set 5, Name, first, Name', 'Zug 5, Name, first, Benennung'],
])('says what a change is about: %s', (about, said) => {
  expect(aboutWords(OTHER, about)).toBe(said);
});
