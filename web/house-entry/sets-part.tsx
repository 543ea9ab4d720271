/** The line sets as a table that is typed into, with one of them opened below it. */
import { Link } from '../address/link.tsx';
import { hasGiven, lengthAnew } from '../editing/show-edits.ts';
import { writtenText } from '../editing/written.ts';
import { ChoiceCell, type Option } from '../grid/choice-cell.tsx';
import { EditCell } from '../grid/edit-cell.tsx';
import { GridArea } from '../grid/grid-area.tsx';

import { at, type Json, type JsonObject } from '../keeping/json.ts';
import { AddSets } from './add-sets.tsx';
import { CopySet } from './copy-set.tsx';
import { type Desk, say, useDesk, valueAt } from './desk.ts';
import { EntryForm, entriesAt, type HouseEntry } from './entry-list.tsx';
import { fieldId, fieldName } from './entry-path.ts';
import type { PartList } from './parts.ts';

type PartProps = { readonly list: PartList; readonly asked: readonly string[] };

const NONE: Option = { value: '', words: 'from its kind' };

export const SetsPart = ({ list, asked }: PartProps) => {
  const desk = useDesk();
  const sets = entriesAt(valueAt(desk, [list.at]));
  const opened = sets.find(({ id }) => asked[0] === list.at && asked[1] === id);
  return (
    <section aria-labelledby="list-sets" className="entry-list">
      <h3 id="list-sets">{say(desk, 'Line sets, in a table')}</h3>
      {sets.length === 0 ? (
        <p className="empty-words">{say(desk, 'No line set is entered yet.')}</p>
      ) : (
        <SetsTable sets={sets} opened={opened?.id ?? null} />
      )}
      <AddSets />
      {opened === undefined ? null : (
        <section className="entry-opened" aria-labelledby="set-opened">
          <h3 id="set-opened" tabIndex={-1}>
            {say(desk, 'Line set')} {opened.id}
          </h3>
          <p className="quiet">
            What is not said here is from its kind. What is typed here holds for this set alone.
          </p>
          <CopySet set={opened} />
          <EntryForm key={asked.join('.')} list={list} entry={opened} asked={asked} />
        </section>
      )}
    </section>
  );
};

type TableProps = { readonly sets: readonly HouseEntry[]; readonly opened: string | null };

const HEADS = ['number', 'kind', 'place upstage', 'flown from', 'grip test held', 'its own values'];

const SetsTable = ({ sets, opened }: TableProps) => {
  const desk = useDesk();
  return (
    <GridArea>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys */}
      <section className="wide entry-sets" aria-label="Table of line sets" tabIndex={0}>
        <table className="plain">
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th key={head} scope="col">
                  {say(desk, head)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sets.map((set) => (
              <SetRow key={set.id} set={set} isOpened={set.id === opened} />
            ))}
          </tbody>
        </table>
      </section>
    </GridArea>
  );
};

/** A place typed anew keeps the basis that it had, and else counts as estimated. */
const lengthTaken = (desk: Desk, set: HouseEntry, keys: readonly string[], text: string) => {
  const path = ['lineSets', set.key, ...keys];
  const isBare = hasGiven(desk.root as JsonObject, path);
  const json = text.trim() === '' ? undefined : lengthAnew(at(set.written, keys), text, isBare);
  return desk.put(path, json, keys.join('.'));
};

/** What the set says itself, beside what every set says. */
const COMMON = ['id', 'type', 'y', 'rail', 'lock', 'given', 'remark'];

const ownWords = ({ written }: HouseEntry): string => {
  const own = Object.keys(written).filter((key) => !COMMON.includes(key));
  return own.length === 0 ? 'none' : own.join(', ');
};

const shown = (value: Json | undefined): string => writtenText(value) || 'unknown';

const SetRow = ({ set, isOpened }: { readonly set: HouseEntry; readonly isOpened: boolean }) => {
  const desk = useDesk();
  const { units } = desk.house;
  const field = (keys: readonly string[]): string => writtenText(at(set.written, keys));
  const options = (list: string): readonly Option[] =>
    desk
      .named(list)
      .map(({ id, name }) => ({ value: id, words: name === id ? id : `${id}, ${name}` }));
  const choose = (key: string) => (value: string) =>
    desk.put(['lineSets', set.key, key], value === '' ? undefined : value, key);
  const rail = field(['rail']);
  const inherited = desk.inheritedAt(['lineSets', set.key, 'rail']);
  return (
    <tr data-row="" className={isOpened ? 'chosen' : undefined}>
      <th scope="row">
        <Link
          to={{
            kind: 'house',
            part: 'enter',
            at: null,
            inside: 'sets',
            field: fieldName(['lineSets', set.id]),
          }}
          name={`Open set ${set.id}`}
          isHere={isOpened}
          isCell
        >
          <span id={fieldId(['lineSets', set.id, 'row'])}>{set.id}</span>
        </Link>
      </th>
      <ChoiceCell
        name={`Kind of set ${set.id}`}
        chosen={field(['type'])}
        options={options('setTypes')}
        take={choose('type')}
      >
        {field(['type'])}
      </ChoiceCell>
      <EditCell
        name={`Place of set ${set.id}`}
        text={field(['y'])}
        measure={{ dimension: 'length', units }}
        take={(text) => lengthTaken(desk, set, ['y'], text)}
      >
        {shown(set.written['y'])}
      </EditCell>
      <ChoiceCell
        name={`Rail of set ${set.id}`}
        chosen={rail}
        options={[NONE, ...options('rails')]}
        take={choose('rail')}
      >
        {rail ||
          (inherited === null ? 'not said' : `${writtenText(inherited.value)}, from its kind`)}
      </ChoiceCell>
      <EditCell
        name={`Grip test of set ${set.id}`}
        text={field(['lock', 'grip'])}
        measure={{ dimension: 'force', units }}
        take={(text) => lengthTaken(desk, set, ['lock', 'grip'], text)}
      >
        {shown(at(set.written, ['lock', 'grip']))}
      </EditCell>
      <td>{ownWords(set)}</td>
    </tr>
  );
};
