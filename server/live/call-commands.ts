/** Whether a command of a call is taken: who sends it first, then the rules of the desk. */
import { CALL_REQUESTS, type Command } from '#events';
import type { CallRoom } from './call-room.ts';
import type { LiveRefusalName } from './refusal-codes.ts';
import type { CallCommand, Sender } from './sender.ts';

/** All that is said in a call names it, and nothing else does. */
export const isOfCall = (command: Command): command is CallCommand => 'call' in command.payload;

const REQUESTS: ReadonlySet<string> = new Set(CALL_REQUESTS);

type WhyNot = { readonly code: string; readonly words: string };

/**
 * A request is theirs to ask, in this call, at their post, or it is refused; a report is refused to
 * nobody who is signed in, but for what the desk says of whom it names.
 */
export const whyNotInCall = (
  command: CallCommand,
  { inCall, by, nowMs }: Sender,
  { signOffs, room }: { readonly signOffs: boolean; readonly room?: CallRoom },
): LiveRefusalName | WhyNot | null => {
  if (inCall === undefined) return 'notAllowed';
  const now = room?.now();
  const isHere = now?.call?.id === command.payload.call;
  if (REQUESTS.has(command.kind)) {
    if (!signOffs) return 'noLeaveHere';
    if (!inCall.mayAsk) return 'notAllowed';
    if (!isHere) return 'anotherCall';
    const name = inCall.whyNot(command);
    if (name !== null) return name;
    if (room?.desk() === null) return 'notRead';
  }
  if (now === undefined || !isHere) return null;
  const { role, tasks } = inCall;
  return room?.desk()?.judge(now, command, { by, role, tasks, nowMs }) ?? null;
};
