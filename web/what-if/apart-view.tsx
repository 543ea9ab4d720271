/** Two sets side by side, or one as it is and as it would be: drawings, figures, checks. */
import { useCallback, useMemo } from 'react';
import { balanceDrawing, stackDrawing, tradeWord } from '#drawings';
import type { Finding } from '#findings';
import type { House } from '#house';
import { inHouseWords } from '#sheets';
import { Glyph } from '../drawing/glyph-view.tsx';
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
  const { set, house } = other;
  const { set: besideSet, house: besideHouse } = one;
  const curve = useMemo(() => {
    const beside = { set: besideSet, house: besideHouse };
    const size = sizeFor([beside, { set, house }]);
    return (width: number) => balanceDrawing(set, house, { width, ...size, beside });
  }, [besideSet, besideHouse, set, house]);
  return (
    <div className="apart-drawings">
      <Measured title="Balance against height" className="curve" draw={curve}>
        <p className="quiet">
          Full line: {labels.other}. Thin dashed line: {labels.one}.
        </p>
      </Measured>
      <Stack side={one} title={`Stack, ${labels.one}`} />
      <Stack side={other} title={`Stack, ${labels.other}`} />
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

const Change = ({ words }: { readonly words: string }) =>
  words === '' ? <span className="quiet">the same</span> : <b>{words}</b>;

type TableProps = {
  readonly caption: string;
  readonly head: string;
  readonly labels: Labels;
  readonly rows: readonly SideRow[];
};

/** A phone reads each row as a small block: the label of a column stands in its cell there. */
const ApartTable = ({ caption, head, labels, rows }: TableProps) => (
  <table className="plain apart-table folds">
    <caption>{caption}</caption>
    <thead>
      <tr>
        <th scope="col">{head}</th>
        <th scope="col">{labels.one}</th>
        <th scope="col">{labels.other}</th>
        <th scope="col">difference</th>
      </tr>
    </thead>
    <tbody>
      {rows.map(({ what, before, after, change }) => (
        <tr key={what}>
          <th scope="row">{what}</th>
          <td data-label={labels.one}>{before}</td>
          <td data-label={labels.other}>{after}</td>
          <td data-label="difference" className="whole">
            <Change words={change} />
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

export const FiguresApart = ({
  one,
  other,
  labels,
  reader,
}: SidesProps & { readonly reader: House }) => {
  const rows = sideRows(one, other, reader);
  const lines = lineRows(one, other, reader);
  return (
    <div className="apart-figures">
      <ApartTable caption="In figures" head="what" labels={labels} rows={rows} />
      {lines === null ? null : (
        <ApartTable
          caption={inHouseWords(`Lift lines at ${lines.state}, line 1 at stage right`, reader)}
          head="line"
          labels={labels}
          rows={lines.rows.map(({ line, ...row }) => ({ what: `line ${line}`, ...row }))}
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
const comparedWord = (is: FindingChange['is'], { one, other }: Labels): string =>
  ({
    new: `Only ${other}`,
    gone: `Only ${one}`,
    worse: `More on ${other}`,
    better: `Less on ${other}`,
  })[is];

const ChangeItem = ({ change, house, labels }: ItemProps) => {
  const { finding, is } = change;
  const glyph = finding.level === 'note' || is === 'gone' ? null : GLYPHS[finding.level];
  const set = finding.at.set === undefined ? 'house' : `set ${finding.at.set}`;
  const word = labels === undefined ? `${changeWord(is)}, ${set}` : comparedWord(is, labels);
  return (
    <li className={`finding-change ${is}`}>
      {glyph === null ? null : <Glyph name={glyph} size={22} />}
      <span>
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
  const changes = findingsApart(before, after);
  const unknown = unknownApart(before, after);
  return (
    <section aria-labelledby={id} className="apart-checks">
      <h3 id={id}>{labels === undefined ? 'Checks that change' : 'Checks that differ'}</h3>
      {changes.length === 0 ? (
        <p className="quiet">None of the rules says anything else.</p>
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
      <Unknown title="Not known any more, and needed" words={unknown.fresh} house={house} />
      <Unknown title="Known now, or no longer needed" words={unknown.gone} house={house} />
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
          <li key={each}>{inHouseWords(each, house)}</li>
        ))}
      </ul>
    </>
  );

export const noPlanWords = ({ set, house }: Side): string | null =>
  set.plan.known || set.hang === null
    ? null
    : inHouseWords(
        `No ${tradeWord(house, 'arbor')} is worked out: ${set.plan.needs.join('; ')}.`,
        house,
      );
