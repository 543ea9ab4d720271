/** A value that nobody need stand behind: a name, a choice, a place, how many, a list of these. */
import type { Dimension } from '#quantities';
import { Echo } from '../grid/echo.tsx';
import { isList, type Json, type JsonPath } from '../keeping/json.ts';
import { type Desk, type Named, say, useDesk, valueAt } from './desk.ts';
import { fieldId } from './entry-path.ts';
import { exampleOf, type Field, type Form } from './form.ts';
import { choiceWords, labelKey } from './labels.ts';
import { pairJson, pairTexts, plainJson, plainText, whyUnknown } from './plain-text.ts';
import { RowFrame } from './row-frame.tsx';
import { useRow } from './use-row.ts';

export type PlainProps = {
  readonly path: JsonPath;
  readonly field: Field;
  readonly label: string;
  readonly about: string;
  /** Where the field stands among the labels: `set.rail`. */
  readonly place: string;
};

/** Fields that name an entry of another list of the house. */
const NAMES: Readonly<Record<string, string>> = {
  'set.type': 'setTypes',
  'set.extends': 'setTypes',
  'set.rail': 'rails',
  'set.arbor.pipeWeight.kind': 'brickKinds',
  'reserved.kind': 'brickKinds',
};

type Option = { readonly value: string; readonly words: string };

const namedOption = ({ id, name }: Named): Option => ({
  value: id,
  words: name === id || name === '' ? id : `${id}, ${name}`,
});

/** What may be chosen; null where it is typed. */
const optionsOf = (form: Form, place: string, desk: Desk): readonly Option[] | null => {
  if (form.kind === 'choice') {
    return form.options.map((value) => ({ value, words: say(desk, choiceWords(value)) }));
  }
  if (form.kind === 'flag') {
    return [
      { value: 'yes', words: 'yes' },
      { value: 'no', words: 'no' },
    ];
  }
  const list = NAMES[labelKey(place)];
  return list === undefined ? null : desk.named(list).map(namedOption);
};

export const PlainRow = (props: PlainProps) => {
  const { field, place } = props;
  const desk = useDesk();
  const { form } = field;
  if (form.kind === 'pair') return <PairRow {...props} />;
  if (form.kind === 'list' && form.of.kind === 'choice') return <BoxesRow {...props} />;
  const options = optionsOf(form, place, desk);
  return options === null ? <TypedRow {...props} /> : <ChoiceRow {...props} options={options} />;
};

