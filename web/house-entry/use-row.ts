/**
 * A row of fields that belong to one value. It is taken as a whole when the hand leaves it or on
 * Enter, so that value, basis and source are one edit; what is refused stays to be mended.
 */
import { type FocusEvent, type KeyboardEvent, useState } from 'react';
import type { Refusal } from '#outcome';
import { isSame, type Json } from '../keeping/json.ts';

type ToWrite =
  | { readonly json: Json | undefined }
  | { readonly missing: string }
  | { readonly refusals: readonly Refusal[] };

type RowParts<T> = {
  /** As the document has it. */
  readonly shown: T;
  readonly before: Json | undefined;
  readonly toWrite: (draft: T) => ToWrite;
  readonly put: (json: Json | undefined) => readonly Refusal[];
};

type RowState<T> = {
  readonly draft: T | null;
  /** What is still to be said before it can be kept. */
  readonly missing: string | null;
  readonly refusals: readonly Refusal[];
};

const isField = (target: EventTarget): boolean =>
  target instanceof HTMLInputElement || target instanceof HTMLSelectElement;

export const useRow = <T>({ shown, before, toWrite, put }: RowParts<T>) => {
  const idle: RowState<T> = { draft: null, missing: null, refusals: [] };
  const [state, setState] = useState(idle);
  const type = (draft: T): void => setState({ draft, missing: null, refusals: [] });
  const commit = (draft: T | null): void => {
    if (draft === null) return;
    const written = toWrite(draft);
    if ('missing' in written) {
      setState({ draft, missing: written.missing, refusals: [] });
      return;
    }
    if ('refusals' in written) {
      setState({ draft, missing: null, refusals: written.refusals });
      return;
    }
    const refusals = isSame(written.json, before) ? [] : put(written.json);
    setState(refusals.length === 0 ? idle : { draft, missing: null, refusals });
  };
  return {
    text: state.draft ?? shown,
    isTyped: state.draft !== null,
    missing: state.missing,
    refusals: state.refusals,
    type,
    /** Takes a choice at once, where nothing else belongs to the value. */
    take: commit,
    row: {
      onBlur: ({ currentTarget, relatedTarget }: FocusEvent) => {
        if (!currentTarget.contains(relatedTarget)) commit(state.draft);
      },
      onKeyDown: (event: KeyboardEvent) => {
        if (event.key === 'Escape') setState(idle);
        else if (event.key === 'Enter' && isField(event.target)) {
          commit(state.draft);
          event.preventDefault();
        }
      },
    },
  };
};
