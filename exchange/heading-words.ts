/**
 * Our columns as a person reads them. In English they are called as in the file; another language
 * has words for them on the screen, and the file keeps its headings.
 */
import { unreachable } from '#outcome';
import { inVoice, phrase, type Voice } from '#texts';
import { REFERENCE_WORDS, type TableName } from './fields.ts';
import { headingOf, type Target } from './mapping.ts';

export const headingWords = (voice: Voice, table: TableName, to: Target): string => {
  if (voice.tongue === undefined) return headingOf(table, to);
  switch (to.is) {
    case 'field':
      return inVoice(voice, headingOf(table, to));
    case 'trim': {
      const reference = inVoice(voice, REFERENCE_WORDS[to.reference]);
      return phrase(voice, 'Trim: {name} ({reference})', { name: to.name, reference });
    }
    case 'bricks':
      return phrase(voice, 'Bricks: {kind}', { kind: to.kind });
    default:
      return unreachable(to);
  }
};

const TRIM = /^Trim: (?<name>.+) \((?<reference>[a-z ]+)\)$/;

/** The name of a column behind the name of an item, if any; both without commas of ours. */
const columnWords = (voice: Voice, said: string): string => {
  const trim = TRIM.exec(said)?.groups;
  if (trim !== undefined) {
    const reference = inVoice(voice, trim['reference'] ?? '');
    return phrase(voice, 'Trim: {name} ({reference})', { name: trim['name'] ?? '', reference });
  }
  const heading = inVoice(voice, said);
  const kind = /^Bricks: (.+)$/.exec(said)?.[1];
  return heading === said && kind !== undefined
    ? phrase(voice, 'Bricks: {kind}', { kind })
    : heading;
};

/** What a change is about, as `Set 5, Trim: in (batten)`, with our words in those of the voice. */
export const aboutWords = (voice: Voice, about: string): string => {
  const [, id, rest = ''] = /^Set ([^,]+), (.*)$/s.exec(about) ?? [];
  if (voice.tongue === undefined || id === undefined) return about;
  const at = TRIM.test(rest) ? 0 : rest.lastIndexOf(', ') + 1;
  const item = at === 0 ? '' : `${rest.slice(0, at)} `;
  const name = `${item}${columnWords(voice, rest.slice(at).trimStart())}`;
  return phrase(voice, 'Set {id}, {name}', { id, name });
};
