/** What the screens say, in the language of the device and the words of the house. */
import { createContext, useContext, useMemo } from 'react';
import { ENGLISH, type Language, type Names, phrase, phraseCount, type Voice } from '#texts';

export type Spoken = {
  readonly language: Language;
  readonly voice: Voice;
  readonly choose: (language: Language) => void;
};

export const SpokenContext = createContext<Spoken>({
  language: 'en',
  voice: ENGLISH,
  choose: () => undefined,
});

export const useSpoken = (): Spoken => useContext(SpokenContext);

export const useVoice = (): Voice => useSpoken().voice;

/** `tell('Set {id}', { id })`. */
export const useTell = (): ((text: string, names?: Names) => string) => {
  const voice = useVoice();
  return useMemo(() => (text, names) => phrase(voice, text, names), [voice]);
};

type Pair = readonly [one: string, other: string];

/** `tellCount(2, ['{count} row', '{count} rows'])`. */
export const useTellCount = (): ((count: number, pair: Pair, names?: Names) => string) => {
  const voice = useVoice();
  return useMemo(() => (count, pair, names) => phraseCount(voice, count, pair, names), [voice]);
};
