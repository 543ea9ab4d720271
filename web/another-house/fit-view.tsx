/** A fit in full: piece by piece, the house as a whole, and the questions for it. */
import { useId, useState } from 'react';
import type { Finding } from '#findings';
import {
  type Differs,
  type Fit,
  groupedQuestions,
  type PieceFit,
  questionLetter,
  sayBar,
  sayChange,
  saySide,
} from '#fitting';
import type { House } from '#house';
import { inHouseWords, sayFinding, sayMeasure } from '#sheets';
import { Glyph } from '../drawing/glyph-view.tsx';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { PlannedFrame } from '../order/planned-frame.tsx';
import { useWork } from '../reckoning/use-work.ts';
import { sayWithheld } from '../which-set/place-words.ts';

type ViewProps = {
  readonly fit: Fit;
  readonly to: House;
  readonly title: string;
  readonly onMove: (from: string, to: string | null) => void;
  /** Null where nothing was moved by hand. */
  readonly onPropose: (() => void) | null;
};

const NOTE =
  'By the plan, with bricks chosen anew, pieces in the order in which they hang. Not reckoned: ' +
  'sightlines, keep-outs, swing. A show of this list is not cleared for work.';

/** Figures of the other house, in the units and words of whoever reads here. */
const useReader = (to: House): House => {
  const { house } = useWork();
  return { ...to, units: house.units, words: house.words };
};

const plural = (count: number, one: string, many: string): string =>
  `${count === 0 ? 'no' : count} ${count === 1 ? one : many}`;

const summary = ({ pieces, questions, fails }: Fit): string => {
  const hung = pieces.filter(({ to }) => to !== null);
  const left = pieces.length - hung.length;
  const isBad = ({ fails: own }: PieceFit): boolean => own.some(({ level }) => level === 'stop');
  const bad = hung.filter(isBad).length;
  return [
    `${hung.length} of ${pieces.length} pieces hang.`,
    left === 0 ? 'None is left out.' : `${left} ${left === 1 ? 'is' : 'are'} left out.`,
    `${plural(bad, 'piece no longer works', 'pieces no longer work')} as it is.`,
    `${plural(fails.length, 'thing', 'things')} of the house as a whole.`,
    `${plural(questions.length, 'question', 'questions')} for the other house.`,
  ].join(' ');
};

export const FitView = ({ fit, to, title, onMove, onPropose }: ViewProps) => {
  const reader = useReader(to);
  return (
    <PlannedFrame word="WHAT IF" title={title} note={NOTE}>
      <p role="status">
        <b>{summary(fit)}</b>
      </p>
      {fit.refusals.length === 0 ? null : (
        <Notice degree="caution" title="the other house does not read this show">
          <Refusals refusals={fit.refusals} />
        </Notice>
      )}
      {onPropose === null ? null : (
        <p className="buttons">
          <button type="button" onClick={onPropose}>
            Back to what was proposed
          </button>
        </p>
      )}
      <Pieces fit={fit} to={to} reader={reader} onMove={onMove} />
      <div className="fit-columns">
        <HouseDiffers differs={fit.differs} reader={reader} to={to} />
        <HouseFails fails={fit.fails} reader={reader} />
      </div>
      <Questions fit={fit} to={to} />
    </PlannedFrame>
  );
};

type PiecesProps = Pick<ViewProps, 'fit' | 'to' | 'onMove'> & { readonly reader: House };

const Pieces = ({ fit, to, reader, onMove }: PiecesProps) => {
  const { house } = useWork();
  const withheld = new Set(fit.withheld.map(({ set }) => set));
  const free = to.lineSets.map(({ id }) => id).filter((id) => !withheld.has(id));
  return (
    <section aria-labelledby="fit-pieces">
      <h3 id="fit-pieces">Piece by piece</h3>
      {fit.withheld.length === 0 ? null : (
        <p className="quiet">
          Not free there:{' '}
          {fit.withheld.map((each) => `${each.set}, ${sayWithheld(each)}`).join('; ')}.
        </p>
      )}
      <table className="plain fit-table folds-early">
        <thead>
          <tr>
            <th scope="col">piece, and its set in {house.name}</th>
            <th scope="col">set there</th>
            <th scope="col">from its place</th>
            <th scope="col">no longer works</th>
            <th scope="col">written otherwise, and what differs</th>
          </tr>
        </thead>
        <tbody>
          {fit.pieces.map((piece) => (
            <PieceRow key={piece.from} piece={piece} free={free} reader={reader} onMove={onMove} />
          ))}
        </tbody>
      </table>
    </section>
  );
};

type RowProps = {
  readonly piece: PieceFit;
  readonly free: readonly string[];
  readonly reader: House;
  readonly onMove: ViewProps['onMove'];
};

const THERE_M = 1e-3;

const shiftWords = ({ shiftM, to }: PieceFit, reader: House): string => {
  if (to === null) return '';
  if (shiftM === null) return 'not known';
  if (Math.abs(shiftM) < THERE_M) return 'there';
  const length = sayMeasure({ value: Math.abs(shiftM), kind: 'length' }, reader);
  return `${length} ${shiftM > 0 ? 'upstage' : 'downstage'}`;
};

