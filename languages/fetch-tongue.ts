/** Fetches a language when somebody chooses it: until then it costs nobody anything. */
import type { Language, Tongue } from '#texts';

/** Undefined for English, which stands in the code itself. */
export const fetchTongue = async (language: Language): Promise<Tongue | undefined> =>
  language === 'de' ? (await import('./german.ts')).german : undefined;
