/** Every reason for which this room refuses a text. A code is never reused and never renumbered. */

export type RefusalCode = {
  readonly code: string;
  readonly title: string;
  /** One sentence: what the person wrote, and why it is not taken. */
  readonly meaning: string;
};

const code = (id: string, title: string, meaning: string): RefusalCode => ({
  code: id,
  title,
  meaning,
});

export const REFUSALS = {
  empty: code('QTY-001', 'Nothing written', 'The text is empty, and an empty field is not zero.'),
  tooLong: code('QTY-002', 'Text too long', 'A measure is written in 60 characters or fewer.'),
  foreignDigit: code(
    'QTY-003',
    'Digits other than 0 to 9',
    'The text has digits of another script, or a raised figure where a number should be.',
  ),
  noNumber: code(
    'QTY-004',
    'No readable number',
    'No number stands where one should, or it is not finished, or it is not finite.',
  ),
  noUnit: code('QTY-005', 'Unit missing', 'A number without its unit is not a measure.'),
  unknownUnit: code('QTY-006', 'Unit not known', 'The unit is none that this program reads.'),
  otherDimension: code(
    'QTY-007',
    'Unit of another kind of measure',
    'The unit is known, but it measures something else than what is asked for.',
  ),
  massForForce: code(
    'QTY-008',
    'Mass given for a force',
    'A pound or a kilogram is a mass here; the force is written in lbf, kgf or N.',
  ),
  signNotTaken: code(
    'QTY-009',
    'Sign not taken here',
    'This measure has no direction, so it is written without plus or minus.',
  ),
  signMisplaced: code(
    'QTY-010',
    'Sign twice, or inside',
    'A sign stands once, before the whole measure.',
  ),
  ambiguousComma: code(
    'QTY-011',
    'Comma that can be read two ways',
    'A comma before exactly three digits may mark thousands or decimals.',
  ),
  groupedNumber: code(
    'QTY-012',
    'Number written in groups',
    'Digits are written without marks or gaps between thousands, and one unit follows each number.',
  ),
  fractionTooLarge: code(
    'QTY-013',
    'Fraction not under one',
    'The upper figure of a fraction is smaller than the lower one.',
  ),
  zeroDenominator: code('QTY-014', 'Fraction over zero', 'The lower figure of a fraction is zero.'),
  partTooLarge: code(
    'QTY-015',
    'Second part too large',
    'After feet come fewer than 12 inches, after pounds fewer than 16 ounces, and so on.',
  ),
  partNotWhole: code(
    'QTY-016',
    'First part not whole',
    'Where a smaller unit follows, the larger one is a whole number.',
  ),
  partsDoNotGo: code(
    'QTY-017',
    'Parts that do not go together',
    'Two units stand side by side, and the second is not the next smaller one of the first.',
  ),
  clothBasisMissing: code(
    'QTY-018',
    'Cloth weight without its basis',
    'The weight may be per area or per running yard; the two differ by 1.5 at a width of 54 in.',
  ),
  clothWidth: code(
    'QTY-019',
    'Cloth width missing or not usable',
    'A weight per running length, and only that, is followed by @ and the width of the cloth.',
  ),
  bareRatio: code(
    'QTY-020',
    'Ratio without per cent',
    'A bare 5 may be 5 % or five times, so a ratio carries its % sign.',
  ),
  notACount: code('QTY-021', 'Not a count', 'A count is a whole number without a unit.'),
  tooLarge: code(
    'QTY-022',
    'Larger than anything in a theatre',
    'The value is beyond 10¹² in its base unit, which can only be a slip.',
  ),
  ambiguousPoint: code(
    'QTY-023',
    'Point that can be read two ways',
    'Where decimals follow a comma, a point before exactly three digits may mark thousands.',
  ),
} as const satisfies Readonly<Record<string, RefusalCode>>;

export type RefusalName = keyof typeof REFUSALS;

/** All codes of this room, in order, for the generated list. */
export const QUANTITY_REFUSALS: readonly RefusalCode[] = Object.values(REFUSALS);
