/** Notes as they were recorded, above them what waits on this device. */
import { useId } from 'react';
import type { Pending } from '#events';
import { message } from '#texts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { sayServerTime } from './say-standing.ts';
import type { SaidHere, SaidNote } from './server.ts';
import { live, useLive } from './use-live.ts';
import { Withdraw } from './withdraw.tsx';

type Tell = ReturnType<typeof useTell>;

/** `set:kestlemere/11` is set 11 of the house with that id. */
export const sayTarget = (target: string, tell: Tell): string => {
  if (!target.startsWith('set:')) return tell('the house');
  const set = target.slice(target.indexOf('/') + 1);
  return tell('set {set}', { set });
};

const WAY = {
  held: message('not yet sent: waits on this device'),
  waiting: message('not yet sent: on its way'),
  sending: message('not yet sent: on its way'),
  asking: message('unknown whether it arrived: checking'),
  givingUp: message('did not arrive in time: being given up'),
} as const;

/** Whether it still holds is a person's to say, once the house is heard again. */
const Decision = ({ commandId }: { readonly commandId: string }) => {
  const tell = useTell();
  const { standing } = useLive();
  return (
    <p className="buttons">
      <button
        type="button"
        disabled={standing.is !== 'live'}
        onClick={() => live.decide(commandId, 'released')}
      >
        {tell('Send it')}
      </button>
      <button type="button" onClick={() => live.decide(commandId, 'dropped')}>
        {tell('Drop it')}
      </button>
    </p>
  );
};

const Unsent = ({ pending }: { readonly pending: Pending }) => {
  const tell = useTell();
  const { command, way } = pending;
  if (command.kind !== 'note written') return null;
  return (
    <li>
      <p>{command.payload.text}</p>
      <span className="said-by void">
        {sayTarget(command.target, tell)}, {tell(WAY[way])}
      </span>
      {way === 'held' ? <Decision commandId={command.commandId} /> : null}
    </li>
  );
};

/** A note that came this much later than it was written says both times. */
const LATE_MS = 60_000;

const Recorded = ({ note, said }: { readonly note: SaidNote; readonly said: SaidHere }) => {
  const tell = useTell();
  const voice = useVoice();
  const id = useId();
  const when = (ms: number): string => sayServerTime(ms, Date.now(), voice);
  const { event, withdrawal, seen } = note;
  const { target, payload, by, atMs } = event;
  return (
    <li>
      <p id={id}>{withdrawal === null ? payload.text : <s>{payload.text}</s>}</p>
      <span className="said-by">
        {tell('{target}, by {by}, {when}', {
          target: sayTarget(target, tell),
          by: by === null ? tell('this machine') : (said.names[by] ?? by),
          when: when(atMs),
        })}
        {payload.writtenMs !== null && atMs - payload.writtenMs > LATE_MS
          ? tell('; written {when} by the clock of its device', {
              when: when(payload.writtenMs),
            })
          : ''}
      </span>
      <Withdraw event={event} withdrawal={withdrawal} seen={seen} said={said} about={id} />
    </li>
  );
};

type ListProps = {
  readonly said: SaidHere | null;
  readonly unsent: readonly Pending[];
  readonly hasFailed: boolean;
};

export const NoteList = ({ said, unsent, hasFailed }: ListProps) => {
  const tell = useTell();
  return (
    <>
      {hasFailed ? (
        <p>{tell('The notes could not be read now; what stands here may not be all.')}</p>
      ) : null}
      <ul>
        {unsent.map((pending) => (
          <Unsent key={pending.command.commandId} pending={pending} />
        ))}
        {said?.notes.map((note) => (
          <Recorded key={note.event.seq} note={note} said={said} />
        ))}
      </ul>
      {said !== null && said.notes.length === 0 && unsent.length === 0 ? (
        <p className="empty-words">{tell('No notes.')}</p>
      ) : null}
      {said?.isAll === false ? <p>{tell('Older ones are not shown here.')}</p> : null}
    </>
  );
};
