/** Every reason for which an event or a command is not taken. A code is never reused. */
import { type Refusal, refusal } from '#outcome';

type EventRefusal = {
  readonly code: string;
  readonly title: string;
  /** One sentence for the person who is refused: what was found, and what to do. */
  readonly meaning: string;
};

const code = (id: string, title: string, meaning: string): EventRefusal => ({
  code: id,
  title,
  meaning,
});

export const REFUSALS = {
  notRead: code('EVT-001', 'Not read', 'A field of what was sent is not as the program takes it.'),
  anotherBody: code(
    'EVT-002',
    'Id used before',
    'Another command was sent under this id before; nothing was recorded.',
  ),
  stale: code(
    'EVT-003',
    'Changed since',
    'Something was recorded here after what your screen shows; look, then decide again.',
  ),
  ahead: code(
    'EVT-004',
    'Record went back',
    'Your screen has seen more than this record holds; the record was restored or is another.',
  ),
  noSuchEvent: code(
    'EVT-005',
    'No such event',
    'The record holds no such event on this target; nothing was withdrawn.',
  ),
  withdrawnAlready: code(
    'EVT-006',
    'Withdrawn already',
    'That event is withdrawn already; nothing was recorded.',
  ),
  notWithdrawable: code(
    'EVT-007',
    'Not withdrawn so',
    'Only notes and sign-offs are withdrawn; another event is answered by a new one.',
  ),
  diskFull: code(
    'EVT-008',
    'Disk full',
    'The disk of the server is full; nothing was recorded, and what is recorded can be read.',
  ),
  writeFailed: code(
    'EVT-009',
    'Not written',
    'The disk of the server did not take it; nothing was recorded.',
  ),
  readOnly: code(
    'EVT-010',
    'Read only',
    'This database is a copy that nobody has made the record; nothing is recorded in it.',
  ),
  busy: code(
    'EVT-011',
    'Busy',
    'Another program is writing to the record; nothing was recorded, try again.',
  ),
  chainBroken: code(
    'EVT-012',
    'Chain broken',
    'The record is not as it was written: an event was changed, taken out or put in.',
  ),
  givenUp: code(
    'EVT-013',
    'Given up',
    'It did not arrive in time and is never recorded; look, and do it again if it still holds.',
  ),
} as const satisfies Readonly<Record<string, EventRefusal>>;

export type RefusalName = keyof typeof REFUSALS;

export const refuse = (
  name: RefusalName,
  path: string,
  said: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, path, said);
