/** Tokens for other programs: made with a role, shown once, revoked at once. */

import { type FormEvent, useCallback, useEffect, useState } from 'react';
import type { Role } from '#events';
import { useTell, useVoice } from '../language/use-tell.ts';
import { askPeople, type Program } from './ask-people.ts';
import { Field, Part, RoleChoice } from './field.tsx';
import { useAct } from './use-act.tsx';
import { dayWords, ROLE_WORDS } from './words.ts';

/** A program does not own: it could let others in. */
const PROGRAM_ROLES: readonly Role[] = ['view', 'plan', 'run'];

type Made = { readonly program: Program; readonly token: string };

export const Programs = () => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const [programs, setPrograms] = useState<readonly Program[]>([]);
  const [made, setMade] = useState<Made | null>(null);
  const ask = useCallback(async (): Promise<void> => {
    const answer = await askPeople<{ programs: readonly Program[] }>('GET', '/api/tokens');
    if (answer.ok) setPrograms(answer.value.programs);
  }, []);
  useEffect(() => {
    ask().catch(() => undefined);
  }, [ask]);
  const make = (asked: Asked) =>
    act(async () => {
      const answer = await askPeople<Made>('POST', '/api/tokens', asked);
      if (answer.ok) {
        setMade(answer.value);
        await ask();
      }
      return answer;
    });
  const revoke = ({ id, name: of }: Program) =>
    act(
      async () => {
        const answer = await askPeople('DELETE', `/api/tokens/${id}`);
        await ask();
        return answer;
      },
      tell('The token of {name} is good no longer.', { name: of }),
    );
  return (
    <Part title={tell('Programs that may ask')}>
      <p className="people-lead">
        {tell(
          'Another program sends its token with each request, as the bearer of it. The role says ' +
            'what it may do; none lets others in.',
        )}
      </p>
      <ul className="people-list">
        {programs.map((each) => (
          <OneProgram
            key={each.id}
            program={each}
            isBusy={isBusy}
            onRevoke={() => void revoke(each)}
          />
        ))}
      </ul>
      <NewProgram isBusy={isBusy} onMake={(asked) => void make(asked)} />
      {made === null ? null : <Token made={made} />}
      {said}
    </Part>
  );
};

type Asked = { readonly name: string; readonly role: Role };
type NewProps = { readonly isBusy: boolean; readonly onMake: (asked: Asked) => void };

const NewProgram = ({ isBusy, onMake }: NewProps) => {
  const tell = useTell();
  const [name, setName] = useState('');
  const [role, setRole] = useState<Role>('view');
  const make = (event: FormEvent): void => {
    event.preventDefault();
    onMake({ name, role });
    setName('');
  };
  return (
    <form className="people-form" onSubmit={make}>
      <Field label={tell('Name of the program')} value={name} onChange={setName} />
      <RoleChoice legend={tell('Role')} roles={PROGRAM_ROLES} chosen={role} onChoose={setRole} />
      <p className="buttons">
        <button type="submit" disabled={isBusy}>
          {tell('Make a token')}
        </button>
      </p>
    </form>
  );
};

type OneProps = {
  readonly program: Program;
  readonly isBusy: boolean;
  readonly onRevoke: () => void;
};

const OneProgram = ({ program, isBusy, onRevoke }: OneProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { name, role, expiresAtMs, usedAtMs } = program;
  return (
    <li>
      <span>
        <b>{name}</b>, {tell(ROLE_WORDS[role])}
        {': '}
        {tell('holds to the end of {day}', { day: dayWords(expiresAtMs, voice) })}
        {'; '}
        {usedAtMs === null
          ? tell('never used')
          : tell('last used {day}', { day: dayWords(usedAtMs, voice) })}
      </span>
      <button type="button" disabled={isBusy} onClick={onRevoke}>
        {tell('Revoke')}
        <span className="only-said"> {name}</span>
      </button>
    </li>
  );
};

/** Once, and never again: only its hash is kept. */
const Token = ({ made: { program, token } }: { readonly made: Made }) => {
  const tell = useTell();
  return (
    <div className="people-token" role="status">
      <p>
        {tell('The token of {name}. Copy it now: it is not shown again.', { name: program.name })}
      </p>
      <p className="people-url">{token}</p>
    </div>
  );
};
