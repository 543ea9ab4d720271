/** A value with who stands behind it, in one row: value, tolerance, how it is known, and source. */
import { BASES, type Basis } from '#house';
import type { Dimension, UnitSystem } from '#quantities';
import { basisWords } from '#sheets';
import { Echo } from '../grid/echo.tsx';
import type { JsonPath } from '../keeping/json.ts';
import { say, sayGiven, useDesk, valueAt } from './desk.ts';
import { fieldId } from './entry-path.ts';
import { exampleOf, type SourcedOf } from './form.ts';
import { RowFrame } from './row-frame.tsx';
import {
  type HowKnown,
  type SourcedText,
  sourcedJson,
  sourcedText,
  withTyped,
  writtenWords,
} from './sourced-text.ts';
import { useRow } from './use-row.ts';

const exampleHint = (of: SourcedOf, units: UnitSystem): string => {
  const example = exampleOf(of, units);
  return example === '' ? '' : `such as ${example}`;
};

type RowProps = {
  readonly path: JsonPath;
  readonly of: SourcedOf;
  readonly label: string;
  readonly about: string;
};

const isMeasure = (of: SourcedOf): of is Dimension => of !== 'flag' && of !== 'number';

export const SourcedRow = ({ path, of, label, about }: RowProps) => {
  const desk = useDesk();
  const before = valueAt(desk, path);
  const inherited = desk.inheritedAt(path);
  const given = sayGiven(desk, path);
  const above = { hasGiven: given !== '', hasKind: inherited !== null };
  const { text, isTyped, type, missing, refusals, row } = useRow({
    shown: sourcedText(before, above),
    before,
    toWrite: (draft) => sourcedJson(draft, { ...above, of, before }),
    put: (json) => desk.put(path, json, label),
  });
  const { units } = desk.house;
  return (
    <RowFrame label={label} about={about} missing={missing} refusals={refusals} row={row}>
      <ValueField
        id={fieldId(desk.keysOf(path))}
        text={text}
        of={of}
        label={label}
        hint={
          inherited === null || text.how !== 'kind'
            ? exampleHint(of, units)
            : sourcedText(inherited.value, above).value
        }
        isRefused={refusals.length > 0}
        onType={(value) => type(withTyped(text, value, above))}
      />
      <HowField
        text={text}
        label={label}
        given={given}
        kind={
          inherited === null
            ? null
            : `from ${inherited.from}: ${writtenWords(inherited.value, basisWords)}`
        }
        onChoose={(how) => type({ ...text, how, source: how === 'unknown' ? '' : text.source })}
      />
      <Behind text={text} of={of} label={label} onType={type} />
      {isMeasure(of) && isTyped && refusals.length === 0 ? (
        <span className="entry-echo">
          <Echo text={text.value} dimension={of} units={units} />
        </span>
      ) : null}
      {inherited === null || before === undefined ? null : (
        <button
          type="button"
          className="as-words"
          onClick={() => desk.put(path, undefined, `${label}, from its kind again`)}
        >
          {say(desk, 'take it from its kind again')}
        </button>
      )}
    </RowFrame>
  );
};

type ValueProps = {
  readonly id: string;
  readonly text: SourcedText;
  readonly of: SourcedOf;
  readonly label: string;
  readonly hint: string;
  readonly isRefused: boolean;
  readonly onType: (value: string) => void;
};

const ValueField = ({ id, text, of, label, hint, isRefused, onType }: ValueProps) => {
  const name = `Value of ${label}`;
  if (of === 'flag') {
    return (
      <select
        id={id}
        aria-label={name}
        className="entry-value"
        value={text.value}
        onChange={({ target }) => onType(target.value)}
      >
        <option value="">not said</option>
        <option value="yes">yes</option>
        <option value="no">no</option>
      </select>
    );
  }
  return (
    <input
      id={id}
      aria-label={name}
      aria-invalid={isRefused}
      className="entry-value"
      value={text.value}
      placeholder={hint}
      autoComplete="off"
      spellCheck={false}
      onChange={({ target }) => onType(target.value)}
    />
  );
};

type HowProps = {
  readonly text: SourcedText;
  readonly label: string;
  readonly given: string;
  readonly kind: string | null;
  readonly onChoose: (how: HowKnown) => void;
};

/** Unknown is the first choice, and the one that every value starts with. */
const HowField = ({ text, label, given, kind, onChoose }: HowProps) => (
  <select
    aria-label={`How ${label} is known`}
    className="entry-how"
    value={text.how}
    onChange={({ target }) => onChoose(target.value as HowKnown)}
  >
    <option value="unknown">unknown</option>
    {text.how === 'open' ? <option value="open">choose how it is known</option> : null}
    {kind === null ? null : <option value="kind">{kind}</option>}
    {given === '' && text.how !== 'given' ? null : (
      <option value="given">as above: {given || 'nothing given'}</option>
    )}
    {BASES.map((basis: Basis) => (
      <option key={basis} value={basis}>
        {basisWords(basis)}
      </option>
    ))}
  </select>
);

type BehindProps = {
  readonly text: SourcedText;
  readonly of: SourcedOf;
  readonly label: string;
  readonly onType: (text: SourcedText) => void;
};

const WIDE = { source: 'source', by: 'by whom', on: 'on, such as 2026-05-04' } as const;

/** Where it is from; of what is unknown, why. Who and when are seldom asked, and fold away. */
const Behind = ({ text, of, label, onType }: BehindProps) => {
  if (text.how === 'kind') return null;
  const isUnknown = text.how === 'unknown';
  const field = (key: 'source' | 'by' | 'on' | 'tolerance', name: string, hint: string) => (
    <input
      aria-label={name}
      className={`entry-${key}`}
      value={text[key]}
      placeholder={hint}
      autoComplete="off"
      onChange={({ target }) => onType({ ...text, [key]: target.value })}
    />
  );
  if (isUnknown) return field('source', `Why ${label} is unknown`, 'why nobody knows it yet');
  const hasMore = text.by !== '' || text.on !== '' || text.tolerance !== '';
  const tolerance =
    of === 'flag' ? null : field('tolerance', `Tolerance of ${label}`, '±, such as 2 %');
  // Who stands behind it is said above; a source of its own needs a basis of its own.
  if (text.how === 'given' && text.source === '' && text.by === '' && text.on === '') {
    return tolerance;
  }
  return (
    <>
      {field('source', `Source of ${label}`, WIDE.source)}
      <details className="entry-more" open={hasMore || undefined}>
        <summary aria-label={`Tolerance, who and when of ${label}`}>more</summary>
        {tolerance}
        {field('by', `Who found ${label}`, WIDE.by)}
        {field('on', `Day on which ${label} was found`, WIDE.on)}
      </details>
    </>
  );
};
