/** The line sets as a table that is typed into, with one of them opened below it. */
import { message, phrase, type Voice } from '#texts';
import { Link } from '../address/link.tsx';
import { hasGiven, lengthAnew } from '../editing/show-edits.ts';
import { writtenText } from '../editing/written.ts';
import { ChoiceCell, type Option } from '../grid/choice-cell.tsx';
import { EditCell } from '../grid/edit-cell.tsx';
import { GridArea } from '../grid/grid-area.tsx';
import { shownText } from '../grid/typed-marks.ts';
import { at, type Json, type JsonObject } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { AddSets } from './add-sets.tsx';
import { CopySet } from './copy-set.tsx';
import { type Desk, markOf, useDesk, valueAt } from './desk.ts';
import { EntryForm, entriesAt, type HouseEntry } from './entry-list.tsx';
import { fieldId, fieldName } from './entry-path.ts';
import type { PartList } from './parts.ts';

type PartProps = { readonly list: PartList; readonly asked: readonly string[] };

export const SetsPart = ({ list, asked }: PartProps) => {
  const desk = useDesk();
  const tell = useTell();
  const sets = entriesAt(valueAt(desk, [list.at]));
  const opened = sets.find(({ id }) => asked[0] === list.at && asked[1] === id);
  return (
    <section aria-labelledby="list-sets" className="entry-list">
      <h3 id="list-sets">{tell('Line sets, in a table')}</h3>
      {sets.length === 0 ? (
        <p className="empty-words">{tell('No line set is entered yet.')}</p>
      ) : (
        <SetsTable sets={sets} opened={opened?.id ?? null} />
      )}
      <AddSets />
      {opened === undefined ? null : (
        <section className="entry-opened" aria-labelledby="set-opened">
          <h3 id="set-opened" tabIndex={-1}>
            {tell('Line set {id}', { id: opened.id })}
          </h3>
          <p className="quiet">
            {tell(
              'What is not said here is from its kind. What is typed here holds for this set ' +
                'alone.',
            )}
          </p>
          <CopySet set={opened} />
          <EntryForm key={asked.join('.')} list={list} entry={opened} asked={asked} />
        </section>
      )}
    </section>
  );
};

type TableProps = { readonly sets: readonly HouseEntry[]; readonly opened: string | null };

const HEADS = [
  message('number'),
  message('kind'),
  message('place upstage'),
  message('flown from'),
  message('grip test held'),
  message('its own values'),
];

const SetsTable = ({ sets, opened }: TableProps) => {
  const tell = useTell();
  const name = tell('Table of line sets');
  return (
    <GridArea>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys */}
      <section className="wide entry-sets" aria-label={name} tabIndex={0}>
        <table className="plain">
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th key={head} scope="col">
                  {tell(head)}
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

const ownWords = ({ written }: HouseEntry, voice: Voice): string => {
  const own = Object.keys(written).filter((key) => !COMMON.includes(key));
  return own.length === 0 ? phrase(voice, 'none') : own.join(', ');
};

const shown = (value: Json | undefined, { house }: Desk): string =>
  shownText(writtenText(value), markOf({ house })) || phrase(house, 'unknown');

type RowProps = { readonly set: HouseEntry; readonly isOpened: boolean };

const SetRow = ({ set, isOpened }: RowProps) => {
  const tell = useTell();
  const { house } = useDesk();
  const { id } = set;
  const none = { value: '', words: tell('from its kind') };
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
          name={tell('Open set {id}', { id })}
          isHere={isOpened}
          isCell
        >
          <span id={fieldId(['lineSets', set.id, 'row'])}>{set.id}</span>
        </Link>
      </th>
      <NameCell set={set} field="type" list="setTypes" name={tell('Kind of set {id}', { id })} />
      <LengthCell set={set} keys={['y']} of="length" name={tell('Place of set {id}', { id })} />
      <NameCell
        set={set}
        field="rail"
        list="rails"
        name={tell('Rail of set {id}', { id })}
        none={none}
      />
      <LengthCell
        set={set}
        keys={LOCK_GRIP}
        of="force"
        name={tell('Grip test of set {id}', { id })}
      />
      <td>{ownWords(set, house)}</td>
    </tr>
  );
};

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
      {shown(value, desk)}
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
  const tell = useTell();
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
        (inherited === null
          ? tell('not said')
          : tell('{value}, from its kind', { value: writtenText(inherited.value) }))}
    </ChoiceCell>
  );
};
