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
  sayWhat,
} from '#fitting';
import type { House } from '#house';
import { levelWord, sayFinding, sayMeasure } from '#sheets';
import { message, phrase, phraseCount } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { FOLDED } from '../frame/folded-roles.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { useTell } from '../language/use-tell.ts';
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

const NOTE = message(
  'By the plan, with bricks chosen anew, pieces in the order in which they hang. Not reckoned: ' +
    'sightlines, keep-outs, swing. A show of this list is not cleared for work.',
);

/** Figures of the other house, in the units, words and language of whoever reads here. */
const useReader = (to: House): House => {
  const { house } = useWork();
  return { ...to, units: house.units, words: house.words, tongue: house.tongue };
};

const summary = ({ pieces, questions, fails }: Fit, reader: House): string => {
  const hung = pieces.filter(({ to }) => to !== null);
  const left = pieces.length - hung.length;
  const isBad = ({ fails: own }: PieceFit): boolean => own.some(({ level }) => level === 'stop');
  const bad = hung.filter(isBad).length;
  return [
    phrase(reader, '{count} of {all} pieces hang.', { count: hung.length, all: pieces.length }),
    left === 0
      ? phrase(reader, 'None is left out.')
      : phraseCount(reader, left, ['{count} is left out.', '{count} are left out.']),
    bad === 0
      ? phrase(reader, 'no pieces no longer work as it is.')
      : phraseCount(reader, bad, [
          '{count} piece no longer works as it is.',
          '{count} pieces no longer work as it is.',
        ]),
    fails.length === 0
      ? phrase(reader, 'no things of the house as a whole.')
      : phraseCount(reader, fails.length, [
          '{count} thing of the house as a whole.',
          '{count} things of the house as a whole.',
        ]),
    questions.length === 0
      ? phrase(reader, 'no questions for the other house.')
      : phraseCount(reader, questions.length, [
          '{count} question for the other house.',
          '{count} questions for the other house.',
        ]),
  ].join(' ');
};

