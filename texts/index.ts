export { LANGUAGES, type Language, languageOf } from './languages.ts';
export { inVoice, message, type Names, phrase, phraseCount, pluralKey } from './phrase.ts';
export { told, toldEach, toldRuns } from './told.ts';
export {
  heavySide,
  imbalanceWords,
  TRADE_WORDS,
  type TradeWord,
  tradeWord,
} from './trade-words.ts';
export { ENGLISH, type Plural, type Tongue, type Voice } from './voice.ts';
