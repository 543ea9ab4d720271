/** A value that nobody need stand behind: a name, a choice, a place, how many, a list of these. */
import { ok } from '#outcome';
import type { Dimension } from '#quantities';
import { phrase } from '#texts';
import { Echo } from '../grid/echo.tsx';
import { shownText } from '../grid/typed-marks.ts';
import { isList, type Json, type JsonPath } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { type Desk, markOf, type Named, noted, say, useDesk, valueAt } from './desk.ts';
import { fieldId, fieldName } from './entry-path.ts';
import type { Field, Form } from './form.ts';
import { choiceWords, labelKey, labelOf } from './labels.ts';
import { entriesOf, pairJson, pairTexts, plainJson, plainText, whyUnknown } from './plain-text.ts';
import { RowFrame } from './row-frame.tsx';
import { exampleIn, readFigures } from './typed-figures.ts';
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
      { value: 'yes', words: phrase(desk.house, 'yes') },
      { value: 'no', words: phrase(desk.house, 'no') },
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

const ChoiceRow = ({ path, field, label, about, place, options }: PlainProps & OptionsProps) => {
  const tell = useTell();
  const desk = useDesk();
  const before = valueAt(desk, path);
  const inherited = desk.inheritedAt(path);
  const { text, take, missing, refusals, row } = useRow({
    shown: plainText(before),
    before,
    toWrite: (draft) => ({ json: plainJson(draft, field.form) }),
    put: (json) => desk.put(path, json, noted(desk, labelOf(place))),
  });
  const none =
    inherited === null
      ? tell('not said')
      : tell('from {kind}: {value}', {
          kind: inherited.from,
          value: say(desk, choiceWords(plainText(inherited.value))),
        });
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      <select
        id={fieldId(desk.keysOf(path))}
        aria-label={tell('Value of {label}', { label })}
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
  if (form.kind === 'measure') {
    return phrase(house, 'such as {example}', { example: exampleIn(form.of, house) });
  }
  if (form.kind === 'day') return phrase(house, 'such as {example}', { example: '2026-05-04' });
  if (form.kind !== 'list') return '';
  return form.of.kind === 'measure'
    ? phrase(house, 'one after the other, {example}; …', { example: exampleIn(form.of.of, house) })
    : phrase(house, 'one after the other');
};

const measureOf = (form: Form): Dimension | null => (form.kind === 'measure' ? form.of : null);

/** Of what the text is made; a list of measures is of measures. */
const figureOf = (form: Form): Dimension | null =>
  form.kind === 'list' ? measureOf(form.of) : measureOf(form);

/** The text as the document holds it, where it is made of measures. */
const readText = (text: string, form: Form, desk: Desk, path: JsonPath) => {
  const of = figureOf(form);
  if (of === null) return ok(text);
  const entries = form.kind === 'list' ? entriesOf(text, form.of) : [text];
  const read = readFigures(of, entries, markOf(desk), fieldName(desk.keysOf(path)));
  return read.ok ? ok(read.value.join('; ')) : read;
};

/** As the reader writes it. */
const shownIn = (text: string, form: Form, desk: Desk): string =>
  figureOf(form) === null ? text : shownText(text, markOf(desk));

const mayBeUnknown = (form: Form): boolean => form.kind === 'list' && form.mayBeUnknown;

type Typed = { readonly text: string; readonly why: string };

const TypedRow = ({ path, field, label, about, place }: PlainProps) => {
  const tell = useTell();
  const desk = useDesk();
  const { form } = field;
  const before = valueAt(desk, path);
  const inherited = desk.inheritedAt(path);
  const isList = mayBeUnknown(form);
  const { text, isTyped, type, missing, refusals, row } = useRow<Typed>({
    shown: { text: shownIn(plainText(before), form, desk), why: whyUnknown(before) ?? '' },
    before,
    toWrite: (draft) => {
      const read = readText(draft.text, form, desk, path);
      if (!read.ok) return { refusals: [read.error] };
      const json = plainJson(read.value, form);
      const isUnknown = json === undefined && isList && draft.why.trim() !== '';
      return { json: isUnknown ? { unknown: draft.why.trim() } : json };
    },
    put: (json) => desk.put(path, json, noted(desk, labelOf(place))),
  });
  const dimension = measureOf(form);
  const hint =
    inherited === null
      ? hintOf(form, desk)
      : tell('from {kind}: {value}', {
          kind: inherited.from,
          value: shownIn(plainText(inherited.value), form, desk) || tell('unknown'),
        });
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      <input
        id={fieldId(desk.keysOf(path))}
        aria-label={tell('Value of {label}', { label })}
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
          aria-label={tell('Why {label} is unknown', { label })}
          className="entry-source"
          value={text.why}
          placeholder={tell('unknown: why nobody knows it yet')}
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

const PairRow = ({ path, field, label, about, place }: PlainProps) => {
  const tell = useTell();
  const desk = useDesk();
  const form = field.form as Extract<Form, { readonly kind: 'pair' }>;
  const before = valueAt(desk, path);
  const { text, type, missing, refusals, row } = useRow({
    shown: pairIn(pairTexts(before), desk),
    before,
    toWrite: (draft) => {
      const read = readFigures(form.of, draft, markOf(desk), fieldName(desk.keysOf(path)));
      if (!read.ok) return { refusals: [read.error] };
      const [low = '', high = ''] = read.value;
      return pairJson([low, high], form);
    },
    put: (json) => desk.put(path, json, noted(desk, labelOf(place))),
  });
  const [from, to] = text;
  const open = form.mayGoOn
    ? tell('goes on')
    : tell('such as {example}', { example: exampleIn(form.of, desk.house) });
  return (
    <RowFrame
      label={label}
      about={about}
      missing={missing === null ? null : tell(missing)}
      refusals={refusals}
      row={row}
    >
      <input
        id={fieldId(desk.keysOf(path))}
        aria-label={tell('From, {label}', { label })}
        className="entry-value"
        value={from}
        placeholder={open}
        autoComplete="off"
        onChange={({ target }) => type([target.value, to])}
      />
      <span className="entry-between">{tell('to')}</span>
      <input
        aria-label={tell('To, {label}', { label })}
        className="entry-value"
        value={to}
        placeholder={open}
        autoComplete="off"
        onChange={({ target }) => type([from, target.value])}
      />
    </RowFrame>
  );
};

const pairIn = ([from, to]: readonly [string, string], desk: Desk): readonly [string, string] => [
  shownText(from, markOf(desk)),
  shownText(to, markOf(desk)),
];

const chosenOf = (value: Json | undefined): readonly string[] =>
  isList(value) ? value.map(String) : [];

/** A list of a few words, each chosen or not. */
const BoxesRow = ({ path, field, label, about, place }: PlainProps) => {
  const desk = useDesk();
  const form = field.form as Extract<Form, { readonly kind: 'list' }>;
  const options = form.of.kind === 'choice' ? form.of.options : [];
  const before = valueAt(desk, path);
  const { text, take, missing, refusals, row } = useRow({
    shown: chosenOf(before),
    before,
    toWrite: (draft) => ({ json: draft.length === 0 ? undefined : draft }),
    put: (json) => desk.put(path, json, noted(desk, labelOf(place))),
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
