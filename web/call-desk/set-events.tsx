/** What was said and done on a set in this call, the newest first, and notes of paper. */
import { useState } from 'react';
import { targetOfSet } from '#call';
import type { HouseEvent } from '#events';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { TextField } from '../house-found/choice-field.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { CallForm } from './call-form.tsx';
import { actorWords, clockWords } from './desk-words.ts';
import { eventWords } from './event-words.ts';
import { nameOfPiece, type SetOnDesk } from './set-on-desk.ts';

type EventsProps = {
  readonly desk: SetOnDesk;
  /** Null while they are being read. */
  readonly events: readonly HouseEvent[] | null;
};

/** As many as a person reads down; the whole record is taken out elsewhere. */
const SHOWN = 200;

export const eventsOf = (
  events: readonly HouseEvent[],
  { now, id }: Pick<SetOnDesk, 'now' | 'id'>,
): readonly HouseEvent[] => {
  const target = now.call === null ? '' : targetOfSet(now.call.house, id);
  return events.filter((event) => event.target === target);
};

export const SetEvents = ({ desk, events }: EventsProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { house, id, each, now, names } = desk;
  const context = { house, set: id, nameOf: nameOfPiece(each) };
  const lines = (events === null ? [] : eventsOf(events, desk)).flatMap((event) => {
    const words = eventWords(event, context);
    return words === null ? [] : [{ event, words }];
  });
  return (
    <section className="call-part" aria-labelledby="set-events">
      <h2 id="set-events">{tell('Said and done in this call')}</h2>
      {events === null ? <p role="status">{tell('Reading the record …')}</p> : null}
      {events !== null && lines.length === 0 ? <p>{tell('Nothing yet.')}</p> : null}
      <ol className="call-lines">
        {lines
          .slice(-SHOWN)
          .reverse()
          .map(({ event, words }) => (
            <li key={event.seq}>
              <span className="quiet">{clockWords(event.atMs)}</span> {words}{' '}
              <span className="quiet">
                {event.by === null && event.device === null
                  ? tell('(worked out by the server)')
                  : tell('({name})', { name: actorWords(event, now, { names, voice }) })}
              </span>
            </li>
          ))}
      </ol>
    </section>
  );
};

/** Written while the house was not heard: people look at them, one by one, together. */
export const PaperNotes = ({ desk, events }: EventsProps) => {
  const tell = useTell();
  const { set } = desk;
  if (set.notes.length === 0) return null;
  const texts = new Map(
    (events ?? []).flatMap((event) =>
      event.kind === 'note written' ? [[event.seq, event] as const] : [],
    ),
  );
  return (
    <section className="call-part" aria-labelledby="paper-notes">
      <h2 id="paper-notes">{tell('Notes of paper that nobody has settled')}</h2>
      <p className="quiet">
        {tell(
          'Written while the house was not heard. They change nothing by themselves: two people ' +
            'look, and either find the set again below or say that nothing changed.',
        )}
      </p>
      {set.notes.map((seq) => (
        <OneNote key={seq} desk={desk} seq={seq} event={texts.get(seq)} />
      ))}
    </section>
  );
};

type NoteProps = {
  readonly desk: SetOnDesk;
  readonly seq: number;
  readonly event: Extract<HouseEvent, { readonly kind: 'note written' }> | undefined;
};

const OneNote = ({ desk, seq, event }: NoteProps) => {
  const tell = useTell();
  const voice = useVoice();
  const saying = useSay();
  const [second, setSecond] = useState('');
  const [words, setWords] = useState('');
  const { id, isLive, now, names } = desk;
  const who = event === undefined ? '' : actorWords(event, now, { names, voice });
  const send = (): void =>
    saying.say({
      kind: 'note settled',
      set: id,
      payload: {
        note: seq,
        words: tell('{words}; second person {second}', {
          words: words.trim(),
          second: second.trim(),
        }),
      },
    });
  return (
    <CallForm
      title={tell('Note {seq}', { seq })}
      missing={[
        ...(words.trim() === '' ? [message('what you both saw')] : []),
        ...(second.trim() === '' ? [message('the second person by name')] : []),
      ]}
      saying={saying}
      isLive={isLive}
      button={tell('Nothing changed: settle note {seq}', { seq })}
      onSend={send}
    >
      <blockquote>{event?.payload.text ?? tell('Its words are being read.')}</blockquote>
      <p className="quiet">
        {event === undefined
          ? ''
          : tell('{name}, written {written} by that device, arrived {time}', {
              name: who,
              written: clockWords(event.payload.writtenMs ?? event.atMs),
              time: clockWords(event.atMs),
            })}
      </p>
      <div className="found-fields">
        <TextField label={tell('What you both saw')} value={words} onType={setWords} />
        <TextField label={tell('Second person, by name')} value={second} onType={setSecond} />
      </div>
    </CallForm>
  );
};
