/** The languages that there is a catalogue for, each by its tag (BCP 47) and its own name. */
export const LANGUAGES = [
  { language: 'en', name: 'English' },
  { language: 'de', name: 'Deutsch' },
] as const;

export type Language = (typeof LANGUAGES)[number]['language'];

/** Undefined where no language has that tag. */
export const languageOf = (tag: string | null | undefined): Language | undefined =>
  LANGUAGES.find(({ language }) => language === tag)?.language;
