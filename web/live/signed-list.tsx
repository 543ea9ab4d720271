/** Who signed the card, and whether each sign-off stands. */
import { useId } from 'react';
import type { Standing } from '#events';
import { useTell, useVoice } from '../language/use-tell.ts';
import { sayServerTime } from './say-standing.ts';
import type { SaidHere } from './server.ts';
import { Withdraw } from './withdraw.tsx';

type Signed = SaidHere['signed'][number];

export const SignedList = ({ said }: { readonly said: SaidHere | null }) => (
  <ul>
    {said?.signed.map((signed) => (
      <OneSigned key={signed.event.seq} signed={signed} said={said} />
    ))}
  </ul>
);

const OneSigned = ({ signed, said }: { readonly signed: Signed; readonly said: SaidHere }) => {
  const tell = useTell();
  const voice = useVoice();
  const id = useId();
  const { event, standing } = signed;
  const { by, seq, payload } = event;
  const { statement, role } = payload;
  const when = sayServerTime(event.atMs, Date.now(), voice);
  const withdrawal = withdrawalIn(standing);
  return (
    <li>
      <p id={id}>
        {by === null
          ? tell('Signed at this machine, {when}, event {seq}: {statement}', {
              when,
              seq,
              statement,
            })
          : tell('Signed by {by} ({role}), {when}, event {seq}: {statement}', {
              by: said.names[by] ?? by,
              role,
              when,
              seq,
              statement,
            })}
      </p>
      <StandingWords standing={standing} />
      {standing.stands || withdrawal !== null ? (
        <Withdraw event={event} withdrawal={withdrawal} seen={said.seen} said={said} about={id} />
      ) : null}
    </li>
  );
};

/** Of this sign-off: another that was withdrawn on the same set is a change as any other. */
const withdrawalIn = (standing: Standing) => {
  if (standing.stands || standing.because !== 'withdrawn') return null;
  return standing.event.kind === 'withdrawn' ? standing.event : null;
};

const StandingWords = ({ standing }: { readonly standing: Standing }) => {
  const tell = useTell();
  const voice = useVoice();
  if (standing.stands) return <p>{tell('It stands: nothing that it rests on has changed.')}</p>;
  const { seq, atMs } = standing.event;
  const when = sayServerTime(atMs, Date.now(), voice);
  return (
    <p className="void">
      {standing.because === 'withdrawn'
        ? tell('Void: withdrawn by event {seq}, {when}.', { seq, when })
        : tell('Void: what it rests on has changed since, event {seq}, {when}.', { seq, when })}
    </p>
  );
};
