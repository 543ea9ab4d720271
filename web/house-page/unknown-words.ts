/**
 * What is unknown and what waits for it, as the reader's language says it. English has the sentence
 * of the documents; another language makes its own of the same parts.
 */
import type { Unknown } from '#documents';
import { phrase, told, type Voice } from '#texts';

export const unknownWords = ({ what, parts }: Unknown, voice: Voice): string => {
  if (voice.tongue === undefined) return what;
  const { field, owner, why } = parts;
  const said = told(voice, field);
  return phrase(voice, '{field} of {owner}{why}', {
    field: said === field ? phrase(voice, field) : said,
    owner: phrase(voice, owner.says, owner.names),
    why,
  });
};

export const blockedWords = (blocks: string, voice: Voice): string =>
  voice.tongue === undefined ? blocks : phrase(voice, blocks);
