/**
 * What the making of an archive says of itself, in the language of the screen. It writes English
 * into the archive, for whoever opens it; the same words are read here.
 */
import { inVoice, message, phrase, type Voice } from '#texts';

const WITH_NAMES: readonly (readonly [RegExp, string])[] = [
  [/^Sheets of (?<name>.*)$/s, message('Sheets of {name}')],
  [/^sheets of (?<name>.*)$/s, message('sheets of {name}')],
  [/^sheet (?<id>.*)$/s, message('sheet {id}')],
  [/^tables and drawings of (?<name>.*)$/s, message('tables and drawings of {name}')],
  [/^the server answered (?<status>\d+)$/, message('the server answered {status}')],
  [
    /^the server answered (?<status>\d+) to (?<path>\S*)$/,
    message('the server answered {status} to {path}'),
  ],
];

export const sayGathered = (voice: Voice, text: string): string => {
  for (const [pattern, sentence] of WITH_NAMES) {
    const names = pattern.exec(text)?.groups;
    if (names !== undefined) return phrase(voice, sentence, { ...names });
  }
  return inVoice(voice, text);
};
