/** The free sets for a question, and what the work on some of them needs, asked one by one. */
import { useEffect, useState } from 'react';
import type { CandidateWork, Places } from '#placing';
import { useWork } from '../reckoning/use-work.ts';
import { searchPlaces } from './place-search.ts';
import type { Question } from './typed-piece.ts';

type Works = ReadonlyMap<string, CandidateWork>;
const NONE: Works = new Map();

type Found = { readonly for: object; readonly places: Places; readonly works: Works };

/** Another as soon as a document or the question is: an answer is shown for no other. */
const useKey = (question: Question | null) => {
  const { documents } = useWork();
  const { house, show, state } = documents;
  const [key, setKey] = useState({ question, house, show, state });
  const isSame =
    key.question === question && key.house === house && key.show === show && key.state === state;
  if (isSame) return key;
  const next = { question, house, show, state };
  setKey(next);
  return next;
};

export const usePlaces = (question: Question | null) => {
  const { nowMs } = useWork();
  const key = useKey(question);
  const [found, setFound] = useState<Found | null>(null);
  const [fault, setFault] = useState<Error | null>(null);
  const [asking, setAsking] = useState<readonly string[]>([]);
  // A minute that passes changes no place; it is asked with the clock of its question.
  // biome-ignore lint/correctness/useExhaustiveDependencies: nowMs as it stood when asked
  useEffect(() => {
    setAsking([]);
    const { question: asked, ...documents } = key;
    if (asked === null) return undefined;
    return searchPlaces(
      { documents, question: asked, nowMs, ask: 'places' },
      {
        onAnswer: (answer) => {
          if (answer.is === 'places') setFound({ for: key, places: answer.places, works: NONE });
        },
        onFault: setFault,
      },
    );
  }, [key]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: nowMs as it stood when asked
  useEffect(() => {
    const { question: asked, ...documents } = key;
    if (asked === null || asking.length === 0) return undefined;
    return searchPlaces(
      { documents, question: asked, nowMs, ask: { workOn: asking } },
      {
        onAnswer: (answer) => {
          if (answer.is === 'done') setAsking([]);
          if (answer.is !== 'work') return;
          const { set, work } = answer;
          setFound((old) => old && { ...old, works: new Map([...old.works, [set, work]]) });
        },
        onFault: setFault,
      },
    );
  }, [key, asking]);
  // A screen that could not search must not look like one that found nothing.
  if (fault !== null) throw fault;
  return { found: found?.for === key ? found : null, asking, askWork: setAsking };
};
