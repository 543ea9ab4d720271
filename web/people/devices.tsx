/** Devices that are signed in, one's own or another's, to be signed out one or all. */
import { useCallback, useEffect, useState } from 'react';
import { sayMoment } from '#sheets';
import { useTell, useVoice } from '../language/use-tell.ts';
import { askPeople, type Device, type Someone } from './ask-people.ts';
import { useAct } from './use-act.tsx';

type Found = { readonly devices: readonly Device[]; readonly own?: string };

/** Of a person whom an owner looks at, or one's own where nobody is named. */
export const Devices = ({ of }: { readonly of?: Someone }) => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const base = of === undefined ? '/api/session/devices' : `/api/people/${of.id}/devices`;
  const [found, setFound] = useState<Found | null>(null);
  const ask = useCallback(async (): Promise<void> => {
    const answer = await askPeople<Found>('GET', base);
    if (answer.ok) setFound(answer.value);
  }, [base]);
  useEffect(() => {
    ask().catch(() => undefined);
  }, [ask]);
  const end = (path: string, done: string) =>
    act(async () => {
      const answer = await askPeople('DELETE', path);
      await ask();
      return answer;
    }, done);
  const devices = found?.devices ?? [];
  return (
    <>
      <ul className="people-list">
        {devices.map((each) => (
          <OneDevice
            key={each.id}
            device={each}
            isOwn={each.id === found?.own}
            isBusy={isBusy}
            onEnd={() => void end(`${base}/${each.id}`, tell('The device is signed out.'))}
          />
        ))}
      </ul>
      {found !== null && devices.length === 0 ? (
        <p className="quiet">{tell('Signed in on no device.')}</p>
      ) : null}
      <p className="buttons">
        <button
          type="button"
          disabled={isBusy}
          onClick={() => void end(base, tell('All those devices are signed out.'))}
        >
          {of === undefined
            ? tell('Sign out all others')
            : tell('Sign {name} out everywhere', { name: of.name })}
        </button>
      </p>
      {said}
    </>
  );
};

type OneProps = {
  readonly device: Device;
  readonly isOwn: boolean;
  readonly isBusy: boolean;
  readonly onEnd: () => void;
};

const OneDevice = ({ device: { label, seenAtMs }, isOwn, isBusy, onEnd }: OneProps) => {
  const tell = useTell();
  const voice = useVoice();
  const moment = sayMoment(new Date(seenAtMs).toISOString(), voice);
  return (
    <li>
      <span>
        <b>{label === '' ? tell('a device') : label}</b>
        {isOwn ? <span className="open-word">{tell('this device')}</span> : null}
        {': '}
        {tell('last seen {moment}', { moment })}
      </span>
      {isOwn ? null : (
        <button type="button" disabled={isBusy} onClick={onEnd}>
          {tell('Sign out')}
          <span className="only-said"> {label}</span>
        </button>
      )}
    </li>
  );
};
