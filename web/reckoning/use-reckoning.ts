/**
 * What the engine makes of the documents in view. A change of the show is worked out at once; one
 * of the house touches every set and is worked out in slices, with the answer from before, marked
 * as such, on the screen until it is done.
 */
import { startTransition, useEffect, useMemo, useRef, useState } from 'react';
import { inSlices } from './in-slices.ts';
import type { InView } from './in-view.ts';
import {
  type Documents,
  type ReckonAnswer,
  type Reckoning,
  reckon,
  reckonInSteps,
} from './reckon.ts';

type Done = {
  readonly documents: Documents;
  readonly clockMs: number;
  readonly answer: ReckonAnswer;
};

const reckoningIn = (done: Done | null): Reckoning | null =>
  done?.answer.ok ? done.answer.value : null;

export type ReckonedView = {
  readonly answer: ReckonAnswer;
  /** The figures are those from before the last change. */
  readonly isBehind: boolean;
};

export const useReckoning = (view: InView, clockMs: number): ReckonedView => {
  const [house, show] = [view.house.document, view.show.document];
  const state = view.state?.document ?? null;
  const documents = useMemo((): Documents => ({ house, show, state }), [house, show, state]);
  const last = useRef<Done | null>(null);
  const [slow, finish] = useState<Done | null>(null);
  const isOf = (done: Done | null): boolean =>
    done?.documents === documents && done.clockMs === clockMs;
  const isBehind = last.current !== null && last.current.documents.house !== house && !isOf(slow);
  const fresh = useMemo((): Done | null => {
    if (isBehind) return null;
    if (slow?.documents === documents && slow.clockMs === clockMs) return slow;
    const answer = reckon(documents, clockMs, reckoningIn(last.current));
    return { documents, clockMs, answer };
  }, [documents, clockMs, slow, isBehind]);
  useEffect(() => {
    if (fresh !== null) last.current = fresh;
  }, [fresh]);
  useEffect(() => {
    if (!isBehind) return undefined;
    const steps = reckonInSteps(documents, clockMs, reckoningIn(last.current));
    return inSlices(steps, (answer) => {
      startTransition(() => finish({ documents, clockMs, answer }));
    });
  }, [documents, clockMs, isBehind]);
  const shown = fresh ?? last.current;
  if (shown === null) throw new Error('defect: the first reckoning is never behind');
  return { answer: shown.answer, isBehind };
};
