/** Each column of the foreign table beside what it is of ours, with its first few values. */
import { columnName, type Sheet } from '#exchange';
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

export const ColumnTable = ({ sheet, state, onChange }: TableProps) => (
  <>
    <h3 className="step-head">Which column is which</h3>
    <p className="quiet">
      A guess is from the heading alone. A column that is nothing here is left out, and named below.
    </p>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys */}
    <section className="wide" aria-label="Columns of the table" tabIndex={0}>
      <table className="plain column-table stacked">
        <thead>
          <tr>
            <th scope="col">Column</th>
            <th scope="col">First values</th>
            <th scope="col">is here</th>
            <th scope="col">Unit of bare numbers</th>
          </tr>
        </thead>
        <tbody>
          {state.mapping.columns.map(({ column }, at) => (
            <ColumnRow key={column} at={at} sheet={sheet} state={state} onChange={onChange} />
          ))}
        </tbody>
      </table>
    </section>
  </>
);

const columnWords = (column: number, heading: string): string =>
  heading === '' ? `column ${columnName(column)}` : shownText(heading);

const ColumnRow = ({ at, sheet, state, onChange }: TableProps & { readonly at: number }) => {
  const { house, show } = useWork();
  const { mapping, own } = state;
  const one = mapping.columns[at];
  if (one === undefined) return null;
  const choices = choicesFor(mapping, at, { house, show });
  const words = columnWords(one.column, one.heading);
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
    <tr>
      <th scope="row">
        <b>{columnName(one.column)}</b> {one.heading === '' ? '' : shownText(one.heading)}
      </th>
      <td className="first-values" data-head="first values">
        {values.length === 0 ? <span className="quiet">blank</span> : null}
        {values.map((value, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: cells of a column stand in their order
          <span key={row}>{shownText(value, 32)}</span>
        ))}
      </td>
      <td data-head="is here">
        <FieldChoice words={words} choices={choices} chosen={keyOf(one.to)} onChoose={choose} />
        <span className="guess-word">{guessWords(own.has(at), one.to !== null)}</span>
      </td>
      <td data-head="unit">
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

const guessWords = (isOwn: boolean, isTaken: boolean): string => {
  if (isOwn) return 'said by you';
  return isTaken ? 'a guess' : 'no guess';
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
}) => (
  <select
    aria-label={`${words} is`}
    value={chosen}
    onChange={({ target }) => onChoose(target.value)}
  >
    <option value="">left out</option>
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
  if (units.length === 0) return <span className="quiet">none</span>;
  if (bare === 0 && unit === null) return <span className="quiet">in the cells</span>;
  const isAsked = bare > 0 && unit === null;
  return (
    <>
      <select
        aria-label={`Unit of ${words}`}
        value={unit ?? ''}
        required
        onChange={({ target }) => onUnit(target.value === '' ? null : target.value)}
      >
        <option value="">{isAsked ? 'say which' : 'not said'}</option>
        {units.map((each) => (
          <option key={each}>{each}</option>
        ))}
      </select>
      <span className={isAsked ? 'guess-word caution-word' : 'guess-word'}>
        {isAsked ? `asked: ${bare} bare numbers` : `for ${bare} bare numbers`}
      </span>
    </>
  );
};
