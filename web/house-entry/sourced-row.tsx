/** A value with who stands behind it, in one row: value, tolerance, how it is known, and source. */
import { BASES, type Basis, type House } from '#house';
import type { Dimension } from '#quantities';
import { basisWords } from '#sheets';
import { phrase } from '#texts';
import type { Inherited } from '../editing/house-edits.ts';
import { Echo } from '../grid/echo.tsx';
import { shownText } from '../grid/typed-marks.ts';
import type { JsonPath } from '../keeping/json.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { markOf, sayGiven, useDesk, valueAt } from './desk.ts';
import { fieldId, fieldName } from './entry-path.ts';
import type { SourcedOf } from './form.ts';
import { RowFrame } from './row-frame.tsx';
import {
  type HowKnown,
  type SourcedText,
  sourcedJson,
  sourcedText,
  withTyped,
  writtenWords,
} from './sourced-text.ts';
import { exampleIn, readSourced, shownSourced } from './typed-figures.ts';
import { useRow } from './use-row.ts';

type RowProps = {
  readonly path: JsonPath;
  readonly of: SourcedOf;
  readonly label: string;
  readonly about: string;
  /** The label for the record of revisions. */
  readonly noted: string;
};

const isMeasure = (of: SourcedOf): of is Dimension => of !== 'flag' && of !== 'number';

const exampleHint = (of: SourcedOf, house: House): string => {
  const example = exampleIn(of, house);
  return example === '' ? '' : phrase(house, 'such as {example}', { example });
};

const kindWords = ({ from, value }: Inherited, house: House): string =>
  phrase(house, 'from {kind}: {value}', {
    kind: from,
    value: writtenWords(value, (basis) => basisWords(basis, house), house),
  });

export const SourcedRow = ({ path, of, label, about, noted }: RowProps) => {
  const tell = useTell();
  const desk = useDesk();
  const mark = markOf(desk);
  const before = valueAt(desk, path);
  const inherited = desk.inheritedAt(path);
  const given = sayGiven(desk, path);
  const above = { hasGiven: given !== '', hasKind: inherited !== null };
  const { text, isTyped, type, missing, refusals, row } = useRow({
    shown: shownSourced(sourcedText(before, above), mark),
    before,
    toWrite: (draft) => {
      const read = readSourced(draft, of, mark, fieldName(desk.keysOf(path)));
      return read.ok
        ? sourcedJson(read.value, { ...above, of, before })
        : { refusals: [read.error] };
    },
    put: (json) => desk.put(path, json, noted),
  });
  const { house } = desk;
  return (
    <RowFrame
      label={label}
      about={about}
      missing={missing === null ? null : tell(missing)}
      refusals={refusals}
      row={row}
    >
      <ValueField
        id={fieldId(desk.keysOf(path))}
        text={text}
        of={of}
        label={label}
        hint={
          inherited === null || text.how !== 'kind'
            ? exampleHint(of, house)
            : shownText(sourcedText(inherited.value, above).value, mark)
        }
        isRefused={refusals.length > 0}
        onType={(value) => type(withTyped(text, value, above))}
      />
      <HowField
        text={text}
        label={label}
        given={given}
        kind={inherited === null ? null : kindWords(inherited, house)}
        onChoose={(how) => type({ ...text, how, source: how === 'unknown' ? '' : text.source })}
      />
      <Behind text={text} of={of} label={label} onType={type} />
      {isMeasure(of) && isTyped && refusals.length === 0 ? (
        <span className="entry-echo">
          <Echo text={text.value} dimension={of} units={house.units} />
        </span>
      ) : null}
      {inherited === null || before === undefined ? null : (
        <KindAgain onPress={() => desk.put(path, undefined, `${noted}, from its kind again`)} />
      )}
    </RowFrame>
  );
};

const KindAgain = ({ onPress }: { readonly onPress: () => void }) => {
  const tell = useTell();
  return (
    <button type="button" className="as-words" onClick={onPress}>
      {tell('take it from its kind again')}
    </button>
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
  const tell = useTell();
  const name = tell('Value of {label}', { label });
  if (of === 'flag') {
    return (
      <select
        id={id}
        aria-label={name}
        className="entry-value"
        value={text.value}
        onChange={({ target }) => onType(target.value)}
      >
        <option value="">{tell('not said')}</option>
        <option value="yes">{tell('yes')}</option>
        <option value="no">{tell('no')}</option>
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
const HowField = ({ text, label, given, kind, onChoose }: HowProps) => {
  const tell = useTell();
  const voice = useVoice();
  return (
    <select
      aria-label={tell('How {label} is known', { label })}
      className="entry-how"
      value={text.how}
      onChange={({ target }) => onChoose(target.value as HowKnown)}
    >
      <option value="unknown">{tell('unknown')}</option>
      {text.how === 'open' ? <option value="open">{tell('choose how it is known')}</option> : null}
      {kind === null ? null : <option value="kind">{kind}</option>}
      {given === '' && text.how !== 'given' ? null : (
        <option value="given">
          {tell('as above: {given}', { given: given || tell('nothing given') })}
        </option>
      )}
      {BASES.map((basis: Basis) => (
        <option key={basis} value={basis}>
          {basisWords(basis, voice)}
        </option>
      ))}
    </select>
  );
};

type BehindProps = {
  readonly text: SourcedText;
  readonly of: SourcedOf;
  readonly label: string;
  readonly onType: (text: SourcedText) => void;
};

/** Where it is from; of what is unknown, why. Who and when are seldom asked, and fold away. */
const Behind = ({ text, of, label, onType }: BehindProps) => {
  const tell = useTell();
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
  if (isUnknown) {
    return field(
      'source',
      tell('Why {label} is unknown', { label }),
      tell('why nobody knows it yet'),
    );
  }
  const hasMore = text.by !== '' || text.on !== '' || text.tolerance !== '';
  const tolerance =
    of === 'flag'
      ? null
      : field('tolerance', tell('Tolerance of {label}', { label }), tell('±, such as 2 %'));
  // Who stands behind it is said above; a source of its own needs a basis of its own.
  if (text.how === 'given' && text.source === '' && text.by === '' && text.on === '') {
    return tolerance;
  }
  return (
    <>
      {field('source', tell('Source of {label}', { label }), tell('source'))}
      <details className="entry-more" open={hasMore || undefined}>
        <summary aria-label={tell('Tolerance, who and when of {label}', { label })}>
          {tell('more')}
        </summary>
        {tolerance}
        {field('by', tell('Who found {label}', { label }), tell('by whom'))}
        {field(
          'on',
          tell('Day on which {label} was found', { label }),
          tell('on, such as 2026-05-04'),
        )}
      </details>
    </>
  );
};
