/** The fit to one house, asked anew when a document or the mapping by hand changes. */
import { useEffect, useMemo, useState } from 'react';
import type { Fit, Proposal } from '#fitting';
import type { JsonObject } from '../keeping/json.ts';
import { useWork } from '../reckoning/use-work.ts';
import { searchFit } from './fit-search.ts';
import { readMoves } from './moved.ts';

export type Target = { readonly house: JsonObject; readonly state: JsonObject | null };

export type Fitted = {
  /** The last answer; it stays while a move by hand is worked out. */
  readonly fit: Fit | null;
  readonly progress: { readonly done: number; readonly of: number } | null;
  readonly isStopped: boolean;
  readonly stop: () => void;
  readonly again: () => void;
};

type Found = { readonly of: object; readonly proposal: Proposal; readonly fit: Fit };

export const useFit = (target: Target, moved: string | null): Fitted => {
  const { documents, nowMs, show } = useWork();
  const { house, state } = target;
  const question = useMemo(
    () => ({ from: documents, to: { house, state } }),
    [documents, house, state],
  );
  const [found, setFound] = useState<Found | null>(null);
  const [progress, setProgress] = useState<Fitted['progress']>(null);
  const [fault, setFault] = useState<Error | null>(null);
  const [stopped, setStopped] = useState<object | null>(null);
  const proposal = found?.of === question ? found.proposal : null;
  const isStopped = stopped === question;
  // A minute that passes changes no fit, and a proposal that came is no new question.
  // biome-ignore lint/correctness/useExhaustiveDependencies: proposal and clock as they stood
  useEffect(() => {
    if (isStopped) return undefined;
    const named = { id: 'fitted', name: show.name };
    return searchFit(
      { ...question, proposal, moves: readMoves(moved), named, nowMs },
      {
        onAnswer: (answer) => {
          if (answer.is === 'progress') setProgress(answer);
          else {
            setProgress(null);
            setFound({ of: question, proposal: answer.proposal, fit: answer.fit });
          }
        },
        onFault: setFault,
      },
    );
  }, [question, moved, isStopped]);
  // A screen that could not fit must not look like one that found nothing.
  if (fault !== null) throw fault;
  return {
    fit: found?.of === question ? found.fit : null,
    progress,
    isStopped,
    stop: () => setStopped(question),
    again: () => setStopped(null),
  };
};
