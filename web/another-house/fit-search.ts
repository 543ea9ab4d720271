/** One thread a fit; it ends with its answer, or when nobody waits for it any more. */
import type { Fit, Named, Proposal } from '#fitting';
import type { JsonObject } from '../keeping/json.ts';
import type { Documents } from '../reckoning/reckon.ts';
import type { Move } from './moved.ts';

export type FitRequest = {
  readonly from: Documents;
  readonly to: { readonly house: JsonObject; readonly state: JsonObject | null };
  /** What was proposed before; null asks for a proposal first. */
  readonly proposal: Proposal | null;
  /** Moves by hand upon what is proposed. */
  readonly moves: readonly Move[];
  readonly named: Named;
  readonly nowMs: number;
};

export type FitAnswer =
  | { readonly is: 'progress'; readonly done: number; readonly of: number }
  | { readonly is: 'fit'; readonly fit: Fit; readonly proposal: Proposal };

type Heard = {
  readonly onAnswer: (answer: FitAnswer) => void;
  readonly onFault: (fault: Error) => void;
};

/** What it returns gives the fit up. */
export const searchFit = (request: FitRequest, { onAnswer, onFault }: Heard): (() => void) => {
  const worker = new Worker(new URL('./fit.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FitAnswer>) => {
    if (data.is === 'fit') worker.terminate();
    onAnswer(data);
  });
  worker.addEventListener('error', ({ message }) => {
    worker.terminate();
    onFault(new Error(`the fit to the other house stopped: ${message}`));
  });
  worker.postMessage(request);
  return () => worker.terminate();
};
