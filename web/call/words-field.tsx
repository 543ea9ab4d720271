/** A line of words, large enough for a finger. */
import { useId } from 'react';

type FieldProps = {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly max?: number;
  readonly autoComplete?: 'off' | 'name';
};

export const WordsField = ({ label, value, onChange, max = 400, ...more }: FieldProps) => {
  const id = useId();
  const { autoComplete = 'off' } = more;
  return (
    <p className="words-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={value}
        maxLength={max}
        autoComplete={autoComplete}
        spellCheck={false}
        onChange={({ target }) => onChange(target.value)}
      />
    </p>
  );
};
