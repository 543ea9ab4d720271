/**
 * A post that does not hear the house: what it shows is of then, nothing can be asked or reported,
 * and what is done is done by paper, shouted, and noted here for people to settle later.
 */

import { useId, useState } from 'react';
import { targetOfSet } from '#call';
import type { HouseNow } from '#state';
import { Link } from '../address/link.tsx';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { NoteForm } from '../live/note-form.tsx';
import { NoteList } from '../live/note-list.tsx';
import { useLive } from '../live/use-live.ts';
import { sayAsOf } from '../offline/age-words.ts';
import type { PostTask } from './tasks.ts';
import { useCall } from './use-call.ts';

/** Noted here while the house was not heard: whether it still holds is a person's to say. */
export const HeldNotes = () => {
  const tell = useTell();
  const { outbox } = useLive();
  const held = outbox.filter(
    ({ command, way }) => command.kind === 'note written' && way === 'held',
  );
  if (held.length === 0) return null;
  return (
    <section className="held-notes" aria-label={tell('Notes that wait on this device')}>
      <NoteList said={null} unsent={held} hasFailed={false} />
    </section>
  );
};

type NoteProps = {
  readonly now: HouseNow;
  readonly house: string;
  readonly task: PostTask | null;
};

/** Sets on which something is under way: of them somebody at a post may have to write. */
const setsAtWork = ({ sets }: HouseNow): readonly string[] =>
  Object.entries(sets)
    .filter(([, { plan, leave, asked }]) => plan !== null || leave !== null || asked !== null)
    .map(([id]) => id);

export const NotLive = () => {
  const tell = useTell();
  const voice = useVoice();
  const { asOf } = useCall();
  return (
    <div className="not-live" role="alert">
      <Glyph name="stale" />
      <p>
        <b>{tell('NOT LIVE.')}</b>{' '}
        {asOf === null
          ? ''
          : tell('What is shown is {asOf}.', { asOf: sayAsOf(asOf, Date.now(), voice) })}{' '}
        {tell('No leave can be asked or given. Work by voice and paper, or stop.')}{' '}
        <Link to={{ kind: 'sheets', sheet: null }}>{tell('Sheets')}</Link>
      </p>
    </div>
  );
};

export const PaperNote = ({ now, house, task }: NoteProps) => {
  const tell = useTell();
  const id = useId();
  const [about, setAbout] = useState(task?.set ?? '');
  const sets = [...new Set([...(task === null ? [] : [task.set]), ...setsAtWork(now)])];
  return (
    <div className="paper-note">
      <p>{tell('Note what is done on paper. It changes nothing until people settle it.')}</p>
      <p>
        <label htmlFor={id}>{tell('It is about')}</label>{' '}
        <select id={id} value={about} onChange={({ target }) => setAbout(target.value)}>
          {sets.map((set) => (
            <option key={set} value={set}>
              {tell('set {set}', { set })}
            </option>
          ))}
          <option value="">{tell('the house')}</option>
        </select>
      </p>
      <NoteForm target={about === '' ? 'house' : targetOfSet(house, about)} />
    </div>
  );
};
