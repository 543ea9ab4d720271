/** The time by the clock of the server, so often that ages in words are true while one looks. */
import { useEffect, useState } from 'react';
import { momentNow } from '../offline/house-fetch.ts';

const TICK_MS = 10_000;

export const useNow = (): number => {
  const [nowMs, setNow] = useState(() => momentNow().serverMs);
  useEffect(() => {
    const timer = setInterval(() => setNow(momentNow().serverMs), TICK_MS);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
};
