/** The entries of one list of the house, such as its kinds of brick, to be opened and filled. */
import { useState } from 'react';
import { message } from '#texts';
import { go } from '../address/use-address.ts';
import { RECORD, withArborBegun, withEntry, withoutEntry } from '../editing/house-edits.ts';
import { withoutFound } from '../editing/state-edits.ts';
import { useRecord } from '../house-found/use-record.ts';
import { at, isList, isObject, type Json, type JsonObject } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { AddEntry } from './add-entry.tsx';
import { noted, say, useDesk, valueAt } from './desk.ts';
import { fieldId, fieldName } from './entry-path.ts';
import { FieldView } from './field-view.tsx';
import { documentForm, type Field, type Form, fieldAt } from './form.ts';
import { useHouseEditing } from './house-desk.ts';
import { IdRow, namedWords } from './id-row.tsx';
import { labelOf } from './labels.ts';
import { type Group, type PartList, partOf } from './parts.ts';

export type HouseEntry = {
  readonly id: string;
  /** Its place in the list, or its key in the record. */
  readonly key: string | number;
  readonly written: JsonObject;
};

export const entriesAt = (value: Json | undefined): readonly HouseEntry[] => {
  const all = isList(value) ? [...value.entries()] : isObject(value) ? Object.entries(value) : [];
  return all.flatMap(([key, entry]) => {
    if (!isObject(entry)) return [];
    return [{ id: typeof key === 'string' ? key : String(entry['id']), key, written: entry }];
  });
};

const formOfEntry = (list: string): Extract<Form, { readonly kind: 'object' }> => {
  const { form } = fieldAt(documentForm('house'), list);
  const of = form.kind === 'list' || form.kind === 'record' ? form.of : form;
  if (of.kind !== 'object') throw new Error(`defect: ${list} has no entries`);
  return of;
};

/** A record has no field for its key, so a new entry is asked for an id of its own. */
const ID: Field = {
  key: 'id',
  form: { kind: 'id' },
  about: message('Id of the kind, as sets name it.'),
  isNeeded: true,
};
const CARRIED = 'suspension';

/** A kind of set is nothing without how it is carried, though a set could say that too. */
const formOfNew = (list: string): Form => {
  const form = formOfEntry(list);
  if (list !== 'setTypes') return form;
  const fields = form.fields.map((field) =>
    field.key === CARRIED ? { ...field, isNeeded: true } : field,
  );
  return { kind: 'object', fields: [ID, ...fields] };
};

/** The address names what was just added, so that it opens to be filled. */
const openEntry = (list: string, id: string): void => {
  const inside = partOf([list])?.id;
  if (inside === undefined) return;
  go({ kind: 'house', part: 'enter', at: null, inside, field: fieldName([list, id]) });
};

type ListProps = {
  readonly list: PartList;
  /** Ids of the field that is asked for by the address. */
  readonly asked: readonly string[];
};

/** So few are open from the start. */
const OPEN_MOST = 2;

export const EntryList = ({ list, asked }: ListProps) => {
  const desk = useDesk();
  const { change } = useHouseEditing();
  const entries = entriesAt(valueAt(desk, [list.at]));
  const isRecord = formOfNew(list.at) !== formOfEntry(list.at);
  const tell = useTell();
  const one = say(desk, list.one);
  return (
    <section aria-labelledby={`list-${list.at}`} className="entry-list">
      <h3 id={`list-${list.at}`}>{say(desk, labelOf(list.at))}</h3>
      {entries.length === 0 ? (
        <p className="empty-words">{tell('No {one} is entered yet.', { one })}</p>
      ) : null}
      {entries.map((entry) => {
        const isAsked = asked[0] === list.at && asked[1] === entry.id;
        return (
          <OneEntry
            key={isAsked ? `${entry.id} ${asked.join('.')}` : entry.id}
            list={list}
            entry={entry}
            isAsked={isAsked || (entries.length <= OPEN_MOST && asked.length === 0)}
          />
        );
      })}
      <AddEntry
        form={formOfNew(list.at)}
        place={list.at}
        one={one}
        taken={entries.map(({ id }) => id)}
        onAdd={({ id, ...rest }) => {
          const refusals = change({
            write: (house) =>
              isRecord
                ? withArborBegun(withEntry(house, [list.at], rest, String(id ?? '')), [
                    list.at,
                    String(id ?? ''),
                  ])
                : withEntry(house, [list.at], id === undefined ? rest : { id, ...rest }),
            what: `${noted(desk, list.one)} ${String(id ?? '')} added`,
          });
          if (refusals.length === 0) openEntry(list.at, String(id ?? ''));
          return refusals;
        }}
      />
    </section>
  );
};

type OneProps = {
  readonly list: PartList;
  readonly entry: HouseEntry;
  readonly isAsked: boolean;
};

const nameOf = ({ id, written }: HouseEntry): string => {
  const { name } = written;
  return typeof name === 'string' && name !== id ? `${id}, ${name}` : id;
};

