/** How the server says it is, asked anew while the screen stands open. */
import { useEffect, useState } from 'react';
import { houseFetch } from '../offline/house-fetch.ts';

export type Caution =
  | 'notFlushed'
  | 'diskFull'
  | 'diskLow'
  | 'readOnly'
  | 'certificateDue'
  | 'plainHttp'
  | 'noBackup';

export type Mode = 'loopback' | 'ownAuthority' | 'houseCertificate' | 'plain';

export type Health = {
  readonly is: 'well' | 'caution' | 'failing';
  readonly cautions: readonly Caution[];
  readonly time: string;
  readonly startedAt: string;
  readonly version: string;
  readonly build: string;
  readonly mode: Mode;
  readonly signOffs: boolean;
  readonly addresses: readonly string[];
  readonly trustAddresses: readonly string[];
  readonly certificate: {
    readonly fingerprint: string;
    readonly until: string;
    readonly daysLeft: number;
  } | null;
  readonly database: 'demo' | 'house';
  readonly record: {
    readonly seq: number;
    readonly houseKey: string;
    readonly recordKey: string;
    readonly isReadOnly: boolean;
    readonly isFlushed: boolean;
    readonly lastBackupAt: string | null;
  };
  readonly disk: { readonly freeBytes: number; readonly totalBytes: number } | null;
  readonly logLevel: 'error' | 'warn' | 'info' | 'debug' | null;
};

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