export const FitView = ({ fit, to, title, onMove, onPropose }: ViewProps) => {
  const tell = useTell();
  const reader = useReader(to);
  return (
    <PlannedFrame word="WHAT IF" title={title} note={tell(NOTE)}>
      <p role="status">
        <b>{summary(fit, reader)}</b>
      </p>
      {fit.refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('the other house does not read this show')}>
          <Refusals refusals={fit.refusals} />
        </Notice>
      )}
      {onPropose === null ? null : (
        <p className="buttons">
          <button type="button" onClick={onPropose}>
            {tell('Back to what was proposed')}
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
  const tell = useTell();
  const { house } = useWork();
  const withheld = new Set(fit.withheld.map(({ set }) => set));
  const free = to.lineSets.map(({ id }) => id).filter((id) => !withheld.has(id));
  return (
    <section aria-labelledby="fit-pieces">
      <h3 id="fit-pieces">{tell('Piece by piece')}</h3>
      {fit.withheld.length === 0 ? null : (
        <p className="quiet">
          {tell('Not free there: {sets}.', {
            sets: fit.withheld
              .map((each) => `${each.set}, ${sayWithheld(each, reader)}`)
              .join('; '),
          })}
        </p>
      )}
      <table {...FOLDED.table} className="plain fit-table folds-early">
        <thead {...FOLDED.rows}>
          <tr {...FOLDED.row}>
            <th {...FOLDED.columnHead} scope="col">
              {tell('piece, and its set in {house}', { house: house.name })}
            </th>
            <th {...FOLDED.columnHead} scope="col">
              {tell('set there')}
            </th>
            <th {...FOLDED.columnHead} scope="col">
              {tell('from its place')}
            </th>
            <th {...FOLDED.columnHead} scope="col">
              {tell('no longer works')}
            </th>
            <th {...FOLDED.columnHead} scope="col">
              {tell('written otherwise, and what differs')}
            </th>
          </tr>
        </thead>
        <tbody {...FOLDED.rows}>
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
  if (shiftM === null) return phrase(reader, 'not known');
  if (Math.abs(shiftM) < THERE_M) return phrase(reader, 'there');
  const length = sayMeasure({ value: Math.abs(shiftM), kind: 'length' }, reader);
  return shiftM > 0
    ? phrase(reader, '{length} upstage', { length })
    : phrase(reader, '{length} downstage', { length });
};

const PieceRow = ({ piece, free, reader, onMove }: RowProps) => {
  const tell = useTell();
  const { from, name, to } = piece;
  return (
    <tr {...FOLDED.row} className={to === null ? 'left-out' : ''}>
      <th {...FOLDED.rowHead} scope="row">
        {name}
        <small className="quiet">{tell('set {id}', { id: from })}</small>
      </th>
      <td {...FOLDED.cell} data-label={tell('set there')}>
        <select
          aria-label={tell('Set there for {name}', { name })}
          value={to ?? ''}
          onChange={({ target }) => onMove(from, target.value === '' ? null : target.value)}
        >
          <option value="">{tell('nowhere')}</option>
          {free.map((id) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </td>
      <td {...FOLDED.cell} data-label={tell('from its place')}>
        {shiftWords(piece, reader)}
      </td>
      <td {...FOLDED.cell} data-label={tell('no longer works')} className="whole">
        {to === null ? <LeftOut piece={piece} free={free} reader={reader} /> : null}
        <Fails fails={piece.fails} reader={reader} />
      </td>
      <td {...FOLDED.cell} data-label={tell('written otherwise')} className="whole">
        <Otherwise piece={piece} reader={reader} />
      </td>
    </tr>
  );
};

const LeftOut = ({ piece: { bars }, free, reader }: Omit<RowProps, 'onMove'>) => {
  const tell = useTell();
  const barred = new Set(bars.flatMap(({ sets }) => sets));
  const rest = free.length - barred.size;
  return (
    <>
      <p className="signed caution-word">
        <Glyph name="caution" size={18} />
        {tell('hangs nowhere')}
      </p>
      <ul className="plain-list">
        {bars.map(({ bar, sets }) => (
          <li key={`${bar.is} ${sets.join(' ')}`}>
            {sets.length > 3
              ? tell('{count} sets: {why}', { count: sets.length, why: sayBar(bar, reader) })
              : tell('set {sets}: {why}', { sets: sets.join(', '), why: sayBar(bar, reader) })}
          </li>
        ))}
        {rest > 0 ? <li>{tell('No room is left in depth between its neighbours.')}</li> : null}
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
            {finding.level === 'note' ? null : <b>{levelWord(finding.level, reader)}: </b>}
            {sayFinding(finding, reader).sentence} <span className="code">{finding.code}</span>
          </span>
        </li>
      ))}
    </ul>
  );

const Otherwise = ({ piece, reader }: Pick<RowProps, 'piece' | 'reader'>) => {
  const tell = useTell();
  const { changes, differs, to } = piece;
  if (to === null) return null;
  return (
    <details>
      <summary>
        {tell('{changes} written otherwise, {differs} differ', {
          changes: changes.length,
          differs: differs.length,
        })}
        <span className="only-said">{tell(' for {name}', { name: piece.name })}</span>
      </summary>
      <ul className="plain-list">
        {changes.map((change) => {
          const words = sayChange(change, reader);
          return <li key={words}>{words}</li>;
        })}
      </ul>
      <DiffersTable
        differs={differs}
        reader={reader}
        caption={tell('Set {from} and set {to}', { from: piece.from, to })}
      />
    </details>
  );
};

type DiffersProps = { readonly differs: readonly Differs[]; readonly reader: House };

const DiffersTable = ({
  differs,
  reader,
  caption,
}: DiffersProps & { readonly caption: string }) => {
  const tell = useTell();
  return differs.length === 0 ? null : (
    <table className="plain differs-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{tell('what')}</th>
          <th scope="col">{tell('here')}</th>
          <th scope="col">{tell('there')}</th>
        </tr>
      </thead>
      <tbody>
        {differs.map(({ what, there, here }) => (
          <tr key={what}>
            <th scope="row">{sayWhat(what, reader)}</th>
            <td>{saySide(there, reader)}</td>
            <td>{saySide(here, reader)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

const HouseDiffers = ({ differs, reader, to }: DiffersProps & { readonly to: House }) => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <section aria-labelledby="fit-differs">
      <h3 id="fit-differs">{tell('What differs in the house')}</h3>
      <DiffersTable
        differs={differs}
        reader={reader}
        caption={tell('{house} and {other}', { house: house.name, other: to.name })}
      />
    </section>
  );
};

const HouseFails = ({ fails, reader }: FailsProps) => {
  const tell = useTell();
  return (
    <section aria-labelledby="fit-fails">
      <h3 id="fit-fails">{tell('What no longer works in the house as a whole')}</h3>
      {fails.length === 0 ? (
        <p className="quiet">{tell('Nothing that the rules know of.')}</p>
      ) : (
        <Fails fails={fails} reader={reader} />
      )}
    </section>
  );
};

const Questions = ({ fit, to }: Pick<ViewProps, 'fit' | 'to'>) => {
  const id = useId();
  const tell = useTell();
  const { show, house } = useWork();
  const [said, setSaid] = useState('');
  const reader: House = { ...to, tongue: house.tongue };
  const groups = groupedQuestions(fit.questions, reader);
  const letter = questionLetter(fit.questions, { show: show.name, house: to.name, reader });
  const copy = async (): Promise<void> => {
    const done = await navigator.clipboard.writeText(letter).then(
      () => true,
      () => false,
    );
    setSaid(
      done
        ? tell('Copied as plain text.')
        : tell('This browser did not let it be copied: mark the text.'),
    );
  };
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{tell('What to ask {house}', { house: to.name })}</h3>
      {groups.length === 0 ? (
        <p className="quiet">{tell('Nothing is unknown of what this show takes there.')}</p>
      ) : (
        <>
          <p className="buttons">
            <button type="button" onClick={() => void copy()}>
              {tell('Copy the questions')}
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
