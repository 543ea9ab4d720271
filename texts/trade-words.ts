/** The trade's words in the house's country: the one list for drawings, sheets and screens. */
import type { ImbalanceWords } from '#quantities';
import { inVoice } from './phrase.ts';
import type { Voice } from './voice.ts';

/** US, UK. */
const WORDS = {
  lineSet: ['line set', 'flying set'],
  set: ['set', 'set'],
  batten: ['batten', 'bar'],
  liftLine: ['lift line', 'suspension wire'],
  arbor: ['arbor', 'cradle'],
  brick: ['brick', 'weight'],
  bricks: ['bricks', 'weights'],
  pipeWeight: ['pipe weight', 'bar weight'],
  spreader: ['spreader plate', 'spreader'],
  handLine: ['hand line', 'hauling line'],
  rail: ['rail', 'fly rail'],
  deck: ['deck', 'stage'],
  plasterLine: ['plaster line', 'setting line'],
  trim: ['trim', 'dead'],
  deadHung: ['dead-hung', 'fixed'],
  schedule: ['line set schedule', 'hanging plot'],
  loadIn: ['load-in', 'fit-up'],
  strike: ['strike', 'get-out'],
  battenHeavy: ['batten heavy', 'bar heavy'],
  arborHeavy: ['arbor heavy', 'cradle heavy'],
  inBalance: ['in balance', 'in balance'],
} as const;

export type TradeWord = keyof typeof WORDS;

/** A tongue has one set of trade words, under the US ones. */
export const tradeWord = (voice: Voice, word: TradeWord): string => {
  const [us, uk] = WORDS[word];
  const { words, tongue } = voice;
  if (tongue !== undefined) return inVoice(voice, us);
  return words === 'US' ? us : uk;
};

/** Every US word, as the catalogues have them. */
export const TRADE_WORDS: readonly string[] = [...Object.values(WORDS).map(([us]) => us), 'under'];

/** Which side is heavy, in words; the one place where the sign of U is read. */
export const heavySide = (voice: Voice, imbalanceN: number): string =>
  tradeWord(voice, imbalanceN > 0 ? 'battenHeavy' : 'arborHeavy');

/** For an imbalance: its sides, and what is said of one too small to be printed. */
export const imbalanceWords = (voice: Voice): ImbalanceWords => ({
  batten: tradeWord(voice, 'battenHeavy'),
  arbor: tradeWord(voice, 'arborHeavy'),
  under: inVoice(voice, 'under'),
});
