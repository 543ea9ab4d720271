/** How large a table may be. Above a limit the file is refused; nothing is cut off in silence. */

/** A hang list of 500 sets with 60 filled columns is about 1 MB as CSV; four times that. */
export const FILE_BYTES_MAX = 4 * 1024 * 1024;

/**
 * All that is unpacked of one workbook. XML of a sheet is some four times its CSV, so this holds
 * the largest list above; reading more than this would keep a screen busy for many seconds.
 */
export const OPENED_BYTES_MAX = 8 * 1024 * 1024;

/** A workbook with pictures and themes has some dozens of parts; thousands are an attack. */
export const WORKBOOK_PARTS_MAX = 500;

/** 500 sets are the most a house may have, with ten items on each. */
export const ROWS_MAX = 5000;

/** 50 trims and 50 kinds of brick are the most a document may have; the rest are named fields. */
export const COLUMNS_MAX = 150;

/** The most that a cell of a workbook holds (Microsoft, notes on ISO/IEC 29500, 2.1.660). */
export const CELL_CHARACTERS_MAX = 32_767;

/** What is told of one file: a column mapped wrongly would fill a screen with one fault. */
export const REFUSALS_MAX = 200;
