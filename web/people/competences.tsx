/** What a person is signed off for: who says so, until when; to be revoked in one tap. */

import { type FormEvent, useId, useState } from 'react';
import type { Task } from '#events';
import { useTell, useVoice } from '../language/use-tell.ts';
import { momentNow } from '../offline/house-fetch.ts';
import { askPeople, type Competence, type People, type Someone } from './ask-people.ts';
import { Field } from './field.tsx';
import type { Act } from './use-act.tsx';
import { dayWords, lapseWords, TASK_WORDS, TASKS } from './words.ts';

type Props = {
  readonly person: Someone;
  readonly found: People;
  readonly act: Act;
  readonly onChange: () => void;
};

export const Competences = ({ person, found, act: { act, isBusy }, onChange }: Props) => {
  const tell = useTell();
  const [isOpen, setOpen] = useState(false);
  const own = found.competences.filter((each) => each.person === person.id);
  const revoke = ({ id }: Competence) =>
    act(async () => {
      const answer = await askPeople('DELETE', `/api/people/${person.id}/competences/${id}`);
      if (answer.ok) onChange();
      return answer;
    });
  return (
    <>
      {own.length === 0 ? (
        <p className="quiet">{tell('Signed off for no task.')}</p>
      ) : (
        <ul className="people-list">
          {own.map((each) => (
            <OneCompetence
              key={each.id}
              competence={each}
              person={person}
              found={found}
              isBusy={isBusy}
              onRevoke={() => void revoke(each)}
            />
          ))}
        </ul>
      )}
      <p className="buttons">
        <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {tell('Sign off for a task')}
          <span className="only-said"> {person.name}</span>
        </button>
      </p>
      {isOpen ? (
        <GiveForm
          onGive={(task, lastDay) => {
            setOpen(false);
            void act(async () => {
              const asked = lastDay === '' ? { task } : { task, lastDay };
              const answer = await askPeople('POST', `/api/people/${person.id}/competences`, asked);
              if (answer.ok) onChange();
              return answer;
            });
          }}
        />
      ) : null}
    </>
  );
};

type OneProps = Pick<Props, 'person' | 'found'> & {
  readonly competence: Competence;
  readonly isBusy: boolean;
  readonly onRevoke: () => void;
};

const OneCompetence = ({ competence, person, found, isBusy, onRevoke }: OneProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { task, signedBy, signedAtMs } = competence;
  const day = dayWords(signedAtMs, voice);
  const name =
    found.people.find(({ id }) => id === signedBy)?.name ?? tell('one who is not here any more');
  return (
    <li>
      <span>
        <b>{tell(TASK_WORDS[task])}</b>
        {': '}
        {lapseWords(competence, momentNow().serverMs, voice)}
        {'; '}
        {signedBy === null
          ? tell('signed at the machine of the server, {day}', { day })
          : tell('signed by {name}, {day}', { name, day })}
      </span>
      <button type="button" disabled={isBusy} onClick={onRevoke}>
        {tell('Revoke')}
        <span className="only-said">
          {' '}
          {tell(TASK_WORDS[task])}, {person.name}
        </span>
      </button>
    </li>
  );
};

const GiveForm = ({ onGive }: { readonly onGive: (task: Task, lastDay: string) => void }) => {
  const tell = useTell();
  const id = useId();
  const [task, setTask] = useState<Task>('induct');
  const [day, setDay] = useState('');
  const give = (event: FormEvent): void => {
    event.preventDefault();
    onGive(task, day);
  };
  return (
    <form className="people-form" onSubmit={give} noValidate>
      <div className="people-field">
        <label htmlFor={id}>{tell('Task you have seen done')}</label>
        <select
          id={id}
          value={task}
          onChange={({ target }) => setTask(TASKS.find((each) => each === target.value) ?? task)}
        >
          {TASKS.map((each) => (
            <option key={each} value={each}>
              {tell(TASK_WORDS[each])}
            </option>
          ))}
        </select>
      </div>
      <Field
        label={tell('Last day')}
        type="date"
        value={day}
        onChange={setDay}
        note={tell(
          'Empty for the usual time: 12 months, for a lead 24. An inspection holds as long as ' +
            'its paper says.',
        )}
      />
      <p className="quiet">
        {tell(
          'You say that you watched it done. It is recorded under your name, and certifies ' +
            'nothing.',
        )}
      </p>
      <p className="buttons">
        <button type="submit">{tell('Sign off')}</button>
      </p>
    </form>
  );
};