const OneEntry = ({ list, entry, isAsked }: OneProps) => {
  const [toggled, setToggled] = useState<boolean | null>(null);
  const isOpen = toggled ?? isAsked;
  return (
    <details
      className="entry-entry"
      open={isOpen}
      onToggle={({ currentTarget, target }) => {
        if (target === currentTarget) setToggled(currentTarget.open);
      }}
    >
      <summary id={fieldId([list.at, entry.id])}>{nameOf(entry)}</summary>
      {isOpen ? <EntryForm list={list} entry={entry} /> : null}
    </details>
  );
};

type FormProps = Pick<OneProps, 'list' | 'entry'> & {
  /** A set says little itself, so what is from its kind is folded away. */
  readonly asked?: readonly string[];
};

/** Every field of one entry, in groups where it has many. */
export const EntryForm = ({ list, entry, asked }: FormProps) => {
  const desk = useDesk();
  const form = formOfEntry(list.at);
  const path = [list.at, entry.key];
  const groups = list.groups ?? [{ title: '', paths: byGiven(form.fields.map(({ key }) => key)) }];
  return (
    <>
      {typeof entry.key === 'string' ? (
        <IdRow list={list.at} id={entry.id} label={say(desk, labelOf('setTypes.id'))} />
      ) : null}
      {groups.map((group, index) => {
        const fields = group.paths.map((inner) => (
          <FieldView
            key={inner}
            field={fieldAt(form, inner)}
            path={[...path, ...inner.split('.')]}
            place={`${list.at}.${inner}`}
          />
        ));
        return asked === undefined || index === 0 ? (
          <div key={group.title} className="entry-group">
            {group.title === '' ? null : <h4>{say(desk, group.title)}</h4>}
            {fields}
          </div>
        ) : (
          <FoldedGroup key={group.title} group={group} entry={entry} asked={asked}>
            {fields}
          </FoldedGroup>
        );
      })}
      <Removal list={list} entry={entry} />
    </>
  );
};

type FoldedProps = {
  readonly group: Group;
  readonly entry: HouseEntry;
  readonly asked: readonly string[];
  readonly children: React.ReactNode;
};

const FoldedGroup = ({ group, entry, asked, children }: FoldedProps) => {
  const tell = useTell();
  const desk = useDesk();
  const [toggled, setToggled] = useState<boolean | null>(null);
  const hasOwn = group.paths.some((path) => at(entry.written, path.split('.')) !== undefined);
  const inner = asked.slice(2).join('.');
  const isAsked = group.paths.some((path) => inner === path || inner.startsWith(`${path}.`));
  const isOpen = toggled ?? isAsked;
  return (
    <details
      className="entry-entry"
      open={isOpen}
      onToggle={({ currentTarget, target }) => {
        if (target === currentTarget) setToggled(currentTarget.open);
      }}
    >
      <summary>
        {hasOwn
          ? tell('{title}: values of its own', { title: say(desk, group.title) })
          : tell('{title}: all from its kind', { title: say(desk, group.title) })}
      </summary>
      {isOpen ? children : null}
    </details>
  );
};

const byGiven = (keys: readonly string[]): readonly string[] => [
  ...keys.filter((key) => key === 'id' || key === 'name'),
  ...keys.filter((key) => key === 'given'),
  ...keys.filter((key) => !['id', 'name', 'given'].includes(key)),
];

/** An entry that is named elsewhere stays, and says by what. */
const Removal = ({ list, entry }: FormProps) => {
  const tell = useTell();
  const desk = useDesk();
  const { change } = useHouseEditing();
  const by = desk.naming?.namedBy(list.at, entry.id) ?? [];
  const [refused, setRefused] = useState<readonly string[]>([]);
  const one = `${say(desk, list.one)} ${entry.id}`;
  const gone = `${noted(desk, list.one)} ${entry.id}`;
  const record = useRecord();
  // Its record says nothing of a set that is gone; what a show hangs there is for a person to move.
  const isRecordAlone = list.at === 'lineSets' && by.length === 1 && by[0] === RECORD;
  const remove = (): void => {
    const forgotten = isRecordAlone
      ? record.edit({
          write: (state) => withoutFound(state, entry.id),
          what: `record of ${gone} taken away with it`,
        })
      : [];
    const refusals =
      forgotten.length > 0
        ? forgotten
        : change({
            write: (house) => withoutEntry(house, [list.at, entry.key], entry.id),
            what: `${gone} removed`,
          });
    setRefused(
      refusals.map(({ path, found, accepted }) =>
        tell('{path}: {found}, not {accepted}', { path, found, accepted }),
      ),
    );
  };
  return (
    <div className="entry-removal">
      <p className="buttons">
        <button type="button" disabled={by.length > 0 && !isRecordAlone} onClick={remove}>
          {isRecordAlone
            ? tell('Remove {one} and its record', { one })
            : tell('Remove {one}', { one })}
        </button>
        {by.length === 0 || isRecordAlone ? null : <span>{namedWords(by, desk.house)}</span>}
      </p>
      {refused.length === 0 ? null : (
        <div role="alert" className="entry-note">
          <p>{tell('It is still named, and stays:')}</p>
          <ul className="plain-list">
            {refused.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
};
