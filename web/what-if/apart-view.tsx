/** Two sets side by side, or one as it is and as it would be: drawings, figures, checks. */
import { useCallback, useMemo } from 'react';
import { balanceDrawing, stackDrawing } from '#drawings';
import type { Finding } from '#findings';
import type { House } from '#house';
import { levelWord } from '#sheets';
import { inVoice, message, phrase, type Voice } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { FOLDED } from '../frame/folded-roles.ts';
import { useTell } from '../language/use-tell.ts';
import { LETTER, sizeFor } from '../set/drawing-size.ts';
import { Measured } from '../set/measured.tsx';
import { type FindingChange, findingsApart, unknownApart } from './findings-apart.ts';
import { changeWord, findingDetail } from './say-change.ts';
import { lineRows, type Side, type SideRow, sideRows } from './side-rows.ts';

export type Labels = {
  /** "as planned", "set 11": behind, thin and dashed. */
  readonly one: string;
  /** "what if", "set 36": in front, full. */
  readonly other: string;
};

type SidesProps = {
  readonly one: Side;
  readonly other: Side;
  readonly labels: Labels;
};

export const DrawnApart = ({ one, other, labels }: SidesProps) => {
  const tell = useTell();
  const { set, house } = other;
  const { set: besideSet, house: besideHouse } = one;
  const curve = useMemo(() => {
    const beside = { set: besideSet, house: besideHouse };
    const size = sizeFor([beside, { set, house }]);
    return (width: number) => balanceDrawing(set, house, { width, ...size, beside });
  }, [besideSet, besideHouse, set, house]);
  return (
    <div className="apart-drawings">
      <Measured title={tell('Balance against height')} className="curve" draw={curve}>
        <p className="quiet">
          {tell('Full line: {other}. Thin dashed line: {one}.', {
            other: labels.other,
            one: labels.one,
          })}
        </p>
      </Measured>
      <Stack side={one} title={tell('Stack, {label}', { label: labels.one })} />
      <Stack side={other} title={tell('Stack, {label}', { label: labels.other })} />
    </div>
  );
};

const Stack = ({
  side: { set, house },
  title,
}: {
  readonly side: Side;
  readonly title: string;
}) => {
  const height = useMemo(() => sizeFor([{ set, house }]).height, [set, house]);
  const of = set.plan.known ? 'plan' : 'record';
  const draw = useCallback(
    (width: number) => stackDrawing(set, house, { width, height, letter: LETTER, of }),
    [set, house, height, of],
  );
  if (set.lineSet.arbor === null) return null;
  return <Measured title={title} className="stack" draw={draw} />;
};

/** The same only where both print the same: of what is not known on one side nothing is said. */
const Change = ({ before, after, change }: Omit<SideRow, 'what'>) => {
  const tell = useTell();
  if (change !== '') return <b>{change}</b>;
  return <span className="quiet">{before === after ? tell('the same') : tell('not known')}</span>;
};

type TableProps = {
  readonly caption: string;
  readonly head: string;
  readonly labels: Labels;
  readonly rows: readonly SideRow[];
};

