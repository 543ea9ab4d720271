/** One set in a call: how it truly stands, who knows it, and what a person may say of it. */
import { type ReactNode, useEffect, useRef } from 'react';
import { targetOfSet } from '#call';
import { purchaseOf } from '#house';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { NoteForm } from '../live/note-form.tsx';
import { stateWord } from './desk-words.ts';
import { DoubtForm, LockForm } from './doubt-forms.tsx';
import { FindForm } from './find-form.tsx';
import { PullForm, WeighForm } from './measure-forms.tsx';
import { PlanPart } from './plan-part.tsx';
import { PaperNotes, SetEvents } from './set-events.tsx';
import type { SetOnDesk } from './set-on-desk.ts';
import { SetStanding, SetWarnings, SetWork } from './set-state.tsx';
import { TagForms } from './tag-forms.tsx';
import type { OpenDesk } from './use-desk.ts';
import { useEventsOf } from './use-events.ts';
import '../live/live.css';

type PageProps = { readonly open: OpenDesk; readonly desk: SetOnDesk };

export const CallSetPage = ({ open, desk }: PageProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { id, each, set, now } = desk;
  const events = useEventsOf(open.call, now.seq);
  const word = stateWord(set, voice);
  const hasArbor = purchaseOf(each.set.lineSet.suspension) !== null;
  return (
    <>
      <header className="call-set-head">
        <p className="call-number">{id}</p>
        <h1>{each.set.hang?.name ?? tell('empty by the plan')}</h1>
        {word === null ? null : (
          <p className={set.held === 'unheld' ? 'danger-word' : 'caution-word'}>
            <Glyph name={set.held === 'unheld' ? 'danger' : 'unknown'} />
            {word}
          </p>
        )}
      </header>
      <SetWarnings desk={desk} />
      <SetWork desk={desk} />
      <SetStanding desk={desk} />
      <PaperNotes desk={desk} events={events} />
      {hasArbor ? <Forms open={open} desk={desk} /> : <NoArbor />}
      <section className="call-part said" aria-labelledby="set-note">
        <h2 id="set-note">{tell('Write a note')}</h2>
        <NoteForm target={targetOfSet(open.call.house, id)} />
      </section>
      <SetEvents desk={desk} events={events} />
    </>
  );
};

/** The first is what is wanted most of a set in this state; the others are opened by a person. */
const Forms = ({ open, desk }: PageProps) => {
  const tell = useTell();
  const isUnknown = desk.set.standing === null;
  const parts = [
    [tell('Order of work'), <PlanPart key="plan" open={open} desk={desk} />, false],
    [tell('Find it'), <FindForm key="find" desk={desk} />, isUnknown],
    [tell('Doubt it'), <DoubtForm key="doubt" desk={desk} />, false],
    [tell('Pull test and weighing'), <Measures key="measure" desk={desk} />, false],
    [tell('Rope lock'), <LockForm key="lock" desk={desk} />, desk.set.lockDoubt !== null],
    [tell('Tag'), <TagForms key="tag" desk={desk} />, desk.set.tag !== null],
  ] as const;
  return (
    <div className="call-forms">
      {parts.map(([head, part, isWanted]) => (
        <Part key={head} head={head} isWanted={isWanted}>
          {part}
        </Part>
      ))}
    </div>
  );
};

type PartProps = {
  readonly head: string;
  readonly isWanted: boolean;
  readonly children: ReactNode;
};

/** It opens by itself where it is wanted; only a person closes it, since they may be writing. */
const Part = ({ head, isWanted, children }: PartProps) => {
  const part = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (isWanted && part.current !== null) part.current.open = true;
  }, [isWanted]);
  return (
    <details ref={part}>
      <summary>{head}</summary>
      {children}
    </details>
  );
};

const Measures = ({ desk }: { readonly desk: SetOnDesk }) => (
  <>
    <PullForm desk={desk} />
    <WeighForm desk={desk} />
  </>
);

const NoArbor = () => {
  const tell = useTell();
  return (
    <p>
      {tell(
        'This set has no arbor: the call keeps no count of it and gives no leave on it. It is ' +
          'worked by the rules of its own machine or line; write a note of what was done.',
      )}
    </p>
  );
};
