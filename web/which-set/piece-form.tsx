/** Which piece, and where it should hang. Nothing of it is recorded. */
import { type FormEvent, useId } from 'react';
import { tradeWord } from '#drawings';
import type { QuantityRefusal } from '#quantities';
import { lengthUnit, massUnit } from '../frame/unit-words.ts';
import { useWork } from '../reckoning/use-work.ts';
import { type Faults, type MeasureField, OF_NEW, type Typed } from './typed-piece.ts';

type FormProps = {
  readonly typed: Typed;
  readonly faults: Faults;
  readonly onType: (typed: Typed) => void;
  readonly onAsk: () => void;
};

const LABELS: Readonly<Record<MeasureField, string>> = {
  mass: 'Mass, all that hangs',
  halfDepth: 'Half depth',
  width: 'Width, spread about the centre',
  low: 'Low trim',
  high: 'High trim',
  place: 'Wanted place, upstage of the plaster line',
  within: 'How far off at most',
};

type FieldProps = {
  readonly field: MeasureField;
  readonly unit: string;
  readonly value: string;
  readonly fault: QuantityRefusal | undefined;
  readonly onType: (text: string) => void;
};

const Field = ({ field, unit, value, fault, onType }: FieldProps) => {
  const id = useId();
  const told = fault && { 'aria-invalid': true, 'aria-describedby': `${id}-fault` };
  return (
    <div className="piece-field">
      <label htmlFor={id}>
        {LABELS[field]} <span className="quiet">({unit})</span>
      </label>
      <input
        id={id}
        value={value}
        size={12}
        autoComplete="off"
        {...told}
        onChange={({ target }) => onType(target.value)}
      />
      {fault === undefined ? null : (
        <span role="alert" id={`${id}-fault`} className="caution-word">
          Found {fault.found}. Accepted: {fault.accepted}.{' '}
          <span className="code">{fault.code}</span>
        </span>
      )}
    </div>
  );
};

type PartProps = Pick<FormProps, 'typed' | 'onType'>;

const PieceChoice = ({ typed, onType }: PartProps) => {
  const id = useId();
  const { show } = useWork();
  return (
    <div className="piece-field">
      <label htmlFor={id}>Piece to hang</label>
      <select
        id={id}
        value={typed.from}
        onChange={({ target }) => onType({ ...typed, from: target.value })}
      >
        <option value="">A new piece</option>
        {show.hangs.map(({ set, name }) => (
          <option key={set} value={set}>
            {name}, now on {set}
          </option>
        ))}
      </select>
    </div>
  );
};

const KeptBox = ({ typed, onType }: PartProps) => (
  <p className="piece-kept">
    <label>
      <input
        type="checkbox"
        checked={typed.keptEmptyToo}
        onChange={({ target }) => onType({ ...typed, keptEmptyToo: target.checked })}
      />{' '}
      also sets that the show keeps empty
    </label>
  </p>
);

export const PieceForm = ({ typed, faults, onType, onAsk }: FormProps) => {
  const id = useId();
  const { house } = useWork();
  const ask = (event: FormEvent): void => {
    event.preventDefault();
    onAsk();
  };
  const fieldOf = (field: MeasureField) => (
    <Field
      key={field}
      field={field}
      unit={field === 'mass' ? massUnit(house) : lengthUnit(house)}
      value={typed[field]}
      fault={faults[field]}
      onType={(text) => onType({ ...typed, [field]: text })}
    />
  );
  return (
    <form className="piece-form" onSubmit={ask}>
      <PieceChoice typed={typed} onType={onType} />
      {typed.from === '' ? (
        <>
          <div className="piece-field">
            <label htmlFor={`${id}-name`}>Name</label>
            <input
              id={`${id}-name`}
              value={typed.name}
              maxLength={80}
              autoComplete="off"
              onChange={({ target }) => onType({ ...typed, name: target.value })}
            />
          </div>
          {OF_NEW.map(fieldOf)}
        </>
      ) : null}
      {fieldOf('place')}
      {fieldOf('within')}
      <KeptBox typed={typed} onType={onType} />
      <p className="buttons">
        <button type="submit">Look for a set</button>
        <span className="quiet">
          A field left blank is not known, and is said so of every set. Trims are heights of the
          {` ${tradeWord(house, 'batten')}`}.
        </span>
      </p>
    </form>
  );
};
