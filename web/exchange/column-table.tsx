/** Each column of the foreign table beside what it is of ours, with its first few values. */
import { columnName, type Sheet } from '#exchange';
import { phrase, type Voice } from '#texts';
import { FOLDED } from '../frame/folded-roles.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import {
  type Choices,
  choicesFor,
  firstValues,
  keyOf,
  type MappingState,
  unitAsk,
} from './mapping-choices.ts';
import { shownText } from './shown-text.ts';

type TableProps = {
  readonly sheet: Sheet;
  readonly state: MappingState;
  readonly onChange: (state: MappingState) => void;
};

export const ColumnTable = ({ sheet, state, onChange }: TableProps) => {
  const tell = useTell();
  return (
    <>
      <h3 className="step-head">{tell('Which column is which')}</h3>
      <p className="quiet">
        {tell(
          'A guess is from the heading alone. A column that is nothing here is left out, and ' +
            'named below.',
        )}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys */}
      <section className="wide" aria-label={tell('Columns of the table')} tabIndex={0}>
        <table {...FOLDED.table} className="plain column-table stacked">
          <thead {...FOLDED.rows}>
            <tr {...FOLDED.row}>
              <th {...FOLDED.columnHead} scope="col">
                {tell('Column')}
              </th>
              <th {...FOLDED.columnHead} scope="col">
                {tell('First values')}
              </th>
              <th {...FOLDED.columnHead} scope="col">
                {tell('is here')}
              </th>
              <th {...FOLDED.columnHead} scope="col">
                {tell('Unit of bare numbers')}
              </th>
            </tr>
          </thead>
          <tbody {...FOLDED.rows}>
            {state.mapping.columns.map(({ column }, at) => (
              <ColumnRow key={column} at={at} sheet={sheet} state={state} onChange={onChange} />
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
};

const columnWords = (column: number, heading: string, voice: Voice): string =>
  heading === ''
    ? phrase(voice, 'column {name}', { name: columnName(column) })
    : shownText(heading);

const ColumnRow = ({ at, sheet, state, onChange }: TableProps & { readonly at: number }) => {
  const tell = useTell();
  const voice = useVoice();
  const { house, show } = useWork();
  const { mapping, own } = state;
  const one = mapping.columns[at];
  if (one === undefined) return null;
  const choices = choicesFor(mapping, at, { house, show, voice });
  const words = columnWords(one.column, one.heading, voice);
  const change = (fresh: Partial<typeof one>): void =>
    onChange({
      mapping: { ...mapping, columns: mapping.columns.with(at, { ...one, ...fresh }) },
      own: new Set([...own, at]),
    });
  const choose = (key: string): void => {
    const found = choices.flatMap((group) => group.choices).find((choice) => choice.key === key);
    // A unit that was said of another field says nothing of this one.
    change({ to: found?.to ?? null, unit: null });
  };
  const values = firstValues(mapping, sheet, one.column);
  return (
    <tr {...FOLDED.row}>
      <th {...FOLDED.rowHead} scope="row">
        <b>{columnName(one.column)}</b> {one.heading === '' ? '' : shownText(one.heading)}
      </th>
      <td {...FOLDED.cell} className="first-values" data-head={tell('first values')}>
        {values.length === 0 ? <span className="quiet">{tell('blank')}</span> : null}
        {values.map((value, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: cells of a column stand in their order
          <span key={row}>{shownText(value, 32)}</span>
        ))}
      </td>
      <td {...FOLDED.cell} data-head={tell('is here')}>
        <FieldChoice words={words} choices={choices} chosen={keyOf(one.to)} onChoose={choose} />
        <span className="guess-word">{guessWords(own.has(at), one.to !== null, voice)}</span>
      </td>
      <td {...FOLDED.cell} data-head={tell('unit')}>
        <UnitChoice
          words={words}
          ask={unitAsk(mapping, sheet, at)}
          unit={one.unit}
          onUnit={(unit) => change({ unit })}
        />
      </td>
    </tr>
  );
};

const guessWords = (isOwn: boolean, isTaken: boolean, voice: Voice): string => {
  if (isOwn) return phrase(voice, 'said by you');
  return isTaken ? phrase(voice, 'a guess') : phrase(voice, 'no guess');
};

const FieldChoice = ({
  words,
  choices,
  chosen,
  onChoose,
}: {
  readonly words: string;
  readonly choices: Choices;
  readonly chosen: string;
  readonly onChoose: (key: string) => void;
}) => {
  const tell = useTell();
  return (
    <select
      aria-label={tell('{column} is', { column: words })}
      value={chosen}
      onChange={({ target }) => onChoose(target.value)}
    >
      <option value="">{tell('left out')}</option>
      {choices.map((group) => (
        <optgroup key={group.of} label={group.of}>
          {group.choices.map(({ key, words: name }) => (
            <option key={key} value={key}>
              {shownText(name)}
            </option>
          ))}
        </optgroup>
      ))}
    </select>
  );
};

const UnitChoice = ({
  words,
  ask: { units, bare },
  unit,
  onUnit,
}: {
  readonly words: string;
  readonly ask: ReturnType<typeof unitAsk>;
  readonly unit: string | null;
  readonly onUnit: (unit: string | null) => void;
}) => {
  const tell = useTell();
  if (units.length === 0) return <span className="quiet">{tell('none')}</span>;
  if (bare === 0 && unit === null) {
    return <span className="quiet">{tell('in the cells')}</span>;
  }
  const isAsked = bare > 0 && unit === null;
  return (
    <>
      <select
        aria-label={tell('Unit of {column}', { column: words })}
        value={unit ?? ''}
        required
        onChange={({ target }) => onUnit(target.value === '' ? null : target.value)}
      >
        <option value="">{isAsked ? tell('say which') : tell('not said')}</option>
        {units.map((each) => (
          <option key={each}>{each}</option>
        ))}
      </select>
      <span className={isAsked ? 'guess-word caution-word' : 'guess-word'}>
        {isAsked
          ? tell('asked: {count} bare numbers', { count: bare })
          : tell('for {count} bare numbers', { count: bare })}
      </span>
    </>
  );
};
