/** A command as it comes over the wire, and what is answered: a status, and a body that stays. */
import {
  type Command,
  type CommandAnswer,
  type Judge,
  type LogFault,
  readCommand,
  receiveCommand,
} from '#events';
import type { Refusal } from '#outcome';
import { isOfCall, whyNotInCall } from './call-commands.ts';
import type { CallRoom } from './call-room.ts';
import type { RecordInHand } from './record.ts';
import { LIVE_REFUSALS, type LiveRefusalName } from './refusal-codes.ts';
import type { Sender } from './sender.ts';

export type Taken =
  | { readonly kind: 'notRead'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'answered'; readonly status: number; readonly answer: CommandAnswer }
  | { readonly kind: 'fault'; readonly status: number; readonly fault: LogFault };

/** A sign-off is given by who has just said who they are, not by a tablet that lies about. */
const PROOF_HOLDS_MS = 60_000;

type Here = {
  readonly signOffs: boolean;
  /** Absent where no calls are taken. */
  readonly room?: CallRoom;
};

export const takeCommand = (
  { log }: RecordInHand,
  body: unknown,
  sender: Sender,
  here: Here,
): Taken => {
  const read = readCommand(body);
  if (!read.ok) return { kind: 'notRead', refusals: read.error };
  const { room } = here;
  // In the same batch: what the server says to a command is there when the command is.
  const follow: Parameters<typeof receiveCommand>[4] = (event) =>
    room?.desk()?.follow(room.now(), event) ?? [];
  const done = receiveCommand(log, read.value, sender, judgeOf(sender, here), follow);
  if (!done.ok) return { kind: 'fault', status: FAULTS[done.error.kind], fault: done.error };
  const { answer } = done.value;
  return { kind: 'answered', status: statusOf(answer), answer };
};

const judgeOf =
  (sender: Sender, here: Here): Judge =>
  (command) => {
    const why = isOfCall(command)
      ? whyNotInCall(command, sender, here)
      : (whyNotOnPaper(command, sender, here) ?? whyNot(command, sender, here.signOffs));
    if (why === null || typeof why === 'object') return why;
    const { code, meaning } = LIVE_REFUSALS[why];
    return { code, words: meaning };
  };

/** What was written on paper while no call was heard holds its set up: a program has no paper. */
const whyNotOnPaper = (
  { kind, payload }: Command,
  { inCall }: Sender,
  { room }: Here,
): LiveRefusalName | null => {
  if (kind !== 'note written' || payload.writtenMs === null || inCall !== undefined) return null;
  return (room?.now().call ?? null) === null ? null : 'notAllowed';
};

const whyNot = (
  { kind, payload }: Command,
  { role, mayNote, maySign, provedAtMs, nowMs }: Sender,
  signOffs: boolean,
): LiveRefusalName | null => {
  if (kind === 'note written') return mayNote ? null : 'notAllowed';
  if (!signOffs && kind === 'signed') return 'signOffsOff';
  if (!maySign) return 'notAllowed';
  if (provedAtMs !== null && nowMs - provedAtMs > PROOF_HOLDS_MS) return 'proveAnew';
  return kind === 'signed' && payload.role !== role ? 'anotherRole' : null;
};

export const faultStatus = ({ kind }: LogFault): number => FAULTS[kind];

const FAULTS: Readonly<Record<LogFault['kind'], number>> = {
  diskFull: 507,
  writeFailed: 503,
  busy: 503,
  readOnly: 503,
  chainBroken: 503,
};

/** By the code: a missing right, an id that was used; else how the record or a set stands. */
const statusOf = (answer: CommandAnswer): number => {
  if (answer.outcome === 'accepted') return 200;
  const { code } = answer;
  if (code === LIVE_REFUSALS.anotherCall.code || code === LIVE_REFUSALS.notRead.code) return 409;
  if (code.startsWith('LIV-')) return 403;
  const isOfEvents = code.startsWith('EVT-') && code !== 'EVT-003' && code !== 'EVT-004';
  // What is left is said by a rule: of a call, or of an order of work.
  return isOfEvents ? 422 : 409;
};
