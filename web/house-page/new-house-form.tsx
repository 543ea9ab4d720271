/** What a house must be asked before it begins: either answer would be a guess. */
import { type FormEvent, useId, useState } from 'react';
import { message, phrase, type Voice } from '#texts';
import type { NewHouse } from '../keeping/server.ts';
import { useTell, useVoice } from '../language/use-tell.ts';

type ChoiceProps<T extends string> = {
  readonly legend: string;
  readonly chosen: T | undefined;
  readonly choices: readonly (readonly [T, string])[];
  readonly onChoose: (value: T) => void;
};

const Choice = <T extends string>({ legend, chosen, choices, onChoose }: ChoiceProps<T>) => {
  // The trade words of both countries stand beside one another, and none is turned.
  const both: Voice = { ...useVoice(), words: 'US' };
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
          {phrase(both, words)}
        </label>
      ))}
    </fieldset>
  );
};

const UNITS = [
  ['customary', message('feet and pounds')],
  ['metric', message('metres and kilograms')],
] as const;

const WORDS = [
  ['US', 'US: batten, arbor, brick'],
  ['UK', 'UK: bar, cradle, weight'],
] as const;

const SIDES = [
  ['stageRight', message('stage right')],
  ['stageLeft', message('stage left')],
] as const;

const missingWords = (
  { name, units, words, operatingSide }: Partial<NewHouse>,
  voice: Voice,
): string => {
  const missing = [
    ...((name ?? '').trim() === '' ? [phrase(voice, 'its name')] : []),
    ...(units === undefined ? [phrase(voice, 'its units')] : []),
    ...(words === undefined ? [phrase(voice, 'its trade words')] : []),
    ...(operatingSide === undefined ? [phrase(voice, 'its operating side')] : []),
  ];
  return missing.length === 0
    ? ''
    : phrase(voice, 'Still to say: {missing}.', { missing: missing.join(', ') });
};

type FormProps = {
  /** What the button does, in words. */
  readonly act: string;
  readonly isTaking: boolean;
  readonly onBegin: (house: NewHouse) => void;
};

export const NewHouseForm = ({ act, isTaking, onBegin }: FormProps) => {
  const tell = useTell();
  const voice = useVoice();
  const id = useId();
  const [asked, setAsked] = useState<Partial<NewHouse>>({});
  const missing = missingWords(asked, voice);
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
        <label htmlFor={id}>{tell('Name of the house')}</label>
        <input
          id={id}
          value={asked.name ?? ''}
          maxLength={80}
          autoComplete="off"
          onChange={({ target }) => setAsked({ ...asked, name: target.value })}
        />
      </div>
      <Choice
        legend={tell('Units')}
        chosen={asked.units}
        choices={UNITS}
        onChoose={(units) => setAsked({ ...asked, units })}
      />
      <Choice
        legend={tell('Trade words')}
        chosen={asked.words}
        choices={WORDS}
        onChoose={(words) => setAsked({ ...asked, words })}
      />
      <Choice
        legend={tell('Operating side')}
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