const PieceRow = ({ piece, free, reader, onMove }: RowProps) => {
  const { from, name, to } = piece;
  return (
    <tr className={to === null ? 'left-out' : ''}>
      <th scope="row">
        {name}
        <small className="quiet">set {from}</small>
      </th>
      <td data-label="set there">
        <select
          aria-label={`Set there for ${name}`}
          value={to ?? ''}
          onChange={({ target }) => onMove(from, target.value === '' ? null : target.value)}
        >
          <option value="">nowhere</option>
          {free.map((id) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </td>
      <td data-label="from its place">{shiftWords(piece, reader)}</td>
      <td data-label="no longer works" className="whole">
        {to === null ? <LeftOut piece={piece} free={free} reader={reader} /> : null}
        <Fails fails={piece.fails} reader={reader} />
      </td>
      <td data-label="written otherwise" className="whole">
        <Otherwise piece={piece} reader={reader} />
      </td>
    </tr>
  );
};

const LeftOut = ({ piece: { bars }, free, reader }: Omit<RowProps, 'onMove'>) => {
  const barred = new Set(bars.flatMap(({ sets }) => sets));
  const rest = free.length - barred.size;
  return (
    <>
      <p className="signed caution-word">
        <Glyph name="caution" size={18} />
        hangs nowhere
      </p>
      <ul className="plain-list">
        {bars.map(({ bar, sets }) => (
          <li key={`${bar.is} ${sets.join(' ')}`}>
            {sets.length > 3 ? `${sets.length} sets` : `set ${sets.join(', ')}`}:{' '}
            {sayBar(bar, reader)}
          </li>
        ))}
        {rest > 0 ? <li>No room is left in depth between its neighbours.</li> : null}
      </ul>
    </>
  );
};

type FailsProps = { readonly fails: readonly Finding[]; readonly reader: House };

const GLYPHS = { stop: 'danger', caution: 'caution' } as const;

const Fails = ({ fails, reader }: FailsProps) =>
  fails.length === 0 ? null : (
    <ul className="finding-changes">
      {fails.map((finding, index) => (
        <li key={`${finding.code} ${index.toString()}`}>
          {finding.level === 'note' ? null : <Glyph name={GLYPHS[finding.level]} size={20} />}
          <span>
            {sayFinding(finding, reader).sentence} <span className="code">{finding.code}</span>
          </span>
        </li>
      ))}
    </ul>
  );

const Otherwise = ({ piece, reader }: Pick<RowProps, 'piece' | 'reader'>) => {
  const { changes, differs, to } = piece;
  if (to === null) return null;
  return (
    <details>
      <summary>
        {changes.length} written otherwise, {differs.length} differ
        <span className="only-said"> for {piece.name}</span>
      </summary>
      <ul className="plain-list">
        {changes.map((change) => {
          const words = sayChange(change, reader);
          return <li key={words}>{words}</li>;
        })}
      </ul>
      <DiffersTable differs={differs} reader={reader} caption={`Set ${piece.from} and set ${to}`} />
    </details>
  );
};

type DiffersProps = { readonly differs: readonly Differs[]; readonly reader: House };

const DiffersTable = ({ differs, reader, caption }: DiffersProps & { readonly caption: string }) =>
  differs.length === 0 ? null : (
    <table className="plain differs-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">what</th>
          <th scope="col">here</th>
          <th scope="col">there</th>
        </tr>
      </thead>
      <tbody>
        {differs.map(({ what, there, here }) => (
          <tr key={what}>
            <th scope="row">{inHouseWords(what, reader)}</th>
            <td>{saySide(there, reader)}</td>
            <td>{saySide(here, reader)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );

const HouseDiffers = ({ differs, reader, to }: DiffersProps & { readonly to: House }) => {
  const { house } = useWork();
  return (
    <section aria-labelledby="fit-differs">
      <h3 id="fit-differs">What differs in the house</h3>
      <DiffersTable differs={differs} reader={reader} caption={`${house.name} and ${to.name}`} />
    </section>
  );
};

const HouseFails = ({ fails, reader }: FailsProps) => (
  <section aria-labelledby="fit-fails">
    <h3 id="fit-fails">What no longer works in the house as a whole</h3>
    {fails.length === 0 ? (
      <p className="quiet">Nothing that the rules know of.</p>
    ) : (
      <Fails fails={fails} reader={reader} />
    )}
  </section>
);

const Questions = ({ fit, to }: Pick<ViewProps, 'fit' | 'to'>) => {
  const id = useId();
  const { show } = useWork();
  const [said, setSaid] = useState('');
  const groups = groupedQuestions(fit.questions, to);
  const letter = questionLetter(fit.questions, { show: show.name, house: to.name, reader: to });
  const copy = async (): Promise<void> => {
    const done = await navigator.clipboard.writeText(letter).then(
      () => true,
      () => false,
    );
    setSaid(
      done ? 'Copied as plain text.' : 'This browser did not let it be copied: mark the text.',
    );
  };
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>What to ask {to.name}</h3>
      {groups.length === 0 ? (
        <p className="quiet">Nothing is unknown of what this show takes there.</p>
      ) : (
        <>
          <p className="buttons">
            <button type="button" onClick={() => void copy()}>
              Copy the questions
            </button>
            <span role="status">{said}</span>
          </p>
          <div className="question-groups">
            {groups.map(({ of, lines }) => (
              <section key={of}>
                <h4>{of}</h4>
                <ul className="plain-list">
                  {lines.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              </section>
            ))}
          </div>
        </>
      )}
    </section>
  );
};
