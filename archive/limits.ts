/** How large an archive may be that is read back. */

/** Some hundreds of sheets as PDF of 150 kB, and every revision of a year, packed. */
export const ARCHIVE_BYTES_MAX = 128 * 1024 * 1024;

/** PDF does not pack; texts pack ten to one. */
export const OPENED_BYTES_MAX = 256 * 1024 * 1024;

/** Two houses with ten shows, a thousand revisions and three hundred sheets each. */
export const FILES_MAX = 10_000;

/** A path of ours is a handful of ids of 32 letters. */
export const PATH_MAX = 200;

/** What is told of one archive; after the first few a person looks for a better copy. */
export const REFUSALS_MAX = 50;
