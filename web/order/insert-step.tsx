/** A step filled in by hand; what is not understood is refused in its own box. */
import { type FormEvent, type ReactNode, useId, useState } from 'react';
import type { OrderMoment } from '#drawings';
import type { Step } from '#state';
import { told } from '#texts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import {
  type Draft,
  type DraftFault,
  type DraftField,
  firstDraft,
  readDraft,
} from './draft-step.ts';
import { FIELDS, type FieldView, type Option, viewOf } from './field-view.ts';

type InsertProps = {
  readonly drawn: OrderMoment;
  readonly onInsert: (step: Step) => void;
  readonly onLeave: () => void;
};

const draftFor = ({ set, physics }: OrderMoment): Draft =>
  firstDraft({
    galleries: physics.galleries.map(({ id }) => id),
    kinds: physics.bricks.map(({ id }) => id),
    items: set.takeoffs.map(({ item }) => item.id),
  });

export const InsertStep = ({ drawn, onInsert, onLeave }: InsertProps) => {
  const tell = useTell();
  const { house } = useWork();
  const [draft, setDraft] = useState<Draft>(() => draftFor(drawn));
  const [fault, setFault] = useState<DraftFault | null>(null);
  const take = (event: FormEvent): void => {
    event.preventDefault();
    const read = readDraft(draft, drawn.state.standing, house);
    if (read.ok) onInsert(read.value);
    else setFault(read.error);
  };
  const fill = (field: DraftField, value: string): void => {
    setFault(null);
    setDraft({ ...draft, [field]: value });
  };
  return (
    <form className="insert-step" onSubmit={take}>
      {(['act', ...FIELDS[draft.act]] as const).map((field) => (
        <FieldBox
          key={field}
          view={viewOf(field, drawn, house)}
          value={draft[field]}
          fault={fault?.field === field ? fault : null}
          onFill={(value) => fill(field, value)}
        />
      ))}
      <span className="buttons">
        <button type="submit">{tell('Put it in')}</button>
        <button type="button" onClick={onLeave}>
          {tell('Leave it')}
        </button>
      </span>
    </form>
  );
};

type BoxProps = {
  readonly view: FieldView;
  readonly value: string;
  readonly fault: DraftFault | null;
  readonly onFill: (value: string) => void;
};

const FieldBox = ({ view, value, fault, onFill }: BoxProps) => {
  const id = useId();
  const tell = useTell();
  const voice = useVoice();
  const marks = fault === null ? {} : { 'aria-invalid': true, 'aria-describedby': `${id}-fault` };
  return (
    <span className="field-box">
      <label htmlFor={id} className="label">
        {view.label}
      </label>
      {view.is === 'typed' ? (
        <input
          id={id}
          value={value}
          size={9}
          autoComplete="off"
          placeholder={view.example}
          {...marks}
          onChange={({ target }) => onFill(target.value)}
        />
      ) : (
        <Choice id={id} options={view.options} value={value} marks={marks} onFill={onFill} />
      )}
      {fault === null ? null : (
        <span role="alert" id={`${id}-fault`} className="caution-word">
          {tell('Found {found}. Accepted: {accepted}.', {
            found: told(voice, fault.found),
            accepted: told(voice, fault.accepted),
          })}{' '}
          <span className="code">{fault.code}</span>
        </span>
      )}
    </span>
  );
};

type ChoiceProps = {
  readonly id: string;
  readonly options: readonly Option[];
  readonly value: string;
  readonly marks: object;
  readonly onFill: (value: string) => void;
};

const Choice = ({ id, options, value, marks, onFill }: ChoiceProps): ReactNode => {
  const tell = useTell();
  return options.length === 0 ? (
    <select id={id} disabled {...marks}>
      <option>{tell('none there')}</option>
    </select>
  ) : (
    <select id={id} value={value} {...marks} onChange={({ target }) => onFill(target.value)}>
      {options.map(([each, words]) => (
        <option key={each} value={each}>
          {words}
        </option>
      ))}
    </select>
  );
};
