/** In the strip: whether what is shown is how things stand. Below it: what needs a person. */
import { useEffect } from 'react';
import type { Alarm } from '#events';
import { unreachable } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { keeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { sayStanding } from './say-standing.ts';
import { live, startLive, useLive } from './use-live.ts';
import './live.css';

export const LiveWord = () => {
  const voice = useVoice();
  const { standing } = useLive();
  useEffect(startLive, []);
  return (
    <p className="live-word" aria-live="polite" data-live={standing.is}>
      {sayStanding(standing, Date.now(), voice)}
    </p>
  );
};

/** The documents are read anew as well: what is shown must be of the record that was taken. */
const takeRecord = (): void => {
  void keeper.refresh();
  live.taken();
};

const TakeRecord = () => {
  const tell = useTell();
  return (
    <p className="buttons">
      <button type="button" onClick={takeRecord}>
        {tell('I have asked: go on with the record of this server')}
      </button>
    </p>
  );
};

const HOUR_MIN = 60;

const useClockWords = (): ((offsetMs: number) => string) => {
  const tell = useTell();
  return (offsetMs) => {
    const all = Math.round(Math.abs(offsetMs) / 1000);
    const names = {
      hours: Math.floor(all / 3600),
      minutes: Math.floor(all / 60) % HOUR_MIN,
      seconds: all % 60,
    };
    return offsetMs > 0
      ? tell('{hours} h {minutes} min {seconds} s ahead of the server', names)
      : tell('{hours} h {minutes} min {seconds} s behind the server', names);
  };
};

const AlarmNotice = ({ alarm }: { readonly alarm: Alarm }) => {
  const tell = useTell();
  const clock = useClockWords();
  switch (alarm.kind) {
    case 'anotherHouse':
      return (
        <Notice degree="danger" title={tell('this server has another house')} isNews>
          <p>
            {tell(
              'It is not the house that this device was used in. Ask the technician which server ' +
                'is the right one before anybody works by this screen.',
            )}
          </p>
          <TakeRecord />
        </Notice>
      );
    case 'anotherRecord':
      return (
        <Notice degree="danger" title={tell('the record of this house was replaced')} isNews>
          <p>
            {tell(
              'A backup was restored or a copy was made the record. What was recorded since may ' +
                'be missing. Ask who did it, and check how the sets stand before anybody moves ' +
                'one.',
            )}
          </p>
          <TakeRecord />
        </Notice>
      );
    case 'wentBackwards':
      return (
        <Notice degree="danger" title={tell('the record of this house went backwards')} isNews>
          <p>
            {tell(
              'This device has seen events that the server no longer has. Ask the technician, ' +
                'and check how the sets stand before anybody moves one.',
            )}
          </p>
          <TakeRecord />
        </Notice>
      );
    case 'clockOff':
      return (
        <Notice degree="caution" title={tell('the clock of this device is wrong')} isNews>
          <p>
            {tell(
              'It is {off}. Order and times are the server’s; ' + 'set the clock of this device.',
              { off: clock(alarm.offsetMs) },
            )}
          </p>
        </Notice>
      );
    default:
      return unreachable(alarm);
  }
};

export const LiveAlarms = () => {
  const { alarms } = useLive();
  return alarms.length === 0 ? null : (
    <div className="live-alarms">
      {alarms.map((alarm) => (
        <AlarmNotice key={alarm.kind} alarm={alarm} />
      ))}
    </div>
  );
};
