/** Every reason for which a working sheet is not made. A code is never reused. */
export const SHEET_REFUSALS = {
  notToWorkBy: {
    code: 'SHT-001',
    title: 'No order to work by',
    meaning: 'A sheet to work by is made of an order that was replayed to its end, unbroken.',
  },
} as const;
