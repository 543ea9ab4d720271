export type { ArborOptions } from './arbor-drawing.ts';
export { arborDrawing } from './arbor-drawing.ts';
export type { BalanceOptions } from './balance-drawing.ts';
export { balanceDrawing } from './balance-drawing.ts';
export type { OpenRegion } from './balance-regions.ts';
export { openRegions } from './balance-regions.ts';
export { stretchesOf } from './balance-subject.ts';
export type { FrontOptions } from './batten-front.ts';
export { battenFrontDrawing, fromCentre } from './batten-front.ts';
export { placeOfLoad } from './batten-hung-loads.ts';
export type { BattenLoadsDrawing } from './batten-loads.ts';
export { battenLoadsDrawing } from './batten-loads.ts';
export { placeWords, smallLengthWords, tensionWords } from './batten-words.ts';
export type { DxfUnit } from './dxf/dxf-file.ts';
export { DXF_UNITS, dxfFile, unitWordsOf } from './dxf/dxf-file.ts';
export type { FieldPlace, FieldScale, FieldSize, FieldView } from './field-view.ts';
export { fieldScale, fitted, panned, zoomed } from './field-view.ts';
export type { DrawingFile, DrawingKind, FileSubject } from './files/drawing-file.ts';
export { drawingFile, MM_A_POINT } from './files/drawing-file.ts';
export { scalesFor, usualScale, usualUnit } from './files/scales.ts';
export { svgFile } from './files/svg-file.ts';
export type { GlyphName } from './glyphs.ts';
export { GLYPH_NAMES, glyph, glyphWord } from './glyphs.ts';
export type { HangingItem, HangingPart } from './hanging-points.ts';
export { hangingItems, placesOf } from './hanging-points.ts';
export type { HeightScale } from './height-scale.ts';
export { fitHeights, heightToY } from './height-scale.ts';
export type { HungOptions } from './hung-drawing.ts';
export { hungDrawing } from './hung-drawing.ts';
export { letFall } from './let-fall.ts';
export { linesOfText, textWidth } from './lettering.ts';
export { suspensionSentence } from './no-arbor.ts';
export { plateExaggeration } from './order-frame.ts';
export { orderHoldsDrawing } from './order-holds.ts';
export { type OrderMoment, orderStepDrawing, orderZoneDrawing } from './order-step.ts';
export type { HatchForm, Medium, Palette } from './pens.ts';
export {
  DASHES,
  HATCHES,
  LETTER_STRETCH,
  LETTER_WEIGHT,
  lineWidth,
  PAPER_PALETTE,
  SCREEN_PALETTE,
} from './pens.ts';
export type { PlanOptions, PlanParts, PlanSubject } from './plan/plan-drawing.ts';
export { planDrawing, planParts, planStrips, wholePlan } from './plan/plan-drawing.ts';
export { scaleBar } from './scale-bar.ts';
export { upstageOf } from './section/hangings.ts';
export type { DifferencePaper, SectionDifference } from './section/section-difference.ts';
export { markLetter, sectionDifference } from './section/section-difference.ts';
export type { SectionOptions, SectionParts, SectionSubject } from './section/section-drawing.ts';
export {
  sectionDrawing,
  sectionParts,
  sectionStrips,
  sectionWithEyes,
  wholeSection,
} from './section/section-drawing.ts';
export type {
  Anchor,
  Circle,
  Dash,
  Drawing,
  Group,
  Hatch,
  Lettering,
  LetterStyle,
  LetterWidth,
  Line,
  Path,
  Pen,
  Point,
  Polyline,
  Rect,
  Shape,
  Style,
  Weight,
} from './shape.ts';
export { circle, group, lettering, line, path, point, polygon, polyline, rect } from './shape.ts';
export type { SliceOptions } from './slice-drawing.ts';
export { sliceDrawing } from './slice-drawing.ts';
export type { StackOptions } from './stack-drawing.ts';
export { countWords, massOfCounts, stackDrawing } from './stack-drawing.ts';
export { drawingToSvg } from './svg.ts';
export type { TradeWord } from './trade-words.ts';
export { heavySide, tradeWord } from './trade-words.ts';
export type { Wall, WallColumn, WallOptions } from './wall-drawing.ts';
export { wallDrawing } from './wall-drawing.ts';
export type { WallSigns } from './wall-signs.ts';
export { wallSigns } from './wall-signs.ts';
export type { WorkStack, WorkStackOptions } from './work-stack.ts';
export { workStackDrawing } from './work-stack.ts';
