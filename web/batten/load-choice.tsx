/** Which load is in hand, and a load to try that does not hang there. */
import { useId, useState } from 'react';
import { placeWords } from '#drawings';
import type { House } from '#house';
import { decimalMarkOf, formatMass, kilograms, parseQuantity } from '#quantities';
import { phrase, told } from '#texts';
import { massUnit } from '../frame/unit-words.ts';
import { useTell } from '../language/use-tell.ts';
import type { Movable } from './load-strip.tsx';

type ChoiceProps = {
  readonly loads: readonly Movable[];
  readonly chosen: number;
  readonly house: House;
  readonly onChoose: (index: number) => void;
};

export const LoadChoice = ({ loads, chosen, house, onChoose }: ChoiceProps) => {
  const tell = useTell();
  return (
    <label className="load-choice">
      <span className="label">{tell('load to move')}</span>
      <select value={chosen} onChange={({ target }) => onChoose(Number(target.value))}>
        {loads.map(({ index, name, x }) => (
          <option key={index} value={index}>
            {name}, {placeWords(house, x)}
          </option>
        ))}
      </select>
    </label>
  );
};

type TryProps = {
  readonly house: House;
  readonly isTried: boolean;
  readonly onTry: (massKg: number | null) => void;
};

/** No batten of a theatre carries five tonnes: more is a slip of the hand. */
const MOST_KG = 5000;

type Typed =
  | { readonly massKg: number }
  | { readonly found: string; readonly accepted: string; readonly code: string | null };

const readMass = (typed: string, house: House): Typed => {
  const read = parseQuantity('mass', typed, { decimalMark: decimalMarkOf(house) });
  if (!read.ok) return read.error;
  if (read.value <= MOST_KG) return { massKg: read.value };
  const most = formatMass(kilograms(MOST_KG), house, { round: 'down' });
  return { found: typed, accepted: phrase(house, 'at most {most}', { most }), code: null };
};

/** A mass is typed with its unit; what is not understood is refused in place. */
export const TryLoad = ({ house, isTried, onTry }: TryProps) => {
  const id = useId();
  const tell = useTell();
  const [typed, setTyped] = useState('');
  const [refused, setRefused] = useState<Exclude<Typed, { massKg: number }> | null>(null);
  const take = (): void => {
    const read = readMass(typed, house);
    setRefused('massKg' in read ? null : read);
    if ('massKg' in read) onTry(read.massKg);
  };
  return (
    <form
      className="try-load"
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <label htmlFor={id}>
        <span className="label">{tell('a load to try, {unit}', { unit: massUnit(house) })}</span>
      </label>
      <span className="try-row">
        <input
          id={id}
          value={typed}
          size={8}
          autoComplete="off"
          placeholder={`0 ${massUnit(house)}`}
          aria-invalid={refused !== null}
          onChange={({ target }) => setTyped(target.value)}
        />
        <button type="submit">{tell('Hang it')}</button>
        {isTried ? (
          <button
            type="button"
            onClick={() => {
              setTyped('');
              onTry(null);
            }}
          >
            {tell('Take it off')}
          </button>
        ) : null}
      </span>
      {refused === null ? null : (
        <p role="alert" className="caution-word">
          {tell('Found {found}. Accepted: {accepted}.', {
            found: told(house, refused.found),
            accepted: told(house, refused.accepted),
          })}{' '}
          <span className="code">{refused.code}</span>
        </p>
      )}
    </form>
  );
};
