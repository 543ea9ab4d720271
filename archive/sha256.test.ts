import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { sha256 } from './sha256.ts';

const SEED = 20_261_128;

describe('SHA-256', () => {
  // Examples of FIPS 180-4 as NIST publishes them (from memory): "abc", and one of two blocks.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of %j is as published', (text, hash) => {
    expect(sha256(strToU8(text))).toBe(hash);
  });

  it(`agrees with Node's own on bytes of every length about a block (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(sha256(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
      }),
      { seed: SEED },
    );
  });
});
