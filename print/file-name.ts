/** Names of files that every system takes, no two sheets of one house under the same. */
import type { Sheet } from '#sheets';

/** One sign of its own for each letter that a file name had better not hold. */
const spelled = (letter: string): string => `_${(letter.codePointAt(0) ?? 0).toString(16)}_`;

const plain = (text: string): string => text.replace(/[^A-Za-z0-9-]/gu, spelled);

/** The word of the frame, so that a file of the demo is not taken for a real one. */
const frameWord = (frame: string | null): string => {
  const word = frame?.split(':')[0]?.trim().toLowerCase().replaceAll(' ', '-') ?? '';
  return word === '' ? '' : `${plain(word)}-`;
};

/** `demo-balance-card-11.pdf`, `schedule.csv`. Only the first `/` of an id parts kind and set. */
export const fileNameOf = (
  { id, frame }: Pick<Sheet, 'id' | 'frame'>,
  extension: 'pdf' | 'csv',
): string => {
  const [kind = '', ...rest] = id.split('/');
  const names = rest.length === 0 ? [kind] : [kind, rest.join('/')];
  return `${frameWord(frame)}${names.map(plain).join('-')}.${extension}`;
};
