/** The language that a person reads: chosen on this device, English until then. */
import { type Language, languageOf } from '#texts';

const KEY = 'counterpoise.language';

export const languageOfDevice = (): Language => {
  try {
    return languageOf(localStorage.getItem(KEY)) ?? 'en';
  } catch {
    // A device that keeps nothing starts in English each time.
    return 'en';
  }
};

export const keepLanguage = (language: Language): void => {
  try {
    localStorage.setItem(KEY, language);
  } catch {
    // It holds until the page is closed.
  }
};
