/** What the record refuses, in words for the person at the screen; by code, in each language. */
import { message } from '#texts';

const WORDS: Readonly<Record<string, string>> = {
  'EVT-002': message('Another command was sent under this id before; nothing was recorded.'),
  'EVT-003': message(
    'Something was recorded here after what your screen shows; look, then decide again.',
  ),
  'EVT-004': message(
    'Your screen has seen more than this record holds; the record was restored or is another.',
  ),
  'EVT-005': message('The record holds no such event on this target; nothing was withdrawn.'),
  'EVT-006': message('That event is withdrawn already; nothing was recorded.'),
  'EVT-007': message(
    'Only notes and sign-offs are withdrawn; another event is answered by a new one.',
  ),
  'EVT-013': message(
    'It did not arrive in time and is never recorded; look, and do it again if it still holds.',
  ),
  'LIV-001': message('Your role does not do this here; nothing was recorded.'),
  'LIV-002': message(
    'Without HTTPS anybody on the network could sign as another, so nobody signs here.',
  ),
  'LIV-003': message(
    'A sign-off needs your PIN or passphrase within the last minute; give it and sign.',
  ),
  'LIV-004': message('The role in the sign-off is not yours; nothing was recorded.'),
};

/** The server's own words where this page is older than the code. */
export const refusalWords = (code: string, words: string): string => WORDS[code] ?? words;
