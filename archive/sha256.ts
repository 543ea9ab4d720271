/**
 * SHA-256 (FIPS 180-4, from memory; tried against Node's own), so that every room can tell whether
 * a file is whole. Not for secrets: only for damage.
 */

const WORDS = 64;

const isPrime = (n: number): boolean => {
  for (let d = 2; d * d <= n; d += 1) if (n % d === 0) return false;
  return n > 1;
};

const PRIMES = Array.from({ length: 312 }, (_, n) => n).filter(isPrime);

/** First 32 bits of the fraction of a root of a prime. */
const fraction = (root: number): number => Math.floor((root - Math.floor(root)) * 2 ** 32) | 0;

const START = PRIMES.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));
const ROUND = Int32Array.from(PRIMES.slice(0, WORDS), (prime) => fraction(Math.cbrt(prime)));

const turned = (x: number, by: number): number => (x >>> by) | (x << (32 - by));

/** The message with a one bit, zeros and its length in bits, in blocks of 64 bytes. */
const padded = (bytes: Uint8Array): Uint8Array => {
  const whole = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  whole.set(bytes);
  whole[bytes.length] = 0x80;
  const view = new DataView(whole.buffer);
  const bits = bytes.length * 8;
  view.setUint32(whole.length - 8, Math.floor(bits / 2 ** 32));
  view.setUint32(whole.length - 4, bits % 2 ** 32);
  return whole;
};

const fill = (words: Int32Array, view: DataView, from: number): void => {
  for (let t = 0; t < 16; t += 1) words[t] = view.getInt32(from + t * 4);
  for (let t = 16; t < WORDS; t += 1) {
    const [before, last] = [words[t - 15] ?? 0, words[t - 2] ?? 0];
    const small = turned(before, 7) ^ turned(before, 18) ^ (before >>> 3);
    const large = turned(last, 17) ^ turned(last, 19) ^ (last >>> 10);
    words[t] = ((words[t - 16] ?? 0) + small + (words[t - 7] ?? 0) + large) | 0;
  }
};

const round = (hash: readonly number[], words: Int32Array): readonly number[] => {
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = hash;
  for (let t = 0; t < WORDS; t += 1) {
    const sum1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const chosen = (e & f) ^ (~e & g);
    const first = (h + sum1 + chosen + (ROUND[t] ?? 0) + (words[t] ?? 0)) | 0;
    const sum0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const most = (a & b) ^ (a & c) ^ (b & c);
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + sum0 + most) | 0];
  }
  return [a, b, c, d, e, f, g, h].map((word, at) => (word + (hash[at] ?? 0)) | 0);
};

/** 64 signs of 0-9 a-f. */
export const sha256 = (bytes: Uint8Array): string => {
  const whole = padded(bytes);
  const view = new DataView(whole.buffer);
  const words = new Int32Array(WORDS);
  let hash: readonly number[] = START;
  for (let from = 0; from < whole.length; from += 64) {
    fill(words, view, from);
    hash = round(hash, words);
  }
  return hash.map((word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
};
