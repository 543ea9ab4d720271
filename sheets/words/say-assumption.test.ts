/** What an order takes for granted, in the words of either house. */
import { describe, expect, it } from 'vitest';
import type { Assumption } from '#orders';
import { openExample } from '../../examples/open-example.ts';
import { sayAssumption } from './say-assumption.ts';

const us = openExample('kestlemere').house;
const uk = openExample('skelderwick').house;

const CASES: readonly (readonly [Assumption, RegExp])[] = [
  [
    { is: 'recorded', set: '9', at: '2026-11-25T14:31:00Z', by: 'head flyperson' },
    /^Set 9 stands as recorded 25 Nov 2026, 14:31 UTC by head flyperson: look first\.$/,
  ],
  [{ is: 'onStop' }, /^The batten is recorded a hand past its stop; it is taken to stand on it\.$/],
  [{ is: 'saidBare', set: '9' }, /^Set 9 is taken to be bare .* because you said so .*count first/],
  [{ is: 'asPlanned', set: '9' }, /^Set 9 is taken to hang as the show plans it.*: look and count/],
  [{ is: 'asTheOrderWrites', set: '9' }, /^Set 9 stands as the order itself writes it/],
  [
    {
      is: 'bricksBack',
      set: '9',
      bricks: [
        { kind: 'F', count: 6 },
        { kind: 'H', count: 1 },
      ],
    },
    /^The record has 6 full, 1 half on the arbor of set 9: .* Bring them there and count them/,
  ],
  [
    { is: 'stockNotCounted', gallery: 'mid' },
    /^Mid loading gallery: no loose bricks are counted there, so none are taken\.$/,
  ],
  [
    { is: 'stockKept', gallery: 'mid', kept: [{ kind: 'F', count: 19, for: 'releasing D3' }] },
    /^Mid loading gallery: kept for other work and not taken: 19 full \(releasing D3\)\.$/,
  ],
  [{ is: 'steelWithPipeWeight', set: 'D3' }, /^Set D3 is to hang on steel with pipe weight only/],
  [
    { is: 'massesAsWritten', byN: 36 },
    /^MASSES ARE TAKEN AS THEY ARE WRITTEN\. WEIGH OR PULL-TEST FIRST: .* short by 9.lbf\.$/,
  ],
  [
    { is: 'noRestraintIfWeighed' },
    /^The restraint is asked for because masses may be .*none is needed: weigh or pull-test/,
  ],
  [{ is: 'massesAsWritten', byN: null }, /no order was found\.$/],
];

describe('what is taken for granted', () => {
  it.each(CASES)('%j', (assumption, words) => {
    expect(sayAssumption(assumption, us)).toMatch(words);
  });

  it.each(CASES)('%j, to a UK house', (assumption) => {
    const said = sayAssumption(assumption, uk);
    expect(said).not.toMatch(/\b(battens?|arbors?|bricks?|deck|strike|pipe weight|lbf?)\b/i);
    expect(said).not.toMatch(/[{}]/);
  });
});
