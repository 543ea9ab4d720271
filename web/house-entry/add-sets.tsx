/** Sets that stand one behind the other, all at once: from, to, first place, pitch, kind, rail. */
import { type FormEvent, useId, useState } from 'react';
import { setsInRow } from '#documents';
import { BASES } from '#house';
import type { Refusal } from '#outcome';
import { basisWords } from '#sheets';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { isList, type Json, type JsonObject, withAt } from '../keeping/json.ts';
import { say, sayGiven, useDesk } from './desk.ts';
import { exampleOf } from './form.ts';
import { useHouseEditing } from './house-desk.ts';

type Row = {
  readonly from: string;
  readonly to: string;
  readonly first: string;
  readonly pitch: string;
  readonly type: string;
  readonly rail: string;
  readonly basis: string;
  readonly source: string;
};

const EMPTY: Row = {
  from: '',
  to: '',
  first: '',
  pitch: '',
  type: '',
  rail: '',
  basis: '',
  source: '',
};

const missingOf = (row: Row, hasGiven: boolean): readonly string[] => [
  ...(row.from.trim() === '' ? ['the first number'] : []),
  ...(row.to.trim() === '' ? ['the last number'] : []),
  ...(row.first.trim() === '' ? ['the first place'] : []),
  ...(row.pitch.trim() === '' ? ['the pitch'] : []),
  ...(row.type === '' ? ['the kind of set'] : []),
  ...(row.basis === '' && !hasGiven ? ['how the places are known'] : []),
];

const placed = (y: Json | undefined, { basis, source }: Row): Json =>
  basis === ''
    ? (y ?? null)
    : { value: y ?? null, basis, ...(source.trim() === '' ? {} : { source: source.trim() }) };

const withSets = (house: JsonObject, sets: readonly JsonObject[], row: Row): JsonObject => {
  const before = house['lineSets'];
  const added = sets.map(
    ({ id, y }): JsonObject => ({
      id: id ?? '',
      type: row.type,
      y: placed(y, row),
      ...(row.rail === '' ? {} : { rail: row.rail }),
    }),
  );
  return withAt(house, ['lineSets'], [...(isList(before) ? before : []), ...added]) as JsonObject;
};

export const AddSets = () => {
  const desk = useDesk();
  const { change } = useHouseEditing();
  const [row, setRow] = useState(EMPTY);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [done, setDone] = useState('');
  const given = sayGiven(desk, ['lineSets', 0, 'y']);
  const missing = missingOf(row, given !== '');
  const type = (part: Partial<Row>): void => {
    setRow({ ...row, ...part });
    setRefusals([]);
    setDone('');
  };
  const add = (event: FormEvent): void => {
    event.preventDefault();
    const sets = setsInRow({ ...row, units: desk.house.units });
    const refused = sets.ok
      ? change({
          write: (house) => withSets(house, sets.value, row),
          what: `sets ${row.from} to ${row.to} added`,
        })
      : sets.error;
    setRefusals(refused);
    if (refused.length > 0) return;
    setDone(`Sets ${row.from} to ${row.to} are entered.`);
    setRow({ ...row, from: '', to: '', first: '' });
  };
  return (
    <form className="entry-add-sets" onSubmit={add} aria-label="Add sets">
      <h4>Add sets</h4>
      <div className="entry-add-fields">
        <Fields row={row} given={given} onType={type} />
      </div>
      <p className="buttons">
        <button type="submit" disabled={missing.length > 0}>
          Add the sets
        </button>
        <span role="status">
          {done !== '' ? done : missing.length === 0 ? '' : `Still to say: ${missing.join(', ')}.`}
        </span>
      </p>
      {desk.named('setTypes').length === 0 ? (
        <p className="quiet">{say(desk, 'A kind of set comes first: there is none yet.')}</p>
      ) : null}
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title="no set was added" isNews>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
    </form>
  );
};

type FieldsProps = {
  readonly row: Row;
  readonly given: string;
  readonly onType: (part: Partial<Row>) => void;
};

const Fields = ({ row, given, onType }: FieldsProps) => {
  const desk = useDesk();
  const id = useId();
  const example = exampleOf('length', desk.house.units);
  const typed = (key: keyof Row, words: string, hint: string) => (
    <div>
      <label htmlFor={`${id}-${key}`}>{say(desk, words)}</label>
      <input
        className="entry-add-field"
        id={`${id}-${key}`}
        value={row[key]}
        placeholder={hint}
        autoComplete="off"
        onChange={({ target }) => onType({ [key]: target.value })}
      />
    </div>
  );
  const chosen = (
    key: keyof Row,
    words: string,
    none: string,
    options: readonly (readonly [string, string])[],
  ) => (
    <div>
      <label htmlFor={`${id}-${key}`}>{say(desk, words)}</label>
      <select
        className="entry-add-field"
        id={`${id}-${key}`}
        value={row[key]}
        onChange={({ target }) => onType({ [key]: target.value })}
      >
        <option value="">{none}</option>
        {options.map(([value, said]) => (
          <option key={value} value={value}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
  const entries = (list: string) => desk.named(list).map((each) => [each.id, each.name] as const);
  return (
    <>
      {typed('from', 'From number', '1')}
      {typed('to', 'To number', '27')}
      {typed('first', 'First place upstage of the plaster line', example)}
      {typed('pitch', 'Pitch, from one to the next', example)}
      {chosen('type', 'Kind of set', 'choose', entries('setTypes'))}
      {chosen('rail', 'Rail, if not from the kind', 'from its kind', entries('rails'))}
      {chosen(
        'basis',
        'How the places are known',
        given === '' ? 'choose' : `as above: ${given}`,
        BASES.map((basis) => [basis, basisWords(basis)] as const),
      )}
      {typed('source', 'Source of the places', 'plan, tape')}
    </>
  );
};
