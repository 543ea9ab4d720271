/** What a house must be asked before it begins: either answer would be a guess. */
import { type FormEvent, useId, useState } from 'react';
import type { NewHouse } from '../keeping/server.ts';

type ChoiceProps<T extends string> = {
  readonly legend: string;
  readonly chosen: T | undefined;
  readonly choices: readonly (readonly [T, string])[];
  readonly onChoose: (value: T) => void;
};

const Choice = <T extends string>({ legend, chosen, choices, onChoose }: ChoiceProps<T>) => {
  const name = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      {choices.map(([value, words]) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={chosen === value}
            onChange={() => onChoose(value)}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
};

const UNITS = [
  ['customary', 'feet and pounds'],
  ['metric', 'metres and kilograms'],
] as const;

const WORDS = [
  ['US', 'US: batten, arbor, brick'],
  ['UK', 'UK: bar, cradle, weight'],
] as const;

const SIDES = [
  ['stageRight', 'stage right'],
  ['stageLeft', 'stage left'],
] as const;

const missingWords = ({ name, units, words, operatingSide }: Partial<NewHouse>): string => {
  const missing = [
    ...((name ?? '').trim() === '' ? ['its name'] : []),
    ...(units === undefined ? ['its units'] : []),
    ...(words === undefined ? ['its trade words'] : []),
    ...(operatingSide === undefined ? ['its operating side'] : []),
  ];
  return missing.length === 0 ? '' : `Still to say: ${missing.join(', ')}.`;
};

type FormProps = {
  /** What the button does, in words. */
  readonly act: string;
  readonly isTaking: boolean;
  readonly onBegin: (house: NewHouse) => void;
};

export const NewHouseForm = ({ act, isTaking, onBegin }: FormProps) => {
  const id = useId();
  const [asked, setAsked] = useState<Partial<NewHouse>>({});
  const missing = missingWords(asked);
  const begin = (event: FormEvent): void => {
    event.preventDefault();
    const { name, units, words, operatingSide } = asked;
    if (missing !== '' || name === undefined || units === undefined) return;
    if (words === undefined || operatingSide === undefined) return;
    onBegin({ name: name.trim(), units, words, operatingSide });
  };
  return (
    <form className="new-house" onSubmit={begin}>
      <div>
        <label htmlFor={id}>Name of the house</label>
        <input
          id={id}
          value={asked.name ?? ''}
          maxLength={80}
          autoComplete="off"
          onChange={({ target }) => setAsked({ ...asked, name: target.value })}
        />
      </div>
      <Choice
        legend="Units"
        chosen={asked.units}
        choices={UNITS}
        onChoose={(units) => setAsked({ ...asked, units })}
      />
      <Choice
        legend="Trade words"
        chosen={asked.words}
        choices={WORDS}
        onChoose={(words) => setAsked({ ...asked, words })}
      />
      <Choice
        legend="Operating side"
        chosen={asked.operatingSide}
        choices={SIDES}
        onChoose={(operatingSide) => setAsked({ ...asked, operatingSide })}
      />
      <p className="buttons">
        <button
          type="submit"
          disabled={missing !== '' || isTaking}
          aria-describedby={`${id}-missing`}
        >
          {act}
        </button>
        <span id={`${id}-missing`} role="status">
          {missing}
        </span>
      </p>
    </form>
  );
};
