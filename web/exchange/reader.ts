/** One reading of one file: told as it goes on, ended by a person or by the clock. */
import { sizeFault } from '#archive';
import type { JsonObject } from '../keeping/json.ts';
import type { Found } from './file-reading.ts';

export type ReadRequest = {
  readonly file: string;
  readonly bytes: ArrayBuffer;
  readonly houses: readonly JsonObject[];
};

export type ReadAnswer =
  | { readonly is: 'part'; readonly done: number; readonly of: number }
  | { readonly is: 'found'; readonly found: Found };

/** A file, or text that was pasted under a name. */
export type Given = {
  readonly name: string;
  readonly size: number;
  readonly bytes: () => Promise<ArrayBuffer>;
};

type Heard = {
  readonly onPart: (done: number, of: number) => void;
  readonly onFound: (found: Found) => void;
  readonly onTooLong: () => void;
  readonly onFault: (fault: Error) => void;
};

/** The largest archive takes some ten seconds on an old machine; three times that. */
export const READ_SECONDS_MAX = 30;

/** Starts to read; what it returns ends it. */
export const startReading = (
  given: Given,
  houses: readonly JsonObject[],
  { onPart, onFound, onTooLong, onFault }: Heard,
): (() => void) => {
  const large = sizeFault(given.name, given.size);
  if (large !== null) {
    onFound({ is: 'refused', file: given.name, refusals: [large] });
    return () => {};
  }
  const worker = new Worker(new URL('./read.worker.ts', import.meta.url), { type: 'module' });
  const end = (): void => {
    clearTimeout(timer);
    worker.terminate();
  };
  const timer = setTimeout(() => {
    end();
    onTooLong();
  }, READ_SECONDS_MAX * 1000);
  worker.addEventListener('message', ({ data }: MessageEvent<ReadAnswer>) => {
    if (data.is === 'part') return onPart(data.done, data.of);
    end();
    return onFound(data.found);
  });
  worker.addEventListener('error', ({ message }) => {
    end();
    onFault(new Error(`the reading stopped: ${message}`));
  });
  given.bytes().then(
    (bytes) => {
      const request: ReadRequest = { file: given.name, bytes, houses };
      worker.postMessage(request, [bytes]);
    },
    () => {
      end();
      const found = 'a file that this device does not give';
      const accepted = 'a file that is still where it was chosen';
      const refusals = [{ code: 'ARC-004', path: given.name, found, accepted }];
      onFound({ is: 'refused', file: given.name, refusals });
    },
  );
  return end;
};
