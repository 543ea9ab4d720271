export type { Applied, Preview, ToApply } from './apply-mapping.ts';
export { applyMapping, previewMapping } from './apply-mapping.ts';
export { writeCsv } from './csv.ts';
export type { TableName } from './fields.ts';
export { fieldNames } from './fields.ts';
export { marked, startsLikeFormula, unmarked } from './formula-mark.ts';
export { aboutWords, headingWords } from './heading-words.ts';
export type { ColumnMapping, Mapping, Target } from './mapping.ts';
export {
  guessColumns,
  guessMapping,
  headingOf,
  isBareNumber,
  openQuestions,
  unitsFor,
} from './mapping.ts';
export { givenText } from './notation.ts';
export { readTable } from './read-table.ts';
export type { Cell, Sheet, TextTable } from './sheet.ts';
export { cellName, columnName } from './sheet.ts';
export { tablesOut } from './tables-out.ts';
export { decodeUtf8 } from './utf8.ts';
export type { Change } from './work.ts';
export { writeXlsx } from './write-xlsx.ts';
