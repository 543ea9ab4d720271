/** A labelled field, a choice of roles, and what came of the last thing done. */

import { type ReactNode, useId } from 'react';
import type { Role } from '#events';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
import { ROLE_MEANINGS, ROLE_WORDS } from './words.ts';

type FieldProps = {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly type?: 'text' | 'password' | 'date';
  /** What a browser and its helper may fill in. */
  readonly autoComplete?: string;
  readonly isFigures?: boolean;
  readonly max?: number;
  readonly note?: string;
};

export const Field = (props: FieldProps) => {
  const { label, value, onChange, type = 'text', note, max = 80 } = props;
  const { autoComplete = 'off', isFigures = false } = props;
  const id = useId();
  return (
    <div className="people-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        value={value}
        maxLength={max}
        required
        autoComplete={autoComplete}
        autoCapitalize="none"
        spellCheck={false}
        inputMode={isFigures ? 'numeric' : undefined}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        onChange={({ target }) => onChange(target.value)}
      />
      {note === undefined ? null : (
        <p id={`${id}-note`} className="quiet">
          {note}
        </p>
      )}
    </div>
  );
};

type RolesProps = {
  readonly legend: string;
  readonly roles: readonly Role[];
  readonly chosen: Role;
  readonly onChoose: (role: Role) => void;
};

export const RoleChoice = ({ legend, roles, chosen, onChoose }: RolesProps) => {
  const tell = useTell();
  const name = useId();
  return (
    <fieldset className="role-choice">
      <legend>{legend}</legend>
      {roles.map((role) => (
        <label key={role}>
          <input
            type="radio"
            name={name}
            checked={chosen === role}
            onChange={() => onChoose(role)}
          />
          <span>
            <b>{tell(ROLE_WORDS[role])}</b>: {tell(ROLE_MEANINGS[role])}
          </span>
        </label>
      ))}
    </fieldset>
  );
};

/** Spoken when it appears; nothing moves for it but what stands below. */
export const Said = ({ words, isBad }: { readonly words: string; readonly isBad: boolean }) => {
  const tell = useTell();
  if (words === '') return null;
  return isBad ? (
    <Notice degree="caution" title={tell('not done')} isNews>
      <p>{words}</p>
    </Notice>
  ) : (
    <p role="status" className="people-said">
      {words}
    </p>
  );
};

export const Part = ({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ReactNode;
}) => {
  const id = useId();
  return (
    <section className="people-part" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
};
