/** How the server says it is, asked anew while the screen stands open. */
import { useEffect, useState } from 'react';
import type { Health } from '#events';
import { houseFetch } from '../offline/house-fetch.ts';

/** `asking` until the first answer; after a failure the last answer stays, with its age. */
export type Asked = {
  readonly health: Health | null;
  readonly is: 'asking' | 'answered' | 'unreached';
};

const EVERY_MS = 15_000;

const askHealth = async (): Promise<Health | null> => {
  try {
    const response = await houseFetch('/api/health', { cache: 'no-store' });
    return response.ok ? ((await response.json()) as Health) : null;
  } catch {
    return null;
  }
};

export const useHealth = (): Asked => {
  const [asked, setAsked] = useState<Asked>({ health: null, is: 'asking' });
  useEffect(() => {
    let isGone = false;
    const ask = async (): Promise<void> => {
      const health = await askHealth();
      if (isGone) return;
      setAsked((before) =>
        health === null ? { health: before.health, is: 'unreached' } : { health, is: 'answered' },
      );
    };
    void ask();
    const timer = setInterval(() => void ask(), EVERY_MS);
    return () => {
      isGone = true;
      clearInterval(timer);
    };
  }, []);
  return asked;
};
