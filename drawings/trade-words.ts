/** The trade's words in the house's country: the one list for drawings, sheets and screens. */
import type { House } from '#house';

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

type Country = { readonly words: House['words'] };

export const tradeWord = ({ words }: Country, word: TradeWord): string =>
  WORDS[word][words === 'US' ? 0 : 1];

/** Which side is heavy, in words; the one place where the sign of U is read. */
export const heavySide = (house: Country, imbalanceN: number): string =>
  tradeWord(house, imbalanceN > 0 ? 'battenHeavy' : 'arborHeavy');
