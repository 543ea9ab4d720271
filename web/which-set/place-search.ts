/** One thread a question; it ends with its answer, or when nobody waits for it any more. */
import type { CandidateWork, Places } from '#placing';
import type { Documents } from '../reckoning/reckon.ts';
import type { Question } from './typed-piece.ts';

export type PlaceRequest = {
  readonly documents: Documents;
  readonly question: Question;
  readonly nowMs: number;
  /** All free sets; or what the order of work needs on these. */
  readonly ask: 'places' | { readonly workOn: readonly string[] };
};

export type PlaceAnswer =
  | { readonly is: 'places'; readonly places: Places }
  | { readonly is: 'work'; readonly set: string; readonly work: CandidateWork }
  | { readonly is: 'done' };

type Heard = {
  readonly onAnswer: (answer: PlaceAnswer) => void;
  readonly onFault: (fault: Error) => void;
};

/** What it returns gives the question up. */
export const searchPlaces = (request: PlaceRequest, { onAnswer, onFault }: Heard): (() => void) => {
  const worker = new Worker(new URL('./place.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<PlaceAnswer>) => {
    if (data.is === 'done') worker.terminate();
    onAnswer(data);
  });
  worker.addEventListener('error', ({ message }) => {
    worker.terminate();
    onFault(new Error(`the search for a set stopped: ${message}`));
  });
  worker.postMessage(request);
  return () => worker.terminate();
};
