/** One archive being made: what it is at, and how it ended. */
import { useEffect, useRef, useState } from 'react';
import { message, phrase, type Voice } from '#texts';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { useVoice } from '../language/use-tell.ts';
import { houseFetch } from '../offline/house-fetch.ts';
import { builtFrom } from '../self-check/use-checks.ts';
import type { PackAnswer, PackRequest } from './archive-request.ts';
import { download } from './download.ts';
import { GatherFault, type GatherOptions, gather } from './gather.ts';
import { sayGathered } from './say-gathered.ts';

export type Packing =
  | { readonly is: 'none' }
  | { readonly is: 'at'; readonly words: string; readonly done: number; readonly of: number }
  | { readonly is: 'ended'; readonly why: string }
  | {
      readonly is: 'made';
      readonly name: string;
      readonly files: number;
      readonly bytes: number;
      readonly leftOut: PackRequest['leftOut'];
    };

type Packed = Extract<PackAnswer, { readonly is: 'packed' }>;

const packed = (
  request: PackRequest,
  signal: AbortSignal,
  onPart: (done: number, of: number) => void,
): Promise<Packed> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./archive.worker.ts', import.meta.url), { type: 'module' });
    const end = (): void => worker.terminate();
    signal.addEventListener('abort', () => {
      end();
      reject(new DOMException('given up', 'AbortError'));
    });
    worker.addEventListener('message', ({ data }: MessageEvent<PackAnswer>) => {
      if (data.is === 'part') return onPart(data.done, data.of);
      end();
      return resolve(data);
    });
    worker.addEventListener('error', ({ message }) => {
      end();
      reject(new Error(`the packing stopped: ${message}`));
    });
    worker.postMessage(request);
  });

const endedWords = (fault: unknown, voice: Voice): string | null => {
  if (fault instanceof DOMException && fault.name === 'AbortError') {
    return phrase(voice, 'It was given up.');
  }
  if (fault instanceof GatherFault) {
    return phrase(voice, 'It was not made: {why}.', { why: sayGathered(voice, fault.message) });
  }
  return fault instanceof TypeError
    ? phrase(voice, 'It was not made: the server was not reached.')
    : null;
};

export const usePacking = () => {
  const voice = useVoice();
  const [packing, setPacking] = useState<Packing>({ is: 'none' });
  const [fault, setFault] = useState<Error | null>(null);
  const ending = useRef<AbortController | null>(null);
  useEffect(() => () => ending.current?.abort(), []);
  if (fault !== null) throw fault;
  const make = async (options: Omit<GatherOptions, 'by'>): Promise<void> => {
    ending.current?.abort();
    const mine = new AbortController();
    ending.current = mine;
    const { signal } = mine;
    const onStep = (words: string, done: number, of: number): void =>
      setPacking({ is: 'at', words, done, of });
    try {
      const by = nameOnDevice();
      const ask = (path: string): Promise<Response> => houseFetch(path, { signal });
      const gathered = await gather(ask, { ...options, by }, onStep);
      const at = new Date().toISOString();
      const request = { ...gathered, made: { at, by, ...builtFrom() } };
      const { bytes, files, leftOut } = await packed(request, signal, (done, of) =>
        onStep(message('Tables, drawings, packing'), done, of),
      );
      const name = `counterpoise-${at.slice(0, 16).replace(/[T:]/g, '-')}.zip`;
      download(name, 'zip', bytes);
      setPacking({ is: 'made', name, files, bytes: bytes.length, leftOut });
    } catch (reason) {
      const why = endedWords(reason, voice);
      if (why === null) setFault(reason instanceof Error ? reason : new Error(String(reason)));
      else setPacking({ is: 'ended', why });
    }
  };
  return { packing, make, cancel: () => ending.current?.abort() };
};
