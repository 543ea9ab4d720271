/** Line by line from stage right: pull, limit, what a turn does, strength over pull. */
import type { ReactNode } from 'react';
import type { LineState, SetStructure, StructureState } from '#assessment';
import type { Shared } from '#beam';
import { placeWords, tensionWords } from '#drawings';
import type { House, LineSet } from '#house';
import { basisWords, inHouseWords } from '#sheets';
import { Glyph } from '../drawing/glyph-view.tsx';
import { stepWords } from './line-words.ts';

type Props = {
  readonly structure: SetStructure;
  readonly state: StructureState;
  readonly lineSet: LineSet;
  readonly house: House;
  readonly stepM: number;
  readonly isNarrow: boolean;
};

type Cells = {
  readonly line: number;
  readonly place: string;
  readonly pull: ReactNode;
  readonly turn: string;
  readonly rigid: string;
  readonly holds: string;
};

const Pull = ({
  each,
  limitN,
  house,
}: {
  each: LineState;
  limitN: number | null;
  house: House;
}) => {
  if (each.slack) return <b className="slack-word">SLACK</b>;
  const doubt = each.uncertainty === null ? null : ` ± ${tensionWords(house, each.uncertainty)}`;
  return (
    <>
      <b>{tensionWords(house, each.tension)}</b>
      {doubt === null ? null : <small className="doubt">{doubt}</small>}
      {limitN !== null && each.tension > limitN ? (
        <span className="signed caution-word past">
          <Glyph name="caution" size={18} />
          past its limit
        </span>
      ) : null}
    </>
  );
};

/** What one step at its turnbuckle adds, while no other line goes slack or tight by it. */
const turnCell = ({ slack, perTrim }: LineState, house: House, stepM: number): string => {
  if (slack) return 'nothing until it is tight';
  const addsN = perTrim * stepM;
  const nearest = tensionWords(house, addsN, 'nearest');
  return nearest === tensionWords(house, 0)
    ? `adds under ${tensionWords(house, addsN)}`
    : `adds ${nearest}`;
};

const rigidCell = (shared: Shared | null, index: number, house: House): string => {
  if (shared === null) return 'no one answer';
  return shared.slack[index] === true ? 'slack' : tensionWords(house, shared.tensions[index] ?? 0);
};

/** Tenths downward: a margin never prints larger than it is. */
const timesWords = (factor: number): string => `${(Math.floor(factor * 10) / 10).toFixed(1)} times`;

const holdsCell = ({ strength, slack }: LineState): string => {
  if (slack) return 'carries nothing';
  if (!strength.known) return 'not known';
  return strength.value.factor === null ? 'carries nothing' : timesWords(strength.value.factor);
};

const cellsOf = ({ state, lineSet, house, stepM }: Props): readonly Cells[] => {
  const shared = 'unstable' in state.beam ? null : state.beam.rigid();
  const { lineLimit } = lineSet;
  return state.lines.map((each, index) => ({
    line: index + 1,
    place: placeWords(house, each.x),
    pull: <Pull each={each} limitN={lineLimit.known ? lineLimit.value : null} house={house} />,
    turn: turnCell(each, house, stepM),
    rigid: rigidCell(shared, index, house),
    holds: holdsCell(each),
  }));
};

export const LinesTable = (props: Props) => {
  const { state, lineSet, house, stepM, isNarrow } = props;
  if (state.lines.length === 0) return null;
  const cells = cellsOf(props);
  const { lineLimit } = lineSet;
  const pullHead = lineLimit.known
    ? `pull, ${tensionWords(house, lineLimit.value, 'down')} at most`
    : 'pull, limit not known';
  const table = { cells, step: stepWords(house, stepM), pullHead };
  return (
    <div className="lines-part">
      {isNarrow ? <ShortTable {...table} /> : <WideTable {...table} />}
      <LineNotes {...props} />
    </div>
  );
};

type TableProps = {
  readonly cells: readonly Cells[];
  readonly step: string;
  readonly pullHead: string;
};

const CAPTION = 'Lift lines, line 1 at stage right';

const WideTable = ({ cells, step, pullHead }: TableProps) => (
  <table className="plain lines-table">
    <caption>{CAPTION}</caption>
    <thead>
      <tr>
        <th scope="col">line</th>
        <th scope="col">from the centre</th>
        <th scope="col">{pullHead}</th>
        <th scope="col">{step} shorter</th>
        <th scope="col">if lines did not stretch</th>
        <th scope="col">its strength over its pull</th>
      </tr>
    </thead>
    <tbody>
      {cells.map(({ line, place, pull, turn, rigid, holds }) => (
        <tr key={line}>
          <th scope="row">line {line}</th>
          <td>{place}</td>
          <td>{pull}</td>
          <td>{turn}</td>
          <td>{rigid}</td>
          <td>{holds}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** A phone's three columns: the figure one looks for, and what belongs to it beneath. */
const ShortTable = ({ cells, step, pullHead }: TableProps) => (
  <table className="plain lines-table">
    <caption>{CAPTION}</caption>
    <thead>
      <tr>
        <th scope="col">line</th>
        <th scope="col">{pullHead}</th>
        <th scope="col">{step} shorter</th>
      </tr>
    </thead>
    <tbody>
      {cells.map(({ line, place, pull, turn, rigid, holds }) => (
        <tr key={line}>
          <th scope="row">
            line {line}
            <small>{place}</small>
          </th>
          <td>
            {pull}
            <small>{rigid} if lines did not stretch</small>
          </td>
          <td>
            {turn}
            <small>strength over pull: {holds}</small>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** Limits with their source, and what the figures rest on. */
const LineNotes = ({ structure, state, lineSet, house }: Props) => {
  const { lineLimit } = lineSet;
  const { lineDesignFactor } = house.rules;
  const limit = lineLimit.known
    ? `A line may carry ${tensionWords(house, lineLimit.value, 'down')} (${
        lineLimit.provenance.source ?? basisWords(lineLimit.provenance.basis)
      }).`
    : 'What a line may carry is not known.';
  const asked = lineDesignFactor.known
    ? `The house asks for ${lineDesignFactor.value} times its strength at least.`
    : 'What the house asks of strength over pull is not known.';
  const unknown = new Set(
    state.lines.flatMap(({ strength }) => (strength.known ? [] : strength.needs)),
  );
  const notes = [
    limit,
    asked,
    ...(unknown.size === 0 ? [] : [`For the strength is needed: ${[...unknown].join('; ')}.`]),
    ...(structure.trimsMeasured
      ? []
      : ['Nobody has measured how the lines are trimmed: they are reckoned all of true length.']),
    ...(structure.splicesKnown
      ? []
      : ['Joints of the pipe are not all known: each takes less bending than the pipe.']),
  ];
  return <p className="quiet">{inHouseWords(notes.join(' '), house)}</p>;
};
