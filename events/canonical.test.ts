import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from './canonical.ts';
import { sha256OfText, sha256OfValue } from './chain.ts';

const SEED = 20_261_128;

const double = (hex: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hex}`));
  return view.getFloat64(0);
};

describe('canonical JSON', () => {
  // RFC 8785, section 3.2.2, with its bytes in section 3.2.4 (found, in the author's repository).
  it('writes literals, texts and numbers as the RFC shows', () => {
    const input = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    expect(canonicalJson(JSON.parse(input))).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
        String.raw`"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  // RFC 8785, section 3.2.3: names in the order of their UTF-16 code units (found, as above).
  it('sorts names as the RFC shows', () => {
    const input = String.raw`{"\u20ac": "Euro Sign", "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"}`;
    expect(Object.values(JSON.parse(canonicalJson(JSON.parse(input))))).toEqual([
      // A number as a name comes first in an object of ECMAScript, whatever the text said.
      'One',
      'Carriage Return',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
    expect(canonicalJson(JSON.parse(input))).toMatch(/^\{"\\r":"Carriage Return","1":"One",/);
  });

  // Samples of the test data that RFC 8785, appendix B refers to (found).
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['4340000000000001', '9007199254740994'],
    ['4340000000000002', '9007199254740996'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ])('writes the double %s as %s', (hex, written) => {
    expect(canonicalJson(double(hex))).toBe(written);
  });

  it('refuses what no JSON carries', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, undefined, () => 1, '\ud83d', 10n]) {
      expect(() => canonicalJson({ value })).toThrow('defect');
    }
  });

  it(`is one text for one value, whatever the order of its fields (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 3 }), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(turnedRound(value))).toBe(text);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
      { seed: SEED },
    );
  });
});

const turnedRound = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turnedRound);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, each]) => [name, turnedRound(each)]),
  );
};

describe('SHA-256', () => {
  // NIST, SHA256.pdf ("abc") and SHA2_Additional.pdf (zeros, As); the two blocks of FIPS 180-2.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['\0'.repeat(55), '02779466cdec163811d078815c633f21901413081449002f24aa3e80f0b88ef7'],
    ['\0'.repeat(56), 'd4817aa5497628e7c77e6b606107042bbba3130888c5f47a375e6179be789fbb'],
    ['\0'.repeat(57), '65a16cb7861335d5ace3c60718b5052e44660726da4cd13bb745381b235a1785'],
    ['\0'.repeat(64), 'f5a5fd42d16a20302798ef6ed309979b43003d2320d9f0e8ea9831a92759fb4b'],
    ['A'.repeat(1000), 'c2e686823489ced2017f6059b8b239318b6364f6dcd835d0a519105a1eadd6e4'],
    // RFC 6234, section 8.5: a million times "a".
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('is as published (%#)', (text, hash) => {
    expect(sha256OfText(text)).toBe(hash);
  });

  it('of a value is that of its canonical text', () => {
    expect(sha256OfValue({ b: 1, a: 2 })).toBe(sha256OfText('{"a":2,"b":1}'));
  });
});
