/** One thread that searches for orders; a search that nobody waits for any more is ended. */
import type { Documents as RawDocuments } from '../reckoning/reckon.ts';
import type { FoundAnswer } from './found.ts';
import type { Asked } from './question.ts';

export type SearchRequest = { readonly documents: RawDocuments; readonly asked: Asked };

type Heard = {
  readonly onFound: (answer: FoundAnswer) => void;
  readonly onFault: (fault: Error) => void;
};

let idle: Worker | null = null;

const worker = (): Worker => {
  const ready = idle;
  idle = null;
  return ready ?? new Worker(new URL('./search.worker.ts', import.meta.url), { type: 'module' });
};

/** Starts a search; what it returns gives the search up. */
export const search = (request: SearchRequest, { onFound, onFault }: Heard): (() => void) => {
  const mine = worker();
  const ended = new AbortController();
  const { signal } = ended;
  mine.addEventListener(
    'message',
    ({ data }: MessageEvent<FoundAnswer>) => {
      ended.abort();
      idle = mine;
      onFound(data);
    },
    { signal },
  );
  mine.addEventListener(
    'error',
    ({ message }) => {
      ended.abort();
      mine.terminate();
      onFault(new Error(`the search for an order stopped: ${message}`));
    },
    { signal },
  );
  mine.postMessage(request);
  return () => {
    if (signal.aborted) return;
    ended.abort();
    mine.terminate();
  };
};
