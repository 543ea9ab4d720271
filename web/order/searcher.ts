/** One thread that searches for orders; a search that nobody waits for any more is ended. */
import type { CallDocuments } from '#call';
import type { HouseNow } from '#state';
import type { Documents as RawDocuments } from '../reckoning/reckon.ts';
import type { FoundAnswer } from './found.ts';
import type { Asked } from './question.ts';

/** In a call the work begins where the set truly stands, whatever a document says. */
export type SearchRequest =
  | { readonly documents: RawDocuments; readonly asked: Asked }
  | { readonly inCall: CallDocuments; readonly now: HouseNow; readonly asked: Asked };

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

/** The server that has the searching program is away; it is asked for again after this. */
const AGAIN_MS = 3000;

/** Starts a search; what it returns gives the search up. */
export const search = (request: SearchRequest, heard: Heard): (() => void) => {
  const ended = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const begin = (): void => {
    const end = searchOnce(request, heard, () => {
      timer = setTimeout(begin, AGAIN_MS);
    });
    ended.signal.addEventListener('abort', end, { once: true });
  };
  begin();
  return () => {
    clearTimeout(timer);
    ended.abort();
  };
};

const searchOnce = (
  request: SearchRequest,
  { onFound, onFault }: Heard,
  onUnreached: () => void,
): (() => void) => {
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
    (event) => {
      ended.abort();
      mine.terminate();
      // A program that could not be fetched has no message; one that failed says what it was.
      if (event instanceof ErrorEvent && event.message !== '') {
        onFault(new Error(`the search for an order stopped: ${event.message}`));
      } else onUnreached();
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
