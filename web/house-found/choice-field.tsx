/** One of a few words about what stands there; unknown until somebody has looked. */
import { useId } from 'react';
import { useTell } from '../language/use-tell.ts';

type ChoiceProps = {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
  readonly none?: string;
  readonly onChoose: (value: string) => void;
};

export const ChoiceField = ({ label, value, choices, none, onChoose }: ChoiceProps) => {
  const tell = useTell();
  const id = useId();
  return (
    <div className="found-field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={({ target }) => onChoose(target.value)}>
        <option value="">{none ?? tell('unknown')}</option>
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
};

type TextProps = {
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  readonly onType: (value: string) => void;
};

export const TextField = ({ label, value, hint = '', onType }: TextProps) => {
  const id = useId();
  return (
    <div className="found-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={value}
        placeholder={hint}
        autoComplete="off"
        onChange={({ target }) => onType(target.value)}
      />
    </div>
  );
};
