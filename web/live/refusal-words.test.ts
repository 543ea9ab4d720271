import { expect, it } from 'vitest';
import { EVENT_REFUSALS } from '#events';
import { refusalWords } from './refusal-words.ts';

const OF_COMMANDS = Object.values(EVENT_REFUSALS).filter(
  ({ code }) => (code >= 'EVT-002' && code <= 'EVT-007') || code === 'EVT-013',
);

it.each(OF_COMMANDS)('has the words of the record for $code', ({ code, meaning }) => {
  expect(OF_COMMANDS).toHaveLength(7);
  expect(refusalWords(code, '')).toBe(meaning);
});

it('says in the words of the server what this page does not know', () => {
  expect(refusalWords('LIV-099', 'a new reason')).toBe('a new reason');
});
