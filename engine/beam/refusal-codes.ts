/** Every reason for which this room does not take a batten. A code is never reused. */
import type { Refusal } from '#outcome';
import { refusal } from '#outcome';

const REFUSALS = {
  noLines: {
    code: 'BEM-001',
    title: 'No lift lines',
    meaning: 'A batten hangs on one lift line at least.',
  },
  lineOffBatten: {
    code: 'BEM-002',
    title: 'Off the batten',
    meaning: 'Lift lines, supports, picks and splices lie between the two ends of the batten.',
  },
  onePlace: {
    code: 'BEM-003',
    title: 'Two at one place',
    meaning: 'Two lift lines, or two picks of one piece, are a millimetre apart or more.',
  },
  notStiff: {
    code: 'BEM-004',
    title: 'No stiffness',
    meaning: 'A stiffness is finite and above zero; null is rigid.',
  },
  loadOffBatten: {
    code: 'BEM-005',
    title: 'A load beyond the ends',
    meaning: 'Every load lies between the two ends of the batten, a spread one from left to right.',
  },
  notMass: {
    code: 'BEM-006',
    title: 'Not a mass',
    meaning: 'A mass is finite and not negative.',
  },
  notNumber: {
    code: 'BEM-007',
    title: 'Not a number in bounds',
    meaning: 'Places, trims and heights are finite, and none is beyond a kilometre.',
  },
  notPipe: {
    code: 'BEM-008',
    title: 'Not a pipe',
    meaning: 'Second moment, moduli and strengths are finite and above zero.',
  },
  endsReversed: {
    code: 'BEM-009',
    title: 'Ends reversed',
    meaning: 'The left end has the smaller x.',
  },
  onePick: {
    code: 'BEM-010',
    title: 'A piece on one pick',
    meaning: 'A piece that shares its mass has two picks or more; on one it is a point load.',
  },
  spliceStrength: {
    code: 'BEM-011',
    title: 'Not a share of the strength',
    meaning: 'A splice takes more than nothing and no more than the whole of what the pipe takes.',
  },
  notEven: {
    code: 'BEM-013',
    title: 'Cannot be shared evenly',
    meaning: 'The load sits so far to one side that some line would have to push to share it.',
  },
  notSought: {
    code: 'BEM-012',
    title: 'Nothing to search',
    meaning: 'A search is given limits, places or counts among which there is something to find.',
  },
} as const;

export type BeamRefusal = keyof typeof REFUSALS;

export const refuse = (
  name: BeamRefusal,
  path: string,
  { found, accepted }: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, path, { found, accepted });

export const BEAM_REFUSALS = REFUSALS;
