/** An invitation: a link as text and as QR, shown once; those that are open, to be withdrawn. */

import qrcode from 'qrcode-generator';
import { useEffect, useState } from 'react';
import type { Role } from '#events';
import { useTell, useVoice } from '../language/use-tell.ts';
import { type Answer, askPeople, type Invitation, type Made } from './ask-people.ts';
import { Field, Part, RoleChoice } from './field.tsx';
import { useAct } from './use-act.tsx';
import { dayWords, ROLE_WORDS, ROLES } from './words.ts';

/** Modules of white that a reader needs round the code: ISO/IEC 18004, from memory. */
const QUIET = 4;

/** Black on white in every light, since a camera reads it and not a person. */
const QrCode = ({ text, title }: { readonly text: string; readonly title: string }) => {
  const code = qrcode(0, 'M');
  code.addData(text);
  code.make();
  const modules = code.getModuleCount();
  const places = Array.from({ length: modules * modules }, (_, at) => ({
    row: Math.floor(at / modules),
    column: at % modules,
  })).filter(({ row, column }) => code.isDark(row, column));
  const d = places.map(({ row, column }) => `M${column} ${row}h1v1h-1z`).join('');
  const size = modules + 2 * QUIET;
  return (
    <svg
      className="people-qr"
      role="img"
      aria-label={title}
      viewBox={`${-QUIET} ${-QUIET} ${size} ${size}`}
    >
      <rect x={-QUIET} y={-QUIET} width={size} height={size} fill="#ffffff" />
      <path d={d} fill="#000000" shapeRendering="crispEdges" />
    </svg>
  );
};

type Health = { readonly addresses?: readonly string[] };

const isLoopback = (): boolean => /^(localhost|127\.|\[::1\])/.test(location.hostname);

/** An address that other devices reach: that of this page, or what the server says of itself. */
const useReach = (): string => {
  const [reach, setReach] = useState(location.origin);
  useEffect(() => {
    if (!isLoopback()) return;
    askPeople<Health>('GET', '/api/health')
      .then((answer: Answer<Health>) => {
        const [first] = answer.ok ? (answer.value.addresses ?? []) : [];
        if (first !== undefined) setReach(first);
      })
      .catch(() => undefined);
  }, []);
  return reach;
};

export const Link_ = ({ made }: { readonly made: Made }) => {
  const tell = useTell();
  const voice = useVoice();
  const reach = useReach();
  const { invitation, token } = made;
  const url = `${reach}/join#${token}`;
  const isHereOnly = /^https?:\/\/(localhost|127\.|\[::1\])/.test(reach);
  return (
    <div className="people-link">
      <QrCode text={url} title={tell('Invitation as a code for a camera')} />
      <div>
        <p>
          {tell('For {name}. Good once, until the end of {day}. It is not shown again.', {
            name: invitation.name,
            day: dayWords(invitation.expiresAtMs, voice),
          })}
        </p>
        <p className="people-url">{url}</p>
        {isHereOnly ? (
          <p>
            {tell(
              'This server listens on this machine only, so that the link opens here and on no ' +
                'other device.',
            )}
          </p>
        ) : null}
        <p className="quiet">
          {tell('Whoever has this link can take it up: hand it to the person and to nobody else.')}
        </p>
      </div>
    </div>
  );
};

export const Invite = () => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const [name, setName] = useState('');
  const [role, setRole] = useState<Role>('view');
  const [made, setMade] = useState<Made | null>(null);
  const invite = () =>
    act(async () => {
      const answer = await askPeople<Made>('POST', '/api/people/invitations', { name, role });
      if (answer.ok) {
        setMade(answer.value);
        setName('');
      }
      return answer;
    });
  return (
    <Part title={tell('Invite somebody')}>
      <form
        className="people-form"
        onSubmit={(event) => {
          event.preventDefault();
          void invite();
        }}
      >
        <Field label={tell('For whom')} value={name} onChange={setName} />
        <RoleChoice legend={tell('Role')} roles={ROLES} chosen={role} onChoose={setRole} />
        {said}
        <p className="buttons">
          <button type="submit" disabled={isBusy}>
            {tell('Make an invitation')}
          </button>
        </p>
      </form>
      {made === null ? null : <Link_ made={made} />}
      <OpenInvitations made={made} />
    </Part>
  );
};

const OpenInvitations = ({ made }: { readonly made: Made | null }) => {
  const tell = useTell();
  const voice = useVoice();
  const { act, said } = useAct();
  const [open, setOpen] = useState<readonly Invitation[]>([]);
  const [count, setCount] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again after each change
  useEffect(() => {
    askPeople<{ invitations: readonly Invitation[] }>('GET', '/api/people/invitations')
      .then((answer) => {
        if (answer.ok) setOpen(answer.value.invitations);
      })
      .catch(() => undefined);
  }, [made, count]);
  const withdraw = ({ id, name }: Invitation) =>
    act(
      async () => {
        const answer = await askPeople('DELETE', `/api/people/invitations/${id}`);
        setCount(count + 1);
        return answer;
      },
      tell('The invitation for {name} is withdrawn.', { name }),
    );
  return (
    <>
      {open.length === 0 ? null : (
        <ul className="people-list">
          {open.map((each) => (
            <li key={each.id}>
              <span>
                <b>{each.name}</b>, {tell(ROLE_WORDS[each.role])}
                {': '}
                {tell('open until the end of {day}', { day: dayWords(each.expiresAtMs, voice) })}
              </span>
              <button type="button" onClick={() => void withdraw(each)}>
                {tell('Withdraw')}
                <span className="only-said"> {each.name}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {said}
    </>
  );
};
