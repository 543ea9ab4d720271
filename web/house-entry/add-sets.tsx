/** Sets that stand one behind the other, all at once: from, to, first place, pitch, kind, rail. */
import { type FormEvent, useId, useState } from 'react';
import { setsInRow } from '#documents';
import { BASES } from '#house';
import type { Refusal } from '#outcome';
import { basisWords } from '#sheets';
import { phrase, type Voice } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { isList, type Json, type JsonObject, withAt } from '../keeping/json.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { type Desk, markOf, sayGiven, useDesk } from './desk.ts';
import { useHouseEditing } from './house-desk.ts';
import { exampleIn, readFigure } from './typed-figures.ts';

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

const missingOf = (row: Row, hasGiven: boolean, voice: Voice): readonly string[] => [
  ...(row.from.trim() === '' ? [phrase(voice, 'the first number')] : []),
  ...(row.to.trim() === '' ? [phrase(voice, 'the last number')] : []),
  ...(row.first.trim() === '' ? [phrase(voice, 'the first place')] : []),
  ...(row.pitch.trim() === '' ? [phrase(voice, 'the pitch')] : []),
  ...(row.type === '' ? [phrase(voice, 'the kind of set')] : []),
  ...(row.basis === '' && !hasGiven ? [phrase(voice, 'how the places are known')] : []),
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
  const tell = useTell();
  const desk = useDesk();
  const { change } = useHouseEditing();
  const [row, setRow] = useState(EMPTY);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [done, setDone] = useState('');
  const given = sayGiven(desk, ['lineSets', 0, 'y']);
  const missing = missingOf(row, given !== '', useVoice());
  const type = (part: Partial<Row>): void => {
    setRow({ ...row, ...part });
    setRefusals([]);
    setDone('');
  };
  const add = (event: FormEvent): void => {
    event.preventDefault();
    const sets = readRow(row, desk);
    const refused = sets.ok
      ? change({
          write: (house) => withSets(house, sets.value, row),
          what: `sets ${row.from} to ${row.to} added`,
        })
      : sets.error;
    setRefusals(refused);
    if (refused.length > 0) return;
    setDone(tell('Sets {from} to {to} are entered.', { from: row.from, to: row.to }));
    setRow({ ...row, from: '', to: '', first: '' });
  };
  return (
    <form className="entry-add-sets" onSubmit={add} aria-label={tell('Add sets')}>
      <h4>{tell('Add sets')}</h4>
      <div className="entry-add-fields">
        <Fields row={row} given={given} onType={type} />
      </div>
      <p className="buttons">
        <button type="submit" disabled={missing.length > 0}>
          {tell('Add the sets')}
        </button>
        <span role="status">
          {done !== ''
            ? done
            : missing.length === 0
              ? ''
              : tell('Still to say: {missing}.', { missing: missing.join(', ') })}
        </span>
      </p>
      {desk.named('setTypes').length === 0 ? (
        <p className="quiet">{tell('A kind of set comes first: there is none yet.')}</p>
      ) : null}
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('no set was added')} isNews>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
    </form>
  );
};

/** Place and pitch as the language writes them, and then as a document holds them. */
const readRow = (row: Row, desk: Desk) => {
  const mark = markOf(desk);
  const first = readFigure('length', row.first, mark, 'first');
  if (!first.ok) return { ok: false, error: [first.error] } as const;
  const pitch = readFigure('length', row.pitch, mark, 'pitch');
  if (!pitch.ok) return { ok: false, error: [pitch.error] } as const;
  const { units } = desk.house;
  return setsInRow({ ...row, first: first.value, pitch: pitch.value, units });
};

type FieldsProps = {
  readonly row: Row;
  readonly given: string;
  readonly onType: (part: Partial<Row>) => void;
};

const Fields = ({ row, given, onType }: FieldsProps) => {
  const tell = useTell();
  const desk = useDesk();
  const id = useId();
  const example = exampleIn('length', desk.house);
  const typed = (key: keyof Row, words: string, hint: string) => (
    <div>
      <label htmlFor={`${id}-${key}`}>{words}</label>
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
      <label htmlFor={`${id}-${key}`}>{words}</label>
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
      {typed('from', tell('From number'), '1')}
      {typed('to', tell('To number'), '27')}
      {typed('first', tell('First place upstage of the plaster line'), example)}
      {typed('pitch', tell('Pitch, from one to the next'), example)}
      {chosen('type', tell('Kind of set'), tell('choose'), entries('setTypes'))}
      {chosen('rail', tell('Rail, if not from the kind'), tell('from its kind'), entries('rails'))}
      {chosen(
        'basis',
        tell('How the places are known'),
        given === '' ? tell('choose') : tell('as above: {given}', { given }),
        BASES.map((basis) => [basis, basisWords(basis, desk.house)] as const),
      )}
      {typed('source', tell('Source of the places'), tell('plan, tape'))}
    </>
  );
};