/** A phone reads each row as a small block: the label of a column stands in its cell there. */
const ApartTable = ({ caption, head, labels, rows }: TableProps) => {
  const tell = useTell();
  return (
    <table {...FOLDED.table} className="plain apart-table folds by-three">
      <caption>{caption}</caption>
      <thead {...FOLDED.rows}>
        <tr {...FOLDED.row}>
          <th {...FOLDED.columnHead} scope="col">
            {head}
          </th>
          <th {...FOLDED.columnHead} scope="col">
            {labels.one}
          </th>
          <th {...FOLDED.columnHead} scope="col">
            {labels.other}
          </th>
          <th {...FOLDED.columnHead} scope="col">
            {tell('difference')}
          </th>
        </tr>
      </thead>
      <tbody {...FOLDED.rows}>
        {rows.map(({ what, before, after, change }) => (
          <tr {...FOLDED.row} key={what}>
            <th {...FOLDED.rowHead} scope="row">
              {what}
            </th>
            <td {...FOLDED.cell} data-label={labels.one}>
              {before}
            </td>
            <td {...FOLDED.cell} data-label={labels.other}>
              {after}
            </td>
            <td {...FOLDED.cell} data-label={tell('difference')}>
              <Change before={before} after={after} change={change} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

export const FiguresApart = ({
  one,
  other,
  labels,
  reader,
}: SidesProps & { readonly reader: House }) => {
  const tell = useTell();
  const rows = sideRows(one, other, reader);
  const lines = lineRows(one, other, reader);
  return (
    <div className="apart-figures">
      <ApartTable caption={tell('In figures')} head={tell('what')} labels={labels} rows={rows} />
      {lines === null ? null : (
        <ApartTable
          caption={phrase(reader, 'Lift lines at {state}, line 1 at stage right', {
            state: lines.state,
          })}
          head={tell('line')}
          labels={labels}
          rows={lines.rows.map(({ line, ...row }) => ({
            what: tell('line {line}', { line }),
            ...row,
          }))}
        />
      )}
    </div>
  );
};

const GLYPHS = { stop: 'danger', caution: 'caution' } as const;

type ItemProps = {
  readonly change: FindingChange;
  readonly house: House;
  readonly labels: Labels | undefined;
};

/** Of two hangs: which of them it is said of, or of which it is graver. */
const comparedWord = (is: FindingChange['is'], { one, other }: Labels, voice: Voice): string =>
  phrase(voice, COMPARED[is], { label: is === 'gone' ? one : other });

const COMPARED = {
  new: message('Only {label}'),
  gone: message('Only {label}'),
  worse: message('More on {label}'),
  better: message('Less on {label}'),
} as const;

const ChangeItem = ({ change, house, labels }: ItemProps) => {
  const { finding, is } = change;
  const glyph = finding.level === 'note' || is === 'gone' ? null : GLYPHS[finding.level];
  const word = labels === undefined ? changeWord(change, house) : comparedWord(is, labels, house);
  return (
    <li className={`finding-change ${is}`}>
      {glyph === null ? null : <Glyph name={glyph} size={22} />}
      <span>
        {glyph === null ? null : <b>{levelWord(finding.level, house)}. </b>}
        <b>{word}:</b> {findingDetail(change, house)} <span className="code">{finding.code}</span>
      </span>
    </li>
  );
};

type ChecksProps = {
  readonly before: readonly Finding[];
  readonly after: readonly Finding[];
  readonly house: House;
  readonly id: string;
  /** Of two hangs, a finding is of the one or of the other, and neither new nor gone. */
  readonly labels?: Labels;
};

export const ChecksApart = ({ before, after, house, id, labels }: ChecksProps) => {
  const tell = useTell();
  const changes = findingsApart(before, after);
  const unknown = unknownApart(before, after);
  return (
    <section aria-labelledby={id} className="apart-checks">
      <h3 id={id}>
        {labels === undefined ? tell('Checks that change') : tell('Checks that differ')}
      </h3>
      {changes.length === 0 ? (
        <p className="quiet">{tell('None of the rules says anything else.')}</p>
      ) : (
        <ul className="finding-changes">
          {changes.map((change, index) => (
            <ChangeItem
              key={`${change.finding.code} ${change.is} ${index.toString()}`}
              change={change}
              house={house}
              labels={labels}
            />
          ))}
        </ul>
      )}
      <Unknown title={tell('Not known any more, and needed')} words={unknown.fresh} house={house} />
      <Unknown title={tell('Known now, or no longer needed')} words={unknown.gone} house={house} />
    </section>
  );
};

type UnknownProps = {
  readonly title: string;
  readonly words: readonly string[];
  readonly house: House;
};

const Unknown = ({ title, words, house }: UnknownProps) =>
  words.length === 0 ? null : (
    <>
      <h4>{title}</h4>
      <ul className="plain-list">
        {words.map((each) => (
          <li key={each}>{inVoice(house, each)}</li>
        ))}
      </ul>
    </>
  );

export const noPlanWords = ({ set, house }: Side): string | null =>
  set.plan.known || set.hang === null
    ? null
    : phrase(house, 'No arbor is worked out: {needs}.', {
        needs: set.plan.needs.map((each) => inVoice(house, each)).join('; '),
      });
