/** Line by line from stage right: pull, limit, what a turn does, strength over pull. */
import type { ReactNode } from 'react';
import type { LineState, SetStructure, StructureState } from '#assessment';
import type { Shared } from '#beam';
import { placeWords, tensionWords } from '#drawings';
import type { House, LineSet } from '#house';
import { decimalMarkOf } from '#quantities';
import { basisWords, inHouseWords } from '#sheets';
import { message, phrase } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
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
  const tell = useTell();
  if (each.slack) return <b className="slack-word">{tell('SLACK')}</b>;
  const doubt = each.uncertainty === null ? null : ` ± ${tensionWords(house, each.uncertainty)}`;
  return (
    <>
      <b>{tensionWords(house, each.tension)}</b>
      {doubt === null ? null : <small className="doubt">{doubt}</small>}
      {limitN !== null && each.tension > limitN ? (
        <span className="signed caution-word past">
          <Glyph name="caution" size={18} />
          {tell('past its limit')}
        </span>
      ) : null}
    </>
  );
};

/** What one step at its turnbuckle adds, while no other line goes slack or tight by it. */
const turnCell = ({ slack, perTrim }: LineState, house: House, stepM: number): string => {
  if (slack) return phrase(house, 'nothing until it is tight');
  const addsN = perTrim * stepM;
  const nearest = tensionWords(house, addsN, 'nearest');
  return nearest === tensionWords(house, 0)
    ? phrase(house, 'adds under {tension}', { tension: tensionWords(house, addsN) })
    : phrase(house, 'adds {tension}', { tension: nearest });
};

const rigidCell = (shared: Shared | null, index: number, house: House): string => {
  if (shared === null) return phrase(house, 'no one answer');
  return shared.slack[index] === true
    ? phrase(house, 'slack')
    : tensionWords(house, shared.tensions[index] ?? 0);
};

/** Tenths downward: a margin never prints larger than it is. */
const timesWords = (factor: number, house: House): string =>
  phrase(house, '{times} times', {
    times: (Math.floor(factor * 10) / 10).toFixed(1).replace('.', decimalMarkOf(house)),
  });

const holdsCell = ({ strength, slack }: LineState, house: House): string => {
  if (slack) return phrase(house, 'carries nothing');
  if (!strength.known) return phrase(house, 'not known');
  const { factor } = strength.value;
  return factor === null ? phrase(house, 'carries nothing') : timesWords(factor, house);
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
    holds: holdsCell(each, house),
  }));
};

export const LinesTable = (props: Props) => {
  const { state, lineSet, house, stepM, isNarrow } = props;
  if (state.lines.length === 0) return null;
  const cells = cellsOf(props);
  const { lineLimit } = lineSet;
  const pullHead = lineLimit.known
    ? phrase(house, 'pull, {limit} at most', {
        limit: tensionWords(house, lineLimit.value, 'down'),
      })
    : phrase(house, 'pull, limit not known');
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

const CAPTION = message('Lift lines, line 1 at stage right');

const WideTable = ({ cells, step, pullHead }: TableProps) => {
  const tell = useTell();
  return (
    <table className="plain lines-table">
      <caption>{tell(CAPTION)}</caption>
      <thead>
        <tr>
          <th scope="col">{tell('line')}</th>
          <th scope="col">{tell('from the centre')}</th>
          <th scope="col">{pullHead}</th>
          <th scope="col">{tell('{length} shorter', { length: step })}</th>
          <th scope="col">{tell('if lines did not stretch')}</th>
          <th scope="col">{tell('its strength over its pull')}</th>
        </tr>
      </thead>
      <tbody>
        {cells.map(({ line, place, pull, turn, rigid, holds }) => (
          <tr key={line}>
            <th scope="row">{tell('line {line}', { line })}</th>
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
};

/** A phone's three columns: the figure one looks for, and what belongs to it beneath. */
const ShortTable = ({ cells, step, pullHead }: TableProps) => {
  const tell = useTell();
  return (
    <table className="plain lines-table">
      <caption>{tell(CAPTION)}</caption>
      <thead>
        <tr>
          <th scope="col">{tell('line')}</th>
          <th scope="col">{pullHead}</th>
          <th scope="col">{tell('{length} shorter', { length: step })}</th>
        </tr>
      </thead>
      <tbody>
        {cells.map(({ line, place, pull, turn, rigid, holds }) => (
          <tr key={line}>
            <th scope="row">
              {tell('line {line}', { line })}
              <small>{place}</small>
            </th>
            <td>
              {pull}
              <small>{tell('{rigid} if lines did not stretch', { rigid })}</small>
            </td>
            <td>
              {turn}
              <small>{tell('strength over pull: {holds}', { holds })}</small>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

/** Limits with their source, and what the figures rest on. */
const LineNotes = ({ structure, state, lineSet, house }: Props) => {
  const { lineLimit } = lineSet;
  const { lineDesignFactor } = house.rules;
  const limit = lineLimit.known
    ? phrase(house, 'A line may carry {tension} ({source}).', {
        tension: tensionWords(house, lineLimit.value, 'down'),
        source: lineLimit.provenance.source ?? basisWords(lineLimit.provenance.basis, house),
      })
    : phrase(house, 'What a line may carry is not known.');
  const asked = lineDesignFactor.known
    ? phrase(house, 'The house asks for {factor} times its strength at least.', {
        factor: `${lineDesignFactor.value}`.replace('.', decimalMarkOf(house)),
      })
    : phrase(house, 'What the house asks of strength over pull is not known.');
  const unknown = new Set(
    state.lines.flatMap(({ strength }) => (strength.known ? [] : strength.needs)),
  );
  const notes = [
    limit,
    asked,
    ...(unknown.size === 0
      ? []
      : [
          phrase(house, 'For the strength is needed: {needs}.', {
            needs: inHouseWords([...unknown].join('; '), house),
          }),
        ]),
    ...(structure.trimsMeasured
      ? []
      : [
          phrase(
            house,
            'Nobody has measured how the lines are trimmed: they are reckoned all of true length.',
          ),
        ]),
    ...(structure.splicesKnown
      ? []
      : [
          phrase(
            house,
            'Joints of the pipe are not all known: each takes less bending than the pipe.',
          ),
        ]),
  ];
  return <p className="quiet">{notes.join(' ')}</p>;
};
