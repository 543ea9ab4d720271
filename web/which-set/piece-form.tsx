/** Which piece, and where it should hang. Nothing of it is recorded. */
import { type FormEvent, useId } from 'react';
import type { QuantityRefusal } from '#quantities';
import { message, told } from '#texts';
import { lengthUnit, massUnit } from '../frame/unit-words.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { type Faults, type MeasureField, OF_NEW, type Typed } from './typed-piece.ts';

type FormProps = {
  readonly typed: Typed;
  readonly faults: Faults;
  readonly onType: (typed: Typed) => void;
  readonly onAsk: () => void;
};

const LABELS: Readonly<Record<MeasureField, string>> = {
  mass: message('Mass, all that hangs'),
  halfDepth: message('Half depth'),
  width: message('Width, spread about the centre'),
  low: message('Low trim'),
  high: message('High trim'),
  place: message('Wanted place, upstage of the plaster line'),
  within: message('How far off at most'),
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
  const tell = useTell();
  const voice = useVoice();
  const marks = fault && { 'aria-invalid': true, 'aria-describedby': `${id}-fault` };
  return (
    <div className="piece-field">
      <label htmlFor={id}>
        {tell(LABELS[field])} <span className="quiet">({unit})</span>
      </label>
      <input
        id={id}
        value={value}
        size={12}
        autoComplete="off"
        {...marks}
        onChange={({ target }) => onType(target.value)}
      />
      {fault === undefined ? null : (
        <span role="alert" id={`${id}-fault`} className="caution-word">
          {tell('Found {found}. Accepted: {accepted}.', {
            found: told(voice, fault.found),
            accepted: told(voice, fault.accepted),
          })}{' '}
          <span className="code">{fault.code}</span>
        </span>
      )}
    </div>
  );
};

type PartProps = Pick<FormProps, 'typed' | 'onType'>;

const PieceChoice = ({ typed, onType }: PartProps) => {
  const id = useId();
  const tell = useTell();
  const { show } = useWork();
  return (
    <div className="piece-field">
      <label htmlFor={id}>{tell('Piece to hang')}</label>
      <select
        id={id}
        value={typed.from}
        onChange={({ target }) => onType({ ...typed, from: target.value })}
      >
        <option value="">{tell('A new piece')}</option>
        {show.hangs.map(({ set, name }) => (
          <option key={set} value={set}>
            {tell('{name}, now on {set}', { name, set })}
          </option>
        ))}
      </select>
    </div>
  );
};

const KeptBox = ({ typed, onType }: PartProps) => {
  const tell = useTell();
  return (
    <p className="piece-kept">
      <label>
        <input
          type="checkbox"
          checked={typed.keptEmptyToo}
          onChange={({ target }) => onType({ ...typed, keptEmptyToo: target.checked })}
        />{' '}
        {tell('also sets that the show keeps empty')}
      </label>
    </p>
  );
};

export const PieceForm = ({ typed, faults, onType, onAsk }: FormProps) => {
  const id = useId();
  const tell = useTell();
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
            <label htmlFor={`${id}-name`}>{tell('Name')}</label>
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
        <button type="submit">{tell('Look for a set')}</button>
        <span className="quiet">
          {tell(
            'A field left blank is not known, and is said so of every set. Trims are heights of ' +
              'the batten.',
          )}
        </span>
      </p>
    </form>
  );
};
