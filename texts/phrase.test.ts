import { describe, expect, it } from 'vitest';
import { message, phrase, phraseCount, pluralKey, type Tongue, tradeWord } from './index.ts';

const US = { words: 'US' } as const;
const UK = { words: 'UK' } as const;
const tongue: Tongue = {
  language: 'de',
  decimalMark: ',',
  months: [],
  date: '',
  texts: {
    'the batten at {at}': 'die Laststange auf {at}',
    batten: 'Laststange',
    [pluralKey('{count} state', '{count} states')]: {
      by: 'count',
      forms: { one: '{count} Zustand', other: '{count} Zustände' },
    },
  },
};
const GERMAN = { ...US, tongue };

describe('a sentence', () => {
  it('is its English text in the words of the house, and names are never turned', () => {
    const names = { at: 'the deck' };
    expect(phrase(US, 'the batten at {at}', names)).toBe('the batten at the deck');
    expect(phrase(UK, 'the batten at {at}', names)).toBe('the bar at the deck');
    expect(phrase(GERMAN, 'the batten at {at}', names)).toBe('die Laststange auf the deck');
  });

  it('stays English where a tongue has none, and fills its holes', () => {
    expect(phrase(GERMAN, '{n} not there', { n: 2 })).toBe('2 not there');
  });

  it('with a hole that nothing fills is a defect', () => {
    expect(() => phrase(US, 'at {at}')).toThrow('{at}');
  });

  it('is chosen by its number', () => {
    const pair = ['{count} state', '{count} states'] as const;
    expect([0, 1, 2].map((n) => phraseCount(US, n, pair))).toStrictEqual([
      '0 states',
      '1 state',
      '2 states',
    ]);
    expect([0, 1, 2].map((n) => phraseCount(GERMAN, n, pair))).toStrictEqual([
      '0 Zustände',
      '1 Zustand',
      '2 Zustände',
    ]);
  });

  it('that is marked is the text itself', () => {
    expect(message('not known')).toBe('not known');
  });
});

describe('a word of the trade', () => {
  it('is American, British or the tongue’s', () => {
    expect(tradeWord(US, 'batten')).toBe('batten');
    expect(tradeWord(UK, 'batten')).toBe('bar');
    expect(tradeWord(GERMAN, 'batten')).toBe('Laststange');
  });

  it('turns in a sentence as it turns alone', () => {
    // `rail` alone is the British fly rail; in a sentence the rail is what it is.
    const same = ['lineSet', 'batten', 'liftLine', 'arbor', 'brick', 'pipeWeight', 'handLine'];
    for (const word of [...same, 'deck', 'plasterLine', 'trim', 'loadIn', 'strike'] as const) {
      const name = word as Parameters<typeof tradeWord>[1];
      expect(phrase(UK, tradeWord(US, name))).toBe(tradeWord(UK, name));
    }
  });
});
