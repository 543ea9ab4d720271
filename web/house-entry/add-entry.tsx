/**
 * A new entry. It is asked for what it cannot be without, and judged as a whole when it is added;
 * everything else about it is unknown, and is entered in its rows afterwards.
 */
import { useEffect, useId, useRef, useState } from 'react';
import type { Refusal } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { at, type JsonObject, withAt } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { DeskContext, useDesk } from './desk.ts';
import { idFrom } from './entry-path.ts';
import type { Field, Form } from './form.ts';

type AddProps = {
  readonly form: Form;
  readonly place: string;
  /** "kind of brick" */
  readonly one: string;
  readonly begin?: JsonObject;
  /** Ids that are taken. */
  readonly taken?: readonly string[];
  /** Ask for all of its fields, and not only for those it cannot be without. */
  readonly isWhole?: boolean;
  readonly onAdd: (entry: JsonObject) => readonly Refusal[];
};

const NOTHING: JsonObject = {};

const fieldsOf = (form: Form, isWhole: boolean): readonly Field[] =>
  form.kind === 'object'
    ? form.fields.filter(
        ({ isNeeded, form: inner }) => isNeeded || (isWhole && inner.kind !== 'given'),
      )
    : [];

/** Until a person has typed an id, it follows the name. */
const withId = (entry: JsonObject, before: JsonObject, taken: readonly string[]): JsonObject => {
  const { name, id } = entry;
  const followed = idFrom(typeof before['name'] === 'string' ? before['name'] : '', taken);
  const isOwn = typeof id === 'string' && id !== followed;
  if (typeof name !== 'string' || isOwn) return entry;
  return { ...entry, id: idFrom(name, taken) };
};

/** A name comes before the id that is made from it. */
const inOrder = (fields: readonly Field[]): readonly Field[] => [
  ...fields.filter(({ key }) => key === 'name'),
  ...fields.filter(({ key }) => key !== 'name'),
];

/** A person who has just asked for the form goes on in it. */
const FirstFocus = () => {
  const ref = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    ref.current?.parentElement?.querySelector<HTMLElement>('input, select')?.focus();
  }, []);
  return <span ref={ref} hidden />;
};

/** The entry as it is asked for; nothing of it is in the document yet. */
const useDraftEntry = ({ form, begin = NOTHING, taken = [], isWhole = false, onAdd }: AddProps) => {
  const [draft, setDraft] = useState<JsonObject | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const fields = inOrder(fieldsOf(form, isWhole));
  const hasIdFromName = fields.some(({ key }) => key === 'name');
  const end = (): void => {
    setDraft(null);
    setRefusals([]);
  };
  const add = (): void => {
    const refused = draft === null ? [] : onAdd(draft);
    if (refused.length === 0) end();
    else setRefusals(refused);
  };
  const put = (next: JsonObject): void => {
    setRefusals([]);
    setDraft((last) => (hasIdFromName ? withId(next, last ?? begin, taken) : next));
  };
  return { draft, refusals, fields, begin: () => setDraft(begin), put, add, end };
};

type DraftProps = {
  readonly draft: JsonObject;
  readonly put: (next: JsonObject) => void;
  readonly fields: readonly Field[];
  readonly place: string;
};

const DraftFields = ({ draft, put, fields, place }: DraftProps) => {
  const { house, named, Fields } = useDesk();
  const key = useId();
  return (
    <DeskContext
      value={{
        house,
        named,
        Fields,
        root: draft,
        keysOf: (path) => [key, ...path.map(String)],
        put: (path, value) => {
          put(withAt(draft, path, value) as JsonObject);
          return [];
        },
        givenAt: (path) => at(draft, [...path.slice(0, -1), 'given']),
        inheritedAt: () => null,
      }}
    >
      <Fields fields={fields} path={[]} place={place} />
    </DeskContext>
  );
};

export const AddEntry = (props: AddProps) => {
  const tell = useTell();
  const { place, one } = props;
  const { draft, refusals, fields, begin, put, add, end } = useDraftEntry(props);
  if (draft === null) {
    return (
      <p className="buttons entry-add">
        <button type="button" onClick={begin}>
          {tell('Add {one}', { one })}
        </button>
      </p>
    );
  }
  return (
    <fieldset className="entry-object entry-new">
      <legend>{tell('New: {one}', { one })}</legend>
      <FirstFocus />
      <DraftFields draft={draft} put={put} fields={fields} place={place} />
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('not added, nothing changed')} isNews>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
      <p className="buttons">
        <button type="button" onClick={add}>
          {tell('Add it')}
        </button>
        <button type="button" onClick={end}>
          {tell('Leave it')}
        </button>
      </p>
    </fieldset>
  );
};
