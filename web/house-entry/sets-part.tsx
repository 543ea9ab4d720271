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

type RowProps = { readonly set: HouseEntry; readonly isOpened: boolean };

const SetRow = ({ set, isOpened }: RowProps) => (
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
    <NameCell set={set} field="type" list="setTypes" name={`Kind of set ${set.id}`} />
    <LengthCell set={set} keys={['y']} of="length" name={`Place of set ${set.id}`} />
    <NameCell set={set} field="rail" list="rails" name={`Rail of set ${set.id}`} none={NONE} />
    <LengthCell set={set} keys={LOCK_GRIP} of="force" name={`Grip test of set ${set.id}`} />
    <td>{ownWords(set)}</td>
  </tr>
);

const LOCK_GRIP = ['lock', 'grip'] as const;

type CellProps = { readonly set: HouseEntry; readonly name: string };

const LengthCell = ({
  set,
  keys,
  of,
  name,
}: CellProps & { readonly keys: readonly string[]; readonly of: 'length' | 'force' }) => {
  const desk = useDesk();
  const value = at(set.written, keys);
  return (
    <EditCell
      name={name}
      text={writtenText(value)}
      measure={{ dimension: of, units: desk.house.units }}
      take={(text) => lengthTaken(desk, set, keys, text)}
    >
      {shown(value)}
    </EditCell>
  );
};

type NameCellProps = CellProps & {
  readonly field: string;
  readonly list: string;
  readonly none?: Option;
};

/** A choice among entries of the house; what is not said is from the kind of the set. */
const NameCell = ({ set, field, list, name, none }: NameCellProps) => {
  const desk = useDesk();
  const path = ['lineSets', set.key, field];
  const chosen = writtenText(set.written[field]);
  const inherited = desk.inheritedAt(path);
  const named = desk
    .named(list)
    .map((each) => ({ value: each.id, words: [...new Set([each.id, each.name])].join(', ') }));
  return (
    <ChoiceCell
      name={name}
      chosen={chosen}
      options={none === undefined ? named : [none, ...named]}
      take={(value) => desk.put(path, value === '' ? undefined : value, field)}
    >
      {chosen ||
        (inherited === null ? 'not said' : `${writtenText(inherited.value)}, from its kind`)}
    </ChoiceCell>
  );
};
