import { describe, expect, it } from 'vitest';
import type { Finding, Working } from '#findings';
import { measure } from '#findings';
import { FOOT, POUND, POUND_FORCE } from '#quantities';
import { judge, RULES } from '#rules';
import { openExample } from '../../examples/open-example.ts';
import { inHouseWords, sayFinding, sayMeasure, sayMoment, sayWorking } from '../index.ts';

const kestlemere = openExample('kestlemere');
const skelderwick = openExample('skelderwick');
const us = kestlemere.house;
const uk = { ...us, words: 'UK' as const };
const NOW_MS = Date.parse('2026-11-25T18:55:00Z');

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

const finding: Finding = {
  code: 'BAL-001',
  level: 'stop',
  at: { set: '11' },
  measured: measure(-320.9 * POUND_FORCE, 'imbalance'),
  limit: measure(50 * POUND_FORCE, 'force'),
  limitSource: 'house rule',
  facts: { trim: 'batten in', height: measure(23 * FOOT, 'length') },
  working: null,
};

describe('the sentence of a finding', () => {
  it('is its rule with the numbers put in, loads up and limits down', () => {
    expect(plain(sayFinding(finding, us).sentence)).toBe(
      'At trim batten in, 23\'-0": 321 lb arbor heavy. The lock may hold 50 lbf.',
    );
    expect(sayFinding(finding, us).word).toBe('Danger');
  });

  it('speaks UK to a UK house, and leaves the names that people gave', () => {
    expect(plain(sayFinding(finding, uk).sentence)).toBe(
      'At dead batten in, 23\'-0": 321 lb cradle heavy. The lock may hold 50 lbf.',
    );
  });

  it('refuses to go out with a hole in it, and for a rule that nobody declared', () => {
    expect(() => sayFinding({ ...finding, facts: {} }, us)).toThrow(/says \{trim\}/);
    expect(() => sayFinding({ ...finding, code: 'XXX-999' }, us)).toThrow(/declared/);
  });

  it('can be made for everything that the rules say of both examples', () => {
    for (const { house, show, state, assessment } of [kestlemere, skelderwick]) {
      const findings = judge(house, show, state, assessment, { nowMs: NOW_MS });
      expect(findings.length).toBeGreaterThan(20);
      for (const each of findings) {
        const { sentence, title } = sayFinding(each, house);
        expect(sentence).not.toMatch(/[{}]|undefined|NaN/);
        expect(sentence).not.toMatch(/(^|\s)[-\u2212+]\s?[\d.]+\s(lb|kg)\b/);
        expect(title).not.toBe('');
        if (house.words === 'UK') expect(title).not.toMatch(/\b(batten|arbor|brick|deck)\b/i);
      }
    }
  });

  it('has words for every placeholder of a rule only in braces', () => {
    for (const { says } of RULES)
      expect(inHouseWords(says, uk).match(/\{/g)).toEqual(says.match(/\{/g));
  });
});

describe('our sentences in the words of the house', () => {
  it('turn whole words, longest first, capitals kept', () => {
    expect(inHouseWords('Pipe weight on the arbor; brick by brick to the deck', uk)).toBe(
      'Bar weight on the cradle; weight by weight to the stage',
    );
    expect(inHouseWords('trimming the strike-through', uk)).toBe('trimming the get-out-through');
    expect(inHouseWords('Pipe weight', us)).toBe('Pipe weight');
  });

  it('leave what is in braces', () => {
    expect(inHouseWords('trim {trim}', uk)).toBe('dead {trim}');
  });
});

describe('a measure in words', () => {
  it('never rounds an imbalance down, save where parts must add up', () => {
    const slight = measure(24.2 * POUND_FORCE, 'imbalance');
    expect(plain(sayMeasure(slight, us))).toBe('25 lb batten heavy');
    expect(plain(sayMeasure(slight, us, { round: 'down' }))).toBe('25 lb batten heavy');
    expect(plain(sayMeasure(slight, us, { style: 'fine' }))).toBe('24 lb batten heavy');
  });

  it('speaks the units of the house', () => {
    expect(plain(sayMeasure(measure(35 * POUND, 'mass'), us))).toBe('35 lb');
    expect(plain(sayMeasure(measure(12.6, 'mass'), skelderwick.house))).toBe('12.6 kg');
  });
});

describe('a duration in words', () => {
  const said = (seconds: number, round: 'up' | 'down') =>
    plain(sayMeasure(measure(seconds, 'duration'), us, { round }));

  it('is days from a month on', () => {
    expect(said(365 * 86_400, 'down')).toBe('365 days');
    expect(said(30 * 86_400 + 1, 'up')).toBe('31 days');
    expect(said(30 * 86_400 + 1, 'down')).toBe('30 days');
    expect(said(30 * 86_400 - 60, 'down')).toBe('719 h 59 min');
  });

  it('is hours and minutes from an hour on, an age rounded up and a limit down', () => {
    expect(said(4 * 3600, 'down')).toBe('4 h');
    expect(said(5.67 * 3600, 'up')).toBe('5 h 41 min');
    expect(said(4 * 3600 + 0.001, 'up')).toBe('4 h 1 min');
    expect(said(4 * 3600 + 59, 'down')).toBe('4 h');
  });
});

describe('a working in words', () => {
  const working: Working = {
    title: 'Imbalance at out trim',
    formula: 'B + C + W − A / 2',
    terms: [
      { symbol: 'B', meaning: 'batten with its fittings', value: measure(169 * POUND, 'mass') },
      { symbol: 'C', meaning: 'what hangs', value: null },
      { symbol: 'W', meaning: 'lift lines', value: measure(-35 * POUND, 'mass') },
      { symbol: 'A', meaning: 'whole arbor', value: measure(798.5 * POUND, 'mass'), source: 's' },
    ],
    result: { symbol: 'U', meaning: 'imbalance', value: null },
    limit: { value: measure(50 * POUND_FORCE, 'force'), source: 'house rule' },
    source: 'statics of a batten',
    omits: 'friction',
  };

  it('is the formula twice, as symbols and with numbers, and no sign after a sign', () => {
    const said = sayWorking(working, us);
    expect(said.symbols).toBe('U = B + C + W − A / 2');
    expect(plain(said.numbers)).toBe('U = 169 lb + unknown − 35 lb − 798 1/2 lb / 2');
    expect(said.result).toBe('unknown');
    expect(plain(said.limit ?? '')).toBe('limit 50.0 lbf (house rule)');
    expect(said.terms.map(({ value }) => plain(value))).toEqual([
      '169 lb',
      'unknown',
      'less 35 lb',
      '798 1/2 lb',
    ]);
  });

  it('turns a minus before a part below nothing into a plus', () => {
    const formula = 'B − W';
    expect(plain(sayWorking({ ...working, formula }, us).numbers)).toBe('U = 169 lb + 35 lb');
  });

  it('goes out in the words of the house', () => {
    const said = sayWorking(working, uk);
    expect(said.title).toBe('Imbalance at out dead');
    expect(said.terms[0]?.meaning).toBe('bar with its fittings');
    expect(said.source).toBe('statics of a bar');
  });
});

describe('a moment in words', () => {
  it('is the clock that was written, with UTC where it was written for Greenwich', () => {
    expect(sayMoment('2026-11-25T18:55:07+01:00')).toBe('25 Nov 2026, 18:55');
    expect(sayMoment('2026-11-05T08:05:00Z')).toBe('5 Nov 2026, 08:05 UTC');
    expect(sayMoment('2026-11-05T08:05:00.123Z')).toBe('5 Nov 2026, 08:05 UTC');
    expect(sayMoment('2026-11-05')).toBe('5 Nov 2026');
  });

  it('is left alone where it is no date', () => {
    expect(sayMoment('last spring')).toBe('last spring');
    expect(sayMoment('2026-13-05')).toBe('2026-13-05');
  });
});
