/** Which passphrases and PINs are too easy to guess. Length counts; no kind of sign is asked. */

export const PASSPHRASE_MIN = 12;
export const PASSPHRASE_MAX = 200;
const DIFFERENT_MIN = 6;

/** Words that stand about in every house; a passphrase of these and figures alone is a guess. */
const AT_HAND = [
  'counterpoise',
  'counterweight',
  'password',
  'passphrase',
  'passwort',
  'theatre',
  'theater',
  'stage',
  'buehne',
  'batten',
  'arbor',
  'flyman',
  'qwerty',
  'qwertz',
  'abcdef',
] as const;

/** What is wrong with a passphrase, in words; null where nothing is. */
export const plainPassphrase = (passphrase: string, name: string): string | null => {
  const length = [...passphrase].length;
  if (length < PASSPHRASE_MIN) return `${length} characters`;
  const plain = passphrase.toLowerCase();
  if (new Set(plain).size < DIFFERENT_MIN) return 'the same few characters';
  const words = [
    ...AT_HAND,
    ...name
      .toLowerCase()
      .split(/\s+/)
      .filter((part) => part.length > 2),
  ];
  const rest = words.reduce((left, word) => left.replaceAll(word, ''), plain);
  const own = rest.replaceAll(/[\d\s\p{P}]/gu, '');
  return own.length < 5 ? 'words that are at hand, and little else' : null;
};

export const PIN_ACCEPTED = '6 to 12 figures, neither all alike nor in a row';

export const plainPin = (pin: string): string | null => {
  if (!/^\d{6,12}$/.test(pin)) return 'not 6 to 12 figures';
  const steps = new Set(
    [...pin].slice(1).map((figure, at) => (Number(figure) - Number(pin[at]) + 10) % 10),
  );
  return steps.size === 1 ? 'figures alike, or in a row' : null;
};