const ChoiceRow = ({ path, field, label, about, options }: PlainProps & OptionsProps) => {
  const desk = useDesk();
  const before = valueAt(desk, path);
  const inherited = desk.inheritedAt(path);
  const { text, take, missing, refusals, row } = useRow({
    shown: plainText(before),
    before,
    toWrite: (draft) => ({ json: plainJson(draft, field.form) }),
    put: (json) => desk.put(path, json, label),
  });
  const none =
    inherited === null
      ? 'not said'
      : `from ${inherited.from}: ${say(desk, choiceWords(plainText(inherited.value)))}`;
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      <select
        id={fieldId(desk.keysOf(path))}
        aria-label={`Value of ${label}`}
        className="entry-choice"
        value={text}
        onChange={({ target }) => take(target.value)}
      >
        {field.isNeeded && text !== '' ? null : <option value="">{none}</option>}
        {options.some(({ value }) => value === text) || text === '' ? null : (
          <option value={text}>{text}</option>
        )}
        {options.map(({ value, words }) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </RowFrame>
  );
};

type OptionsProps = { readonly options: readonly Option[] };

const hintOf = (form: Form, { house }: Desk): string => {
  if (form.kind === 'measure') return `such as ${exampleOf(form.of, house.units)}`;
  if (form.kind === 'day') return 'such as 2026-05-04';
  if (form.kind !== 'list') return '';
  return form.of.kind === 'measure'
    ? `one after the other, ${exampleOf(form.of.of, house.units)}; …`
    : 'one after the other';
};

const measureOf = (form: Form): Dimension | null => (form.kind === 'measure' ? form.of : null);

const mayBeUnknown = (form: Form): boolean => form.kind === 'list' && form.mayBeUnknown;

type Typed = { readonly text: string; readonly why: string };

const TypedRow = ({ path, field, label, about }: PlainProps) => {
  const desk = useDesk();
  const { form } = field;
  const before = valueAt(desk, path);
  const inherited = desk.inheritedAt(path);
  const isList = mayBeUnknown(form);
  const { text, isTyped, type, missing, refusals, row } = useRow<Typed>({
    shown: { text: plainText(before), why: whyUnknown(before) ?? '' },
    before,
    toWrite: (draft) => {
      const json = plainJson(draft.text, form);
      const isUnknown = json === undefined && isList && draft.why.trim() !== '';
      return { json: isUnknown ? { unknown: draft.why.trim() } : json };
    },
    put: (json) => desk.put(path, json, label),
  });
  const dimension = measureOf(form);
  const hint =
    inherited === null
      ? hintOf(form, desk)
      : `from ${inherited.from}: ${plainText(inherited.value) || 'unknown'}`;
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      <input
        id={fieldId(desk.keysOf(path))}
        aria-label={`Value of ${label}`}
        aria-invalid={refusals.length > 0}
        className={form.kind === 'list' || form.kind === 'text' ? 'entry-long' : 'entry-value'}
        value={text.text}
        placeholder={hint}
        autoComplete="off"
        spellCheck={form.kind === 'text'}
        onChange={({ target }) => type({ ...text, text: target.value })}
      />
      {isList && text.text === '' ? (
        <input
          aria-label={`Why ${label} is unknown`}
          className="entry-source"
          value={text.why}
          placeholder="unknown: why nobody knows it yet"
          autoComplete="off"
          onChange={({ target }) => type({ ...text, why: target.value })}
        />
      ) : null}
      {dimension === null || !isTyped || refusals.length > 0 ? null : (
        <span className="entry-echo">
          <Echo text={text.text} dimension={dimension} units={desk.house.units} />
        </span>
      )}
    </RowFrame>
  );
};

const PairRow = ({ path, field, label, about }: PlainProps) => {
  const desk = useDesk();
  const form = field.form as Extract<Form, { readonly kind: 'pair' }>;
  const before = valueAt(desk, path);
  const { text, type, missing, refusals, row } = useRow({
    shown: pairTexts(before),
    before,
    toWrite: (draft) => pairJson(draft, form),
    put: (json) => desk.put(path, json, label),
  });
  const [from, to] = text;
  const open = form.mayGoOn ? 'goes on' : `such as ${exampleOf(form.of, desk.house.units)}`;
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      <input
        id={fieldId(desk.keysOf(path))}
        aria-label={`From, ${label}`}
        className="entry-value"
        value={from}
        placeholder={open}
        autoComplete="off"
        onChange={({ target }) => type([target.value, to])}
      />
      <span className="entry-between">to</span>
      <input
        aria-label={`To, ${label}`}
        className="entry-value"
        value={to}
        placeholder={open}
        autoComplete="off"
        onChange={({ target }) => type([from, target.value])}
      />
    </RowFrame>
  );
};

const chosenOf = (value: Json | undefined): readonly string[] =>
  isList(value) ? value.map(String) : [];

/** A list of a few words, each chosen or not. */
const BoxesRow = ({ path, field, label, about }: PlainProps) => {
  const desk = useDesk();
  const form = field.form as Extract<Form, { readonly kind: 'list' }>;
  const options = form.of.kind === 'choice' ? form.of.options : [];
  const before = valueAt(desk, path);
  const { text, take, missing, refusals, row } = useRow({
    shown: chosenOf(before),
    before,
    toWrite: (draft) => ({ json: draft.length === 0 ? undefined : draft }),
    put: (json) => desk.put(path, json, label),
  });
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      {options.map((option, index) => (
        <label key={option} className="entry-box">
          <input
            id={index === 0 ? fieldId(desk.keysOf(path)) : undefined}
            type="checkbox"
            className="entry-tick"
            checked={text.includes(option)}
            onChange={({ target }) =>
              take(options.filter((one) => (one === option ? target.checked : text.includes(one))))
            }
          />
          {say(desk, choiceWords(option))}
        </label>
      ))}
    </RowFrame>
  );
};
