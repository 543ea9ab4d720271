/**
 * What pages and server agree on: the form of what is sent either way. Raised by one when a page
 * that was opened before must send nothing to a server that was started after.
 */
export const TERMS = 1;
