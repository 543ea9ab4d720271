/** One field of the form, whatever it is: what the document takes says which row it gets. */
import { unreachable } from '#outcome';
import type { JsonPath } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { sayAbout } from './about-words.ts';
import { AddEntry } from './add-entry.tsx';
import { type FieldsProps, noted, say, useDesk, valueAt } from './desk.ts';
import type { Field, Form } from './form.ts';
import { FoldedGiven, GivenRow } from './given-row.tsx';
import { IdRow } from './id-row.tsx';
import { choiceWords, labelOf } from './labels.ts';
import { ListEntries } from './list-entries.tsx';
import { PlainRow } from './plain-row.tsx';
import { SourcedRow } from './sourced-row.tsx';

export type FieldProps = {
  readonly field: Field;
  readonly path: JsonPath;
  /** Where it stands among the labels: `set.batten.mass`. */
  readonly place: string;
};

/** Of the house, of a part of it, of an entry of a list. */
const HEAD_DEPTH = 3;

/** The id of an entry of the house itself, and not of something inside it. */
const isEntryId = (path: JsonPath): boolean => path.length === 3 && path[2] === 'id';

export const FieldView = ({ field, path, place }: FieldProps) => {
  const desk = useDesk();
  const label = say(desk, labelOf(place));
  const about = sayAbout(field.about, desk.house);
  const what = noted(desk, labelOf(place));
  const { form } = field;
  switch (form.kind) {
    case 'sourced':
      return <SourcedRow path={path} of={form.of} label={label} about={about} noted={what} />;
    case 'given':
      return path.length > HEAD_DEPTH ? (
        <FoldedGiven path={path} label={label} about={about} noted={what} />
      ) : (
        <GivenRow path={path} label={label} about={about} noted={what} />
      );
    case 'object':
      return <ObjectField field={field} path={path} place={place} />;
    case 'kinds':
      return <KindsField field={field} path={path} place={place} />;
    case 'fixed':
      return null;
    case 'list':
      if (form.of.kind === 'object') {
        return <ListEntries form={form} path={path} place={place} about={about} />;
      }
      return <PlainRow path={path} field={field} label={label} about={about} place={place} />;
    case 'record':
      throw new Error(`defect: a record inside a form, at ${place}`);
    case 'id':
      if (isEntryId(path)) {
        const [list] = path;
        return <IdRow list={String(list)} label={label} id={String(valueAt(desk, path))} />;
      }
      return <PlainRow path={path} field={field} label={label} about={about} place={place} />;
    case 'measure':
    case 'text':
    case 'day':
    case 'flag':
    case 'count':
    case 'choice':
    case 'pair':
      return <PlainRow path={path} field={field} label={label} about={about} place={place} />;
    default:
      return unreachable(form);
  }
};

/** Who stands behind the rest comes first, since the rows below lean on it. */
export const FieldsView = ({ fields, path, place }: FieldsProps) =>
  [...fields]
    .toSorted((one, other) => Number(other.key === 'given') - Number(one.key === 'given'))
    .map((field) => (
      <FieldView
        key={field.key}
        field={field}
        path={[...path, field.key]}
        place={`${place}.${field.key}`}
      />
    ));

const ObjectField = ({ field, path, place }: FieldProps) => {
  const desk = useDesk();
  const form = field.form as Extract<Form, { readonly kind: 'object' }>;
  const title = say(desk, labelOf(place));
  const isThere = valueAt(desk, path) !== undefined;
  // What cannot be without some of its fields is begun by saying these.
  const mustBegin = !isThere && form.fields.some(({ isNeeded }) => isNeeded);
  return (
    <fieldset className="entry-object">
      <legend>{title}</legend>
      {mustBegin ? (
        <AddEntry
          form={form}
          place={place}
          one={title}
          onAdd={(entry) => desk.put(path, entry, noted(desk, labelOf(place)))}
        />
      ) : (
        <FieldsView fields={form.fields} path={path} place={place} />
      )}
      {isThere && !field.isNeeded && form.fields.some(({ isNeeded }) => isNeeded) ? (
        <TakeAway path={path} words={title} noted={noted(desk, labelOf(place))} />
      ) : null}
    </fieldset>
  );
};

type TakeProps = {
  readonly path: JsonPath;
  readonly words: string;
  /** The same for the record of revisions. */
  readonly noted: string;
};

const TakeAway = ({ path, words, noted: what }: TakeProps) => {
  const tell = useTell();
  const desk = useDesk();
  return (
    <p className="buttons">
      <button type="button" onClick={() => desk.put(path, undefined, `${what} taken away`)}>
        {tell('Take away {what}', { what: words })}
      </button>
    </p>
  );
};

const KindsField = ({ field, path, place }: FieldProps) => {
  const desk = useDesk();
  const form = field.form as Extract<Form, { readonly kind: 'kinds' }>;
  const title = say(desk, labelOf(place));
  const value = valueAt(desk, path);
  const chosen = Object.entries(form.kinds).find(
    ([kind]) => valueAt(desk, [...path, form.by]) === kind,
  );
  return (
    <fieldset className="entry-object">
      <legend>{title}</legend>
      <p className="entry-about">{sayAbout(field.about, desk.house)}</p>
      {chosen !== undefined && chosen[1].kind === 'object' ? (
        <>
          <FieldsView fields={chosen[1].fields} path={path} place={place} />
          <TakeAway path={path} words={title} noted={noted(desk, labelOf(place))} />
        </>
      ) : null}
      {value === undefined
        ? Object.entries(form.kinds).map(([kind, inner]) => (
            <AddEntry
              key={kind}
              form={inner}
              place={place}
              one={`${title}: ${say(desk, choiceWords(kind))}`}
              begin={{ [form.by]: kind }}
              isWhole
              onAdd={(entry) => desk.put(path, entry, noted(desk, labelOf(place)))}
            />
          ))
        : null}
    </fieldset>
  );
};
