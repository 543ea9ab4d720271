/** The state of the device in words, and since when by the server's clock. */
import type { DeviceStanding } from '#events';
import { unreachable } from '#outcome';
import { sayMoment } from '#sheets';
import { phrase, type Voice } from '#texts';

const two = (number: number): string => String(number).padStart(2, '0');

/** `14:02:11` on the same day, else with the date; on the wall of where this device is. */
export const sayServerTime = (ms: number, nowMs: number, voice: Voice): string => {
  const [date, now] = [new Date(ms), new Date(nowMs)];
  const time = [date.getHours(), date.getMinutes()].map(two).join(':');
  if (date.toDateString() === now.toDateString()) return `${time}:${two(date.getSeconds())}`;
  const day = [date.getFullYear(), two(date.getMonth() + 1), two(date.getDate())].join('-');
  return sayMoment(`${day}T${time}`, voice);
};

export const sayStanding = (standing: DeviceStanding, nowMs: number, voice: Voice): string => {
  const { is, sinceServerMs } = standing;
  const since = sinceServerMs === null ? null : sayServerTime(sinceServerMs, nowMs, voice);
  switch (is) {
    case 'live':
      return phrase(voice, 'live since {since}', { since: since ?? '' });
    case 'catchingUp':
      return phrase(voice, 'catching up');
    case 'stale':
      return since === null
        ? phrase(voice, 'stale: not the record that this device knows')
        : phrase(voice, 'stale since {since}', { since });
    case 'offline':
      return since === null
        ? phrase(voice, 'offline')
        : phrase(voice, 'offline since {since}', { since });
    default:
      return unreachable(is);
  }
};
