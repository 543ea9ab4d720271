import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeUtf8 } from './utf8.ts';

const SEED = 20_261_128;

/** The decoder of the machine, in its strict mode, as the oracle (WHATWG Encoding). */
const theirs = (bytes: Uint8Array): string | null => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
};

const ours = (bytes: Uint8Array): string | null => {
  const read = decodeUtf8(bytes);
  return read.ok ? read.text : null;
};

describe('UTF-8', () => {
  it(`reads texts as the decoder of the machine does (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 20 }), (text) => {
        const bytes = new TextEncoder().encode(text);
        expect(ours(bytes)).toBe(theirs(bytes));
      }),
      { seed: SEED },
    );
  });

  it(`refuses bytes that the decoder of the machine refuses (seed ${SEED})`, () => {
    const edges = fc.constantFrom(
      ...[0, 0x41, 0x7f, 0x80, 0x8f, 0x90, 0x9f, 0xa0, 0xbf, 0xc0, 0xc1, 0xc2, 0xdf],
      ...[0xe0, 0xe1, 0xed, 0xef, 0xf0, 0xf1, 0xf4, 0xf5, 0xff],
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 4 }), fc.array(edges, { maxLength: 5 }), (a, b) => {
        const bytes = new Uint8Array([...a, ...b]);
        expect(ours(bytes)).toBe(theirs(bytes));
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it('drops a byte order mark, and says where it stops', () => {
    expect(decodeUtf8(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]))).toEqual({ ok: true, text: 'a' });
    expect(decodeUtf8(new Uint8Array([0x61, 0xe9, 0x62]))).toEqual({ ok: false, at: 1 });
  });
});
