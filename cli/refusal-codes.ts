/** Refusals of the command line itself; those of documents and inputs keep their own codes. */
export const COMMAND_REFUSALS = {
  noFile: {
    code: 'CLI-001',
    title: 'No file',
    meaning: 'A file is not there or cannot be read.',
  },
  noDocument: {
    code: 'CLI-002',
    title: 'No such document',
    meaning: 'No schema has this name.',
  },
  noSet: {
    code: 'CLI-003',
    title: 'No such set',
    meaning: 'The house has no set of this name.',
  },
  noCalculation: {
    code: 'CLI-004',
    title: 'No such calculation',
    meaning: 'No calculation has this name.',
  },
  noSheet: {
    code: 'CLI-005',
    title: 'No such sheet',
    meaning: 'No sheet of this job has this id.',
  },
  notWritten: {
    code: 'CLI-006',
    title: 'Cannot write the file',
    meaning: 'A report cannot be written where it was asked for.',
  },
  noMeasure: {
    code: 'CLI-010',
    title: 'Not a measure',
    meaning: 'A height or a rating on the command line cannot be read.',
  },
  noColumn: {
    code: 'CLI-012',
    title: 'No such column',
    meaning: 'What was said of a column does not name one of the sheet.',
  },
  noTable: {
    code: 'CLI-013',
    title: 'Which sheet',
    meaning: 'The workbook has several sheets, or none of this name.',
  },
  notAlike: {
    code: 'CLI-016',
    title: 'Not alike',
    meaning: 'Two documents of two kinds are never compared.',
  },
  noMoment: {
    code: 'CLI-014',
    title: 'No such moment',
    meaning: 'The show has no trim or cue of this name or number.',
  },
  otherForm: {
    code: 'CLI-015',
    title: 'Not in this form',
    meaning: 'Tables are written as CSV and XLSX, drawings as SVG and DXF.',
  },
  noWords: {
    code: 'CLI-011',
    title: 'No words',
    meaning: 'This calculation answers in JSON only.',
  },
} as const;
