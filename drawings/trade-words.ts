/** The trade's words come from one list for drawings, sheets and screens. */
export { heavySide, type TradeWord, tradeWord } from '#texts';
