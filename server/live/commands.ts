/** A command as it comes over the wire, and what is answered: a status, and a body that stays. */
import {
  type Command,
  type CommandAnswer,
  type LogFault,
  readCommand,
  receiveCommand,
  type Speaker,
} from '#events';
import type { Refusal } from '#outcome';
import type { RecordInHand } from './record.ts';
import { LIVE_REFUSALS, type LiveRefusalName } from './refusal-codes.ts';

/** Who sends a command, as far as it matters here; rights of routes are judged before. */
export type Sender = Speaker & {
  /** Written into a sign-off: their role in this house. */
  readonly role: string;
  readonly mayNote: boolean;
  readonly maySign: boolean;
  /** When they last gave a secret of theirs; null for a machine that needs no ceremony. */
  readonly provedAtMs: number | null;
};

export type Taken =
  | { readonly kind: 'notRead'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'answered'; readonly status: number; readonly answer: CommandAnswer }
  | { readonly kind: 'fault'; readonly status: number; readonly fault: LogFault };

/** A sign-off is given by who has just said who they are, not by a tablet that lies about. */
const PROOF_HOLDS_MS = 60_000;

export const takeCommand = (
  { log }: RecordInHand,
  body: unknown,
  sender: Sender,
  { signOffs }: { readonly signOffs: boolean },
): Taken => {
  const read = readCommand(body);
  if (!read.ok) return { kind: 'notRead', refusals: read.error };
  const done = receiveCommand(log, read.value, sender, (command) => {
    const name = whyNot(command, sender, signOffs);
    if (name === null) return null;
    const { code, meaning } = LIVE_REFUSALS[name];
    return { code, words: meaning };
  });
  if (!done.ok) return { kind: 'fault', status: FAULTS[done.error.kind], fault: done.error };
  const { answer } = done.value;
  return { kind: 'answered', status: statusOf(answer), answer };
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

/** By the code: an id that was used, a right that is missing, else the state of the record. */
const statusOf = (answer: CommandAnswer): number => {
  if (answer.outcome === 'accepted') return 200;
  const { code } = answer;
  if (code.startsWith('LIV-')) return 403;
  return code === 'EVT-003' || code === 'EVT-004' ? 409 : 422;
};
