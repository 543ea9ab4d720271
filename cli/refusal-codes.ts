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
  noState: {
    code: 'CLI-007',
    title: 'No state',
    meaning:
      'An order of work begins from a record: no state means unknown, never bare and at low trim.',
  },
  notKnown: {
    code: 'CLI-008',
    title: 'Not known',
    meaning: 'An order of work needs a value that nobody has written down.',
  },
  coupled: {
    code: 'CLI-009',
    title: 'Coupled with other sets',
    meaning: 'Orders are found and judged for one set by itself, and this one never moves alone.',
  },
  noMeasure: {
    code: 'CLI-010',
    title: 'Not a measure',
    meaning: 'A height or a rating on the command line cannot be read.',
  },
} as const;
