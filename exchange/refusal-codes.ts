/**
 * Every reason for which this room refuses a table. A code is never reused and never renumbered.
 * Faults inside a measure keep the code of `#quantities`.
 */

type ExchangeRefusal = {
  readonly code: string;
  readonly title: string;
  /** One sentence: what was found, and why it is not taken. */
  readonly meaning: string;
};

const code = (id: string, title: string, meaning: string): ExchangeRefusal => ({
  code: id,
  title,
  meaning,
});

/** The file, before anything in it means something. */
const FILE = {
  nameOther: code('EXC-001', 'Not a table', 'The name ends neither in .csv nor in .xlsx.'),
  contentOther: code(
    'EXC-002',
    'Content of another kind',
    'What is in the file is not what its name says.',
  ),
  tooLarge: code('EXC-003', 'File too large', 'No hang list of a theatre is as large as this.'),
  empty: code('EXC-004', 'Nothing in it', 'The file has no cell with anything in it.'),
  notUtf8: code('EXC-005', 'Not UTF-8', 'The text is in another encoding, and guessing garbles.'),
  quoteOpen: code('EXC-006', 'Quote not closed', 'A quoted cell of the CSV never ends.'),
  quoteInside: code('EXC-007', 'Stray quote', 'A quote stands where none can stand in a CSV.'),
  opensTooLarge: code(
    'EXC-008',
    'Opens too large',
    'The file is packed so tightly that opened it would fill the memory.',
  ),
  damaged: code('EXC-009', 'Damaged', 'The file cannot be unpacked, or breaks the grammar of XML.'),
  tooManyRows: code('EXC-010', 'Too many rows', 'The sheet has more rows than any fly floor.'),
  tooManyColumns: code('EXC-011', 'Too many columns', 'The sheet is wider than is read here.'),
  cellTooLong: code('EXC-012', 'Cell too long', 'A cell holds at most 32 767 characters.'),
  declares: code('EXC-013', 'Declarations inside', 'A table has no DOCTYPE, and no entities.'),
} as const;

/** Which column is which. */
const MAPPING = {
  setUnmapped: code('EXC-020', 'No column for the set', 'Nothing says on which set a row hangs.'),
  mappedTwice: code('EXC-021', 'Mapped twice', 'Two columns would be written to one field.'),
  unitAsked: code('EXC-022', 'Unit asked', 'The column has bare numbers, and no unit was chosen.'),
  unitOther: code('EXC-023', 'Unit does not fit', 'The unit measures something else.'),
  columnMissing: code('EXC-024', 'Column not there', 'The mapping names a column that is not.'),
} as const;

/** What a row says. */
const ROWS = {
  formula: code('EXC-030', 'Formula', 'The cell is a formula; it is not run and not trusted.'),
  dateCell: code('EXC-031', 'Date', 'The program that wrote the file made a date of the cell.'),
  errorCell: code('EXC-032', 'Error in the cell', 'The cell shows an error of its program.'),
  setUnknown: code('EXC-033', 'Set not known', 'The house has no such set.'),
  rowTwice: code('EXC-034', 'Row twice', 'Two rows are about one set or one item.'),
  missing: code('EXC-035', 'Something is missing', 'What is new cannot be made without this.'),
  badChoice: code('EXC-036', 'Not one of the choices', 'The word is none of those listed.'),
  basisAsked: code('EXC-037', 'Basis asked', 'Nobody says how the value is known.'),
  notRead: code('EXC-038', 'Not read', 'The text is not in the form of this column.'),
  otherTakeoff: code('EXC-039', 'Weighed otherwise', 'The item is not weighed by this figure.'),
  hungAndEmpty: code('EXC-040', 'Hung and kept empty', 'A set is kept empty or hung, not both.'),
} as const;

export const REFUSALS = {
  ...FILE,
  ...MAPPING,
  ...ROWS,
} as const satisfies Readonly<Record<string, ExchangeRefusal>>;

export type RefusalName = keyof typeof REFUSALS;
