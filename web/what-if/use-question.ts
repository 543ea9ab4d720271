/** The set as it would be: the question of the address, read and reckoned like the plan itself. */
import { useMemo, useRef, useState } from 'react';
import type { Refusal } from '#outcome';
import { addressNow, go } from '../address/use-address.ts';
import type { JsonObject } from '../keeping/json.ts';
import { readShowOnce } from '../reckoning/read-once.ts';
import { reckon } from '../reckoning/reckon.ts';
import { type Editing, useWork, type Work } from '../reckoning/use-work.ts';
import { readQuestion, writeQuestion } from './question.ts';

export type Questioned =
  | { readonly is: 'asked'; readonly work: Work; readonly show: JsonObject }
  /** The plan has changed since, or the address was never right. */
  | { readonly is: 'unread' }
  | { readonly is: 'refused'; readonly refusals: readonly Refusal[] };

export type Question = {
  readonly answer: Questioned;
  readonly editing: Editing;
  /** More is changed than the address can hold: a reload would lose it. */
  readonly isUnaddressed: boolean;
  readonly putBack: () => void;
};

const useAnswer = (text: string | null, set: string, over: JsonObject | null): Questioned => {
  const plan = useWork();
  return useMemo(() => {
    const show = over ?? readQuestion(plan.documents.show, set, text);
    if (show === null) return { is: 'unread' };
    const read = reckon({ ...plan.documents, show }, plan.nowMs, plan);
    if (!read.ok) return { is: 'refused', refusals: read.error.refusals };
    const house = { ...read.value.house, tongue: plan.house.tongue };
    return { is: 'asked', work: { ...read.value, house, kept: plan.kept }, show };
  }, [plan, set, text, over]);
};

export const useQuestion = (set: string, text: string | null): Question => {
  const plan = useWork();
  // What does not fit into an address is kept by this page while it stands open.
  const [over, setOver] = useState<{ readonly of: JsonObject; readonly show: JsonObject } | null>(
    null,
  );
  const held = over !== null && over.of === plan.documents.show ? over.show : null;
  const answer = useAnswer(text, set, held);
  const shown = useRef(answer);
  shown.current = answer;
  const editing = useMemo((): Editing => {
    const { house, documents } = plan;
    return {
      change: ({ write }) => {
        const before = shown.current.is === 'asked' ? shown.current.show : documents.show;
        const next = write(before);
        const read = readShowOnce(next, house);
        if (!read.ok) return read.error;
        const change = writeQuestion(documents.show, next, set);
        setOver(change === undefined ? { of: documents.show, show: next } : null);
        if (change !== undefined) ask(set, change);
        return [];
      },
    };
  }, [plan, set]);
  return {
    answer,
    editing,
    isUnaddressed: held !== null,
    putBack: () => {
      setOver(null);
      ask(set, null);
    },
  };
};

const ask = (set: string, change: string | null): void => {
  const { place } = addressNow();
  if (place.kind === 'whatIf' && place.set === set) {
    go({ kind: 'whatIf', set, change }, { replace: true });
  }
};
