/** Sentences are written in the US words of the trade; each house reads its own. */
import { inVoice, type Voice } from '#texts';

/** Our own sentence in the words of the house. Names that people gave are never put through it. */
export const inHouseWords = (sentence: string, voice: Voice): string => inVoice(voice, sentence);
