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
  'LIV-005': message(
    'Without HTTPS anybody on the network could speak as another, so no leave is given ' +
      'here. Work from paper; what you report, and STOP, is recorded.',
  ),
  'LIV-006': message('This call is not open here; nothing was recorded.'),
  'LIV-007': message('On this device you have not taken this post; join with a code for it.'),
  'LIV-008': message(
    'Whoever answered for you may do so no longer; the head flyman gives a new code.',
  ),
  'LIV-009': message(
    'The documents of this call cannot be read here, so no leave is given from them.',
  ),
  'CAL-101': message(
    'What is asked belongs to a call that is not open. Join the call that is open now.',
  ),
  'CAL-102': message(
    'This is said from a post that you have not taken on this device. Join it first.',
  ),
  'CAL-103': message(
    'The post needs a task that you are not signed off for, and nobody answers for you.',
  ),
  'CAL-104': message(
    'What this answers is not asked any more, or was done with. Look how the set stands.',
  ),
  'CAL-105': message(
    'The second word is of another person on another device, or of a name on paper.',
  ),
  'CAL-106': message(
    'Bricks or items were changed: count what is on the arbor, and give the number.',
  ),
  'CAL-107': message('An override names every rule that it covers, with a reason in words.'),
  'CAL-109': message('Only whoever has taken the post of head flyman says this.'),
  'CAL-110': message(
    'Whoever said stop agrees first, or another stands in for them by name with a reason.',
  ),
  'CAL-111': message('The number is not that of the tag on this set. Read it off the tag.'),
  'CAL-112': message('No note of paper with this number waits on the set.'),
};

/** The server's own words where this page is older than the code. */
export const refusalWords = (code: string, words: string): string => WORDS[code] ?? words;
