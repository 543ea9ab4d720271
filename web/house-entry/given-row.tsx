/** Who stands behind every value below that has no basis of its own; said once, at the head. */
import { BASES } from '#house';
import { basisWords } from '#sheets';
import { message } from '#texts';
import { isObject, type Json, type JsonPath } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { useDesk, valueAt } from './desk.ts';
import { fieldId } from './entry-path.ts';
import { givenWords } from './how-words.ts';
import { RowFrame } from './row-frame.tsx';
import { useRow } from './use-row.ts';

type Given = {
  readonly basis: string;
  readonly source: string;
  readonly by: string;
  readonly on: string;
};

const wordAt = (value: Json | undefined, key: string): string => {
  const word = isObject(value) ? value[key] : undefined;
  return typeof word === 'string' ? word : '';
};

const givenText = (value: Json | undefined): Given => ({
  basis: wordAt(value, 'basis'),
  source: wordAt(value, 'source'),
  by: wordAt(value, 'by'),
  on: wordAt(value, 'on'),
});

const NOT_SAID = message('how the values are known');

const givenJson = ({ basis, ...words }: Given) => {
  const said = Object.entries(words)
    .map(([key, text]) => [key, text.trim()] as const)
    .filter(([, text]) => text !== '');
  if (basis !== '') return { json: { basis, ...Object.fromEntries(said) } };
  return said.length === 0 ? { json: undefined } : { missing: NOT_SAID };
};

type RowProps = {
  readonly path: JsonPath;
  readonly label: string;
  readonly about: string;
  /** The label for the record of revisions. */
  readonly noted: string;
};

/** Of what lies deeper it is seldom said apart, so there it is folded away. */
export const FoldedGiven = (props: RowProps) => {
  const desk = useDesk();
  const tell = useTell();
  const own = givenWords(valueAt(desk, props.path), desk.house);
  return (
    <details className="entry-folded">
      <summary>
        {own === '' ? tell('{label}: as above', { label: props.label }) : `${props.label}: ${own}`}
      </summary>
      <GivenRow {...props} />
    </details>
  );
};

export const GivenRow = ({ path, label, about, noted }: RowProps) => {
  const tell = useTell();
  const desk = useDesk();
  const before = valueAt(desk, path);
  const { text, type, missing, refusals, row } = useRow({
    shown: givenText(before),
    before,
    toWrite: givenJson,
    put: (json) => desk.put(path, json, noted),
  });
  const above = givenWords(desk.givenAt(path.slice(0, -1)), desk.house);
  const field = (key: 'source' | 'by' | 'on', name: string, hint: string) => (
    <input
      aria-label={name}
      className={`entry-${key}`}
      value={text[key]}
      placeholder={hint}
      autoComplete="off"
      onChange={({ target }) => type({ ...text, [key]: target.value })}
    />
  );
  return (
    <RowFrame
      label={label}
      about={about}
      missing={missing === null ? null : tell(missing)}
      refusals={refusals}
      row={row}
      className="entry-given"
    >
      <select
        id={fieldId(desk.keysOf(path))}
        aria-label={tell('How values are known, {label}', { label })}
        className="entry-how"
        value={text.basis}
        onChange={({ target }) => type({ ...text, basis: target.value })}
      >
        <option value="">
          {above === '' ? tell('each row says it') : tell('as above: {given}', { given: above })}
        </option>
        {BASES.map((basis) => (
          <option key={basis} value={basis}>
            {basisWords(basis, desk.house)}
          </option>
        ))}
      </select>
      {field('source', tell('Source, {label}', { label }), tell('source'))}
      {field('by', tell('By whom, {label}', { label }), tell('by whom'))}
      {field('on', tell('Day, {label}', { label }), tell('on, such as 2026-05-04'))}
    </RowFrame>
  );
};
