/** Who sends a command, as far as it matters here; rights of routes are judged before. */
import type { CallSender } from '#call';
import type { CallCommandKind, Command, Speaker } from '#events';
import type { LiveRefusalName } from './refusal-codes.ts';

export type CallCommand = Extract<Command, { readonly kind: CallCommandKind }>;

/** What somebody may do in a call, looked up at this command. */
export type CallStand = Pick<CallSender, 'role' | 'tasks'> & {
  /** Whether they may ask for anything at all; whoever is signed in may report. */
  readonly mayAsk: boolean;
  /** Why what is asked is not theirs to ask, by post and device; null where it is. */
  readonly whyNot: (command: CallCommand) => LiveRefusalName | null;
};

export type Sender = Speaker & {
  /** Written into a sign-off: their role in this house. */
  readonly role: string;
  readonly mayNote: boolean;
  readonly maySign: boolean;
  /** When they last gave a secret of theirs; null for a machine that needs no ceremony. */
  readonly provedAtMs: number | null;
  /** Absent for a program: it has no part in a call. */
  readonly inCall?: CallStand;
};
