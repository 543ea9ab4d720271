export { heavySide, type TradeWord, tradeWord } from '#drawings';
export type { CodeAnswer } from './all-sheets.ts';
export { allSheets, answerCode, SELF_CHECK_ID, sheetIds, sheetOf } from './all-sheets.ts';
export type { SheetContext } from './context.ts';
export { sheetContext } from './context.ts';
export { orderCode } from './order-code.ts';
export { BODY_WIDTH } from './page-parts.ts';
export { loadingSheet } from './pages/loading-sheet.ts';
export { checkedWords } from './pages/order-blocks.ts';
export {
  type BesideCell,
  type BesideRow,
  type OrdersBeside,
  orderCells,
  orderSummary,
  ordersBeside,
} from './pages/orders-beside.ts';
export { selfCheckSheet } from './pages/self-check.ts';
export { strikeSheet } from './pages/strike-sheet.ts';
export { sheetAddress } from './qr-drawing.ts';
export { SHEET_REFUSALS } from './refusal-codes.ts';
export { failedOf } from './rests-on.ts';
export type {
  Block,
  Column,
  Columns,
  DrawingBlock,
  Heading,
  InkLines,
  Inline,
  List,
  Notice,
  Paragraph,
  Proofs,
  Row,
  Sheet,
  SheetData,
  SheetKind,
  Stamp,
  Table,
  Tickets,
  Words,
} from './sheet.ts';
export { SHEET_KINDS } from './sheet.ts';
export { sameCode, sheetCode } from './sheet-code.ts';
export { filled } from './words/fill-words.ts';
export { sayAssumption } from './words/say-assumption.ts';
export { sayBearing } from './words/say-bearing.ts';
export { energySize, energyWords, fallWords } from './words/say-energy.ts';
export { levelWord, type SaidFinding, sayFinding } from './words/say-finding.ts';
export { type SayOptions, sayMeasure } from './words/say-measure.ts';
export { sayMoment } from './words/say-moment.ts';
export { sayPlan } from './words/say-plan.ts';
export {
  CALCULATION_WORDS,
  SELF_CHECK_CAUTION,
  SELF_CHECK_FAILED,
  sayError,
  sayFailed,
  sayUnfinished,
  sayWorst,
} from './words/say-self-check.ts';
export { basisWords } from './words/say-set.ts';
export type { OrderWords } from './words/say-standing.ts';
export {
  balanceWords,
  heldWords,
  platesWords,
  restraintWords,
  sayForce,
  zoneName,
} from './words/say-standing.ts';
export { type SaidStep, sayStep } from './words/say-step.ts';
export { unitWords } from './words/say-units.ts';
export { type SaidWorking, sayWorking } from './words/say-working.ts';
export { stepTitle, type TitleWords } from './words/step-title.ts';
export { inHouseWords } from './words/trade-translation.ts';
export { sayWhyNoOrder } from './words/why-no-order.ts';
