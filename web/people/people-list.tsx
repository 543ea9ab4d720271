/** The people of the house, their roles, what they are signed off for, and their devices. */
import { useCallback, useEffect, useState } from 'react';
import { useTell, useVoice } from '../language/use-tell.ts';
import { type Answer, askPeople, type Made, type People, type Someone } from './ask-people.ts';
import { Competences } from './competences.tsx';
import { Devices } from './devices.tsx';
import { Part, RoleChoice } from './field.tsx';
import { Invite, Link_ } from './invite.tsx';
import { type Session, useSession } from './session.ts';
import { ThisMachine } from './this-machine.tsx';
import { type Act, useAct } from './use-act.tsx';
import { againstWords, ROLE_MEANINGS, ROLE_WORDS, ROLES } from './words.ts';

export const PeopleList = () => {
  const tell = useTell();
  const voice = useVoice();
  const session = useSession();
  const [found, setFound] = useState<People | null>(null);
  const [against, setAgainst] = useState('');
  const ask = useCallback(async (): Promise<void> => {
    const answer: Answer<People> = await askPeople('GET', '/api/people');
    if (answer.ok) setFound(answer.value);
    else setAgainst(againstWords(answer.against, voice));
  }, [voice]);
  useEffect(() => {
    ask().catch(() => setAgainst(tell('The server was not reached. Nothing was done.')));
  }, [ask, tell]);
  if (session === null || found === null) {
    return <p role="status">{against === '' ? tell('Asking for the people …') : against}</p>;
  }
  const isOwner = session.kind === 'thisMachine' || session.role === 'own';
  return (
    <>
      <Standing session={session} />
      {isOwner && session.hasOwner ? <ThisMachine session={session} /> : null}
      <Part title={tell('People of this house')}>
        {found.people.length === 0 ? (
          <p className="quiet">{tell('Nobody has a name here yet.')}</p>
        ) : null}
        {found.people.map((person) => (
          <OnePerson
            key={person.id}
            person={person}
            found={found}
            session={session}
            isOwner={isOwner}
            onChange={() => void ask()}
          />
        ))}
      </Part>
      {isOwner && session.hasOwner ? <Invite /> : null}
    </>
  );
};

/** How this device stands: in words, before anything else. */
const Standing = ({ session }: { readonly session: Session }) => {
  const tell = useTell();
  if (session.kind === 'person') return null;
  return (
    <p className="people-lead">
      {session.hasOwner
        ? tell('This machine is kept open: whoever sits here acts as an owner, without a name.')
        : tell(
            'One person on this machine needs no sign-in. Make an owner first if others are to ' +
              'come in from their own devices.',
          )}
      {session.hasOwner ? null : (
        <>
          {' '}
          <a className="people-way" href="/people/owner">
            {tell('Make an owner')}
          </a>
        </>
      )}
    </p>
  );
};

type OneProps = {
  readonly person: Someone;
  readonly found: People;
  readonly session: Session;
  readonly isOwner: boolean;
  readonly onChange: () => void;
};

const OnePerson = ({ person, found, session, isOwner, onChange }: OneProps) => {
  const tell = useTell();
  const [isOpen, setOpen] = useState(false);
  const act = useAct();
  const isSelf = session.id === person.id;
  return (
    <article className="one-person" aria-label={person.name}>
      <h3>
        {person.name}
        {isSelf ? <span className="open-word">{tell('you')}</span> : null}
      </h3>
      <p>
        {tell(ROLE_WORDS[person.role])}: {tell(ROLE_MEANINGS[person.role])}
      </p>
      <Competences person={person} found={found} act={act} onChange={onChange} />
      {isOwner ? (
        <>
          <p className="buttons">
            <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
              {tell('Role, devices, passphrase')}
              <span className="only-said"> {person.name}</span>
            </button>
          </p>
          {isOpen ? <Manage person={person} isSelf={isSelf} act={act} onChange={onChange} /> : null}
        </>
      ) : null}
      {act.said}
    </article>
  );
};

type ManageProps = {
  readonly person: Someone;
  readonly isSelf: boolean;
  readonly act: Act;
  readonly onChange: () => void;
};

const Manage = ({ person, isSelf, act: { act, isBusy }, onChange }: ManageProps) => {
  const tell = useTell();
  const { id, name } = person;
  const [made, setMade] = useState<Made | null>(null);
  const changed = async (work: Promise<Answer<unknown>>): Promise<Answer<unknown>> => {
    const answer = await work;
    if (answer.ok) onChange();
    return answer;
  };
  return (
    <div className="manage">
      <RoleChoice
        legend={tell('Role of {name}; it changes at once', { name })}
        roles={ROLES}
        chosen={person.role}
        onChoose={(role) =>
          void act(
            () => changed(askPeople('PUT', `/api/people/${id}/role`, { role })),
            tell('{name} has the role {role} now.', { name, role: tell(ROLE_WORDS[role]) }),
          )
        }
      />
      {isSelf ? null : <Devices of={person} />}
      <p className="buttons">
        <button
          type="button"
          disabled={isBusy}
          onClick={() =>
            void act(async () => {
              const answer = await askPeople<Made>('POST', `/api/people/${id}/new-passphrase`);
              if (answer.ok) setMade(answer.value);
              return answer;
            })
          }
        >
          {tell('Link to a new passphrase')}
        </button>
        <TakeOut
          name={name}
          isBusy={isBusy}
          onDone={() => void act(() => changed(askPeople('DELETE', `/api/people/${id}`)))}
        />
      </p>
      {made === null ? null : <Link_ made={made} />}
    </div>
  );
};

type TakeOutProps = {
  readonly name: string;
  readonly isBusy: boolean;
  readonly onDone: () => void;
};

/** In two steps, since it cannot be taken back. */
const TakeOut = ({ name, isBusy, onDone }: TakeOutProps) => {
  const tell = useTell();
  const [isSure, setSure] = useState(false);
  if (!isSure) {
    return (
      <button type="button" onClick={() => setSure(true)}>
        {tell('Take {name} out', { name })}
      </button>
    );
  }
  return (
    <>
      <button type="button" className="grave" disabled={isBusy} onClick={onDone}>
        {tell('Yes, take {name} out at once', { name })}
      </button>
      <button type="button" onClick={() => setSure(false)}>
        {tell('Leave it')}
      </button>
    </>
  );
};
