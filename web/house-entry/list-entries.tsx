/** A list inside a form, such as the joints of a tube: its entries one after the other. */
import { isList, type JsonPath } from '../keeping/json.ts';
import { AddEntry } from './add-entry.tsx';
import { say, useDesk, valueAt } from './desk.ts';
import { fieldId } from './entry-path.ts';
import type { Form } from './form.ts';
import { labelOf } from './labels.ts';
import { whyUnknown } from './plain-text.ts';
import { RowFrame } from './row-frame.tsx';
import { useRow } from './use-row.ts';

type ListProps = {
  readonly form: Extract<Form, { readonly kind: 'list' }>;
  readonly path: JsonPath;
  readonly place: string;
  readonly about: string;
};

export const ListEntries = ({ form, path, place, about }: ListProps) => {
  const desk = useDesk();
  const { Fields } = desk;
  const value = valueAt(desk, path);
  const entries = isList(value) ? value : [];
  const title = say(desk, labelOf(place));
  const inherited = desk.inheritedAt(path);
  const { of } = form;
  if (of.kind !== 'object') throw new Error(`defect: no entries with fields at ${place}`);
  return (
    <fieldset className="entry-object" id={fieldId(desk.keysOf(path))} tabIndex={-1}>
      <legend>{title}</legend>
      <p className="entry-about">{about}</p>
      {value === undefined && inherited !== null ? (
        <p className="quiet">
          From its kind {inherited.from}:{' '}
          {isList(inherited.value) ? inherited.value.length : 'unknown'}
          {isList(inherited.value) ? ' entered' : ''}. What is added here holds instead.
        </p>
      ) : null}
      {entries.map((_, index) => (
        <Entry
          // biome-ignore lint/suspicious/noArrayIndexKey: entries without an id are told by place
          key={index}
          number={index + 1}
          title={title}
          onTakeAway={() =>
            desk.put(
              entries.length === 1 && !form.mayBeUnknown ? path : [...path, index],
              undefined,
              `${title} ${index + 1} taken away`,
            )
          }
        >
          <Fields fields={of.fields} path={[...path, index]} place={place} />
        </Entry>
      ))}
      {entries.length === 0 && form.mayBeUnknown ? (
        <NoneOrUnknown
          path={path}
          title={title}
          isNone={isList(value)}
          isOfKind={value === undefined && inherited !== null}
        />
      ) : null}
      <AddEntry
        form={of}
        place={place}
        one={`one of ${title}`}
        onAdd={(entry) => desk.put(path, [...entries, entry], title)}
      />
    </fieldset>
  );
};

type EntryProps = {
  readonly number: number;
  readonly title: string;
  readonly onTakeAway: () => void;
  readonly children: React.ReactNode;
};

const Entry = ({ number, title, onTakeAway, children }: EntryProps) => (
  <div className="entry-one">
    <p className="entry-number">{number}</p>
    <div>
      {children}
      <p className="buttons">
        <button type="button" onClick={onTakeAway}>
          Take away number {number} of {title}
        </button>
      </p>
    </div>
  </div>
);

type NoneProps = {
  readonly path: JsonPath;
  readonly title: string;
  readonly isNone: boolean;
  readonly isOfKind: boolean;
};

/** That there is none is known; that nobody has looked is not. */
const NoneOrUnknown = ({ path, title, isNone, isOfKind }: NoneProps) => {
  const desk = useDesk();
  const before = valueAt(desk, path);
  const { text, type, missing, refusals, row } = useRow({
    shown: whyUnknown(before) ?? '',
    before,
    toWrite: (why) => ({ json: why.trim() === '' ? undefined : { unknown: why.trim() } }),
    put: (json) => desk.put(path, json, title),
  });
  return (
    <RowFrame
      label={isNone ? 'there is none' : isOfKind ? 'as its kind has it' : 'unknown'}
      about=""
      missing={missing}
      refusals={refusals}
      row={row}
    >
      <button
        type="button"
        aria-pressed={isNone}
        onClick={() =>
          desk.put(path, isNone ? undefined : [], `${title}: ${isNone ? 'unknown' : 'none'}`)
        }
      >
        {isNone ? 'It is not known after all' : 'There is none'}
      </button>
      {isNone ? null : (
        <input
          aria-label={`Why ${title} is unknown`}
          className="entry-source"
          value={text}
          placeholder={isOfKind ? 'unknown here, and why' : 'why nobody knows it yet'}
          autoComplete="off"
          onChange={({ target }) => type(target.value)}
        />
      )}
    </RowFrame>
  );
};
