/** A foreign table: which sheet, which row has the headings, which column is what. */
import { useDeferredValue, useId, useMemo, useState } from 'react';
import {
  givenText,
  guessColumns,
  guessMapping,
  type Mapping,
  type Sheet,
  type TableName,
} from '#exchange';
import { BASES } from '#house';
import { basisWords } from '#sheets';
import { message } from '#texts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ColumnTable } from './column-table.tsx';
import type { MappingState } from './mapping-choices.ts';
import { PreviewPart } from './preview-part.tsx';
import { RememberedPart } from './remembered-part.tsx';
import { shownText } from './shown-text.ts';

type StepProps = { readonly file: string; readonly sheets: readonly Sheet[] };

const NONE: ReadonlySet<number> = new Set();

export const TableStep = ({ file, sheets }: StepProps) => {
  const tell = useTell();
  const { house } = useWork();
  const [at, setAt] = useState(0);
  const sheet = sheets[at] ?? sheets[0];
  const [state, setState] = useState<MappingState | null>(() =>
    sheet === undefined ? null : { mapping: guessMapping(sheet, house), own: NONE },
  );
  const [known, setKnown] = useState<Known>(NOT_SAID);
  const mapping = useMemo(
    () => (state === null ? null : { ...state.mapping, same: sameOf(known) }),
    [state, known],
  );
  const shown = useDeferredValue(mapping);
  if (sheet === undefined || state === null || shown === null) return null;
  const take = (index: number): void => {
    const next = sheets[index];
    if (next === undefined) return;
    setAt(index);
    setState({ mapping: guessMapping(next, house), own: NONE });
  };
  const reguess = (change: Partial<Mapping>): void =>
    setState({
      mapping: guessColumns({ ...state.mapping, ...change }, sheet, house),
      own: NONE,
    });
  return (
    <section aria-labelledby="table-step" className="found-step">
      <h2 id="table-step">{tell('{file} is a table', { file })}</h2>
      <p role="status">
        {sheets.length === 1
          ? tell('{rows} rows in its one sheet.', { rows: sheet.rows.length })
          : tell('{rows} rows in sheet {sheet} of {sheets}.', {
              rows: sheet.rows.length,
              sheet: at + 1,
              sheets: sheets.length,
            })}
      </p>
      <div className="exchange-fields">
        {sheets.length === 1 ? null : <SheetChoice sheets={sheets} at={at} onTake={take} />}
        <ReadAs table={state.mapping.table} onRead={(table) => reguess({ table })} />
        <HeadRow
          sheet={sheet}
          headRow={state.mapping.headRow}
          onHead={(headRow) => reguess({ headRow })}
        />
      </div>
      <RememberedPart file={file} state={state} onTake={setState} />
      <ColumnTable sheet={sheet} state={state} onChange={setState} />
      <KnownBy known={known} onKnow={setKnown} />
      <PreviewPart file={file} sheet={sheet} mapping={shown} isLate={shown !== mapping} />
    </section>
  );
};

const SheetChoice = ({
  sheets,
  at,
  onTake,
}: {
  readonly sheets: readonly Sheet[];
  readonly at: number;
  readonly onTake: (index: number) => void;
}) => {
  const tell = useTell();
  const id = useId();
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('Sheet')}</label>
      <select id={id} value={at} onChange={({ target }) => onTake(Number(target.value))}>
        {sheets.map(({ name, rows }, index) => (
          <option key={name} value={index}>
            {tell('{name}, {rows} rows', { name: shownText(name), rows: rows.length })}
          </option>
        ))}
      </select>
    </div>
  );
};

const ReadAs = ({
  table,
  onRead,
}: {
  readonly table: TableName;
  readonly onRead: (table: TableName) => void;
}) => {
  const tell = useTell();
  const id = useId();
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('A row is')}</label>
      <select
        id={id}
        value={table}
        onChange={({ target }) => onRead(target.value === 'takeoff' ? 'takeoff' : 'schedule')}
      >
        <option value="schedule">{tell('a set: the hang list')}</option>
        <option value="takeoff">{tell('an item on a set: the take-off')}</option>
      </select>
    </div>
  );
};

/** Headings may stand below a title and an address, but not far below. */
const HEAD_ROWS_MAX = 20;

const HeadRow = ({
  sheet,
  headRow,
  onHead,
}: {
  readonly sheet: Sheet;
  readonly headRow: number;
  readonly onHead: (row: number) => void;
}) => {
  const tell = useTell();
  const id = useId();
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('Headings are in')}</label>
      <select id={id} value={headRow} onChange={({ target }) => onHead(Number(target.value))}>
        {sheet.rows.slice(0, HEAD_ROWS_MAX).map((cells, row) => {
          const words = cells.map(({ text }) => text.trim()).filter((text) => text !== '');
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows of a sheet stand where they stand
            <option key={row} value={row}>
              {tell('row {row}: {words}', {
                row: row + 1,
                words: shownText(words.join(', '), 40) || tell('blank'),
              })}
            </option>
          );
        })}
      </select>
    </div>
  );
};

type Known = { readonly basis: string; readonly source: string };

const NOT_SAID: Known = { basis: '', source: '' };

/** What is said once of every row that does not say it itself. */
const sameOf = ({ basis, source }: Known): Mapping['same'] => {
  if (basis === '') return [];
  const given = { basis, ...(source.trim() === '' ? {} : { source: source.trim() }) };
  return [{ to: { is: 'field', field: 'knownBy' }, text: givenText(given) }];
};

const BASIS_WORDS: Readonly<Partial<Record<string, string>>> = {
  houseRule: message('a rule of the house'),
};

const KnownBy = ({
  known,
  onKnow,
}: {
  readonly known: Known;
  readonly onKnow: (known: Known) => void;
}) => {
  const tell = useTell();
  const voice = useVoice();
  const id = useId();
  return (
    <fieldset className="exchange-fields">
      <legend className="step-head">
        {tell('How new figures are known, where their row does not say it')}
      </legend>
      <div className="exchange-field">
        <label htmlFor={`${id}basis`}>{tell('Basis')}</label>
        <select
          id={`${id}basis`}
          value={known.basis}
          onChange={({ target }) => onKnow({ ...known, basis: target.value })}
        >
          <option value="">{tell('not said')}</option>
          {BASES.map((basis) => (
            <option key={basis} value={basis}>
              {BASIS_WORDS[basis] !== undefined
                ? tell(BASIS_WORDS[basis] ?? '')
                : voice.tongue === undefined
                  ? basis
                  : basisWords(basis, voice)}
            </option>
          ))}
        </select>
      </div>
      <div className="exchange-field">
        <label htmlFor={`${id}source`}>{tell('Source')}</label>
        <input
          id={`${id}source`}
          value={known.source}
          maxLength={120}
          placeholder={tell('hire list, store book')}
          onChange={({ target }) => onKnow({ ...known, source: target.value })}
        />
      </div>
    </fieldset>
  );
};
