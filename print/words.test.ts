import { describe, expect, it } from 'vitest';
import type { Inline, Words } from '#sheets';
import { wordRuns } from './words.ts';

const box: Inline = { box: true };
const blank = (count: number): Inline => ({ blank: count });

const printed = (words: Words): string =>
  wordRuns(words)
    .map(({ text }) => (typeof text === 'string' ? text : ''))
    .join('');

describe('words on paper', () => {
  it('keeps a line to write on beside the word that it is for', () => {
    expect(printed(['Initials ', blank(3), ', tag ', blank(2)])).toBe(
      'Initials\u00a0___, tag\u00a0__',
    );
  });

  it('keeps a box beside the words that it is ticked for', () => {
    expect(printed(['Land it. ', box, ' Watch. ', box, { strong: ' Count. ' }])).toBe(
      'Land it. \u2610\u00a0Watch. \u2610\u00a0Count. ',
    );
  });

  it('breaks no code, and leaves every other hyphen', () => {
    expect(printed(['order YN0J-XYYD, pull-tested, 4\u2032-0 to 12'])).toBe(
      'order YN0J\u2011XYYD, pull-tested, 4\u2032-0 to 12',
    );
  });
});
