/** A list inside a form, such as the joints of a tube: its entries one after the other. */
import type { Inherited } from '../editing/house-edits.ts';
import { isList, type JsonPath } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { AddEntry } from './add-entry.tsx';
import { noted, say, useDesk, valueAt } from './desk.ts';
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
  const tell = useTell();
  const desk = useDesk();
  const { Fields } = desk;
  const value = valueAt(desk, path);
  const entries = isList(value) ? value : [];
  const title = say(desk, labelOf(place));
  const what = noted(desk, labelOf(place));
  const inherited = desk.inheritedAt(path);
  const { of } = form;
  if (of.kind !== 'object') throw new Error(`defect: no entries with fields at ${place}`);
  return (
    <fieldset className="entry-object" id={fieldId(desk.keysOf(path))} tabIndex={-1}>
      <legend>{title}</legend>
      <p className="entry-about">{about}</p>
      {value === undefined && inherited !== null ? <OfKind inherited={inherited} /> : null}
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
              `${what} ${index + 1} taken away`,
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
          noted={what}
          isNone={isList(value)}
          isOfKind={value === undefined && inherited !== null}
        />
      ) : null}
      <AddEntry
        form={of}
        place={place}
        one={tell('one of {title}', { title })}
        onAdd={(entry) => desk.put(path, [...entries, entry], what)}
      />
    </fieldset>
  );
};

const OfKind = ({ inherited }: { readonly inherited: Inherited }) => {
  const tell = useTell();
  const { from: kind, value } = inherited;
  return (
    <p className="quiet">
      {isList(value)
        ? tell('From its kind {kind}: {count} entered. What is added here holds instead.', {
            kind,
            count: value.length,
          })
        : tell('From its kind {kind}: unknown. What is added here holds instead.', { kind })}
    </p>
  );
};

type EntryProps = {
  readonly number: number;
  readonly title: string;
  readonly onTakeAway: () => void;
  readonly children: React.ReactNode;
};

const Entry = ({ number, title, onTakeAway, children }: EntryProps) => {
  const tell = useTell();
  return (
    <div className="entry-one">
      <p className="entry-number">{number}</p>
      <div>
        {children}
        <p className="buttons">
          <button type="button" onClick={onTakeAway}>
            {tell('Take away number {number} of {title}', { number, title })}
          </button>
        </p>
      </div>
    </div>
  );
};

type NoneProps = {
  readonly path: JsonPath;
  readonly title: string;
  /** The title for the record of revisions. */
  readonly noted: string;
  readonly isNone: boolean;
  readonly isOfKind: boolean;
};

/** That there is none is known; that nobody has looked is not. */
const NoneOrUnknown = ({ path, title, noted: what, isNone, isOfKind }: NoneProps) => {
  const tell = useTell();
  const desk = useDesk();
  const before = valueAt(desk, path);
  const { text, type, missing, refusals, row } = useRow({
    shown: whyUnknown(before) ?? '',
    before,
    toWrite: (why) => ({ json: why.trim() === '' ? undefined : { unknown: why.trim() } }),
    put: (json) => desk.put(path, json, what),
  });
  return (
    <RowFrame
      label={
        isNone ? tell('there is none') : isOfKind ? tell('as its kind has it') : tell('unknown')
      }
      about=""
      missing={missing}
      refusals={refusals}
      row={row}
    >
      <button
        type="button"
        aria-pressed={isNone}
        onClick={() =>
          desk.put(path, isNone ? undefined : [], `${what}: ${isNone ? 'unknown' : 'none'}`)
        }
      >
        {isNone ? tell('It is not known after all') : tell('There is none')}
      </button>
      {isNone ? null : (
        <input
          aria-label={tell('Why {label} is unknown', { label: title })}
          className="entry-source"
          value={text}
          placeholder={isOfKind ? tell('unknown here, and why') : tell('why nobody knows it yet')}
          autoComplete="off"
          onChange={({ target }) => type(target.value)}
        />
      )}
    </RowFrame>
  );
};
