/** A drill under way, as whoever learns sees it: what is told, what they saw, and what is next. */
import { useId, useState } from 'react';
import type { CrewTurn } from '#call';
import type { House } from '#house';
import type { Standing } from '#state';
import { postWords } from '../call-desk/desk-words.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { DrillEnded } from './drill-ended.tsx';
import { didWords, seenWords, turnWords } from './drill-words.ts';
import { type Begun, type DrillHere, useDrill } from './use-drill.ts';

type PartProps = { readonly begun: Begun; readonly here: DrillHere; readonly house: House };

const Stands = ({
  head,
  standing,
  begun,
  house,
}: {
  readonly head: string;
  readonly standing: Standing;
  readonly begun: Begun;
  readonly house: House;
}) => (
  <section className="drill-stands">
    <h3>{head}</h3>
    <ul>
      {seenWords(standing, house, begun.nameOf).map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  </section>
);

/** The second counts for themselves: what the record has is what they were told. */
const CountAsked = ({ turn, here }: { readonly turn: CrewTurn; readonly here: DrillHere }) => {
  const tell = useTell();
  const id = useId();
  const [typed, setTyped] = useState('');
  const plates = Number.parseInt(typed, 10);
  if (turn.does !== 'second' || turn.plates === null) return null;
  return (
    <form
      className="drill-count"
      onSubmit={(event) => {
        event.preventDefault();
        if (plates >= 0) here.act({ does: 'second', plates });
        setTyped('');
      }}
    >
      <label htmlFor={id}>{tell('Bricks on the arbor as you counted, pipe weight in it')}</label>
      <input
        id={id}
        inputMode="numeric"
        autoComplete="off"
        value={typed}
        onChange={({ target }) => setTyped(target.value.replace(/\D/g, ''))}
      />
      <button type="submit" className="button primary drill-next" disabled={typed === ''}>
        {tell('Give this count')}
      </button>
      <button type="button" className="button" onClick={here.asTold}>
        {tell('Give the count of the record, {plates}', { plates: turn.plates })}
      </button>
    </form>
  );
};

const Next = ({ begun, here, house }: PartProps) => {
  const tell = useTell();
  const { turn, isTrainee } = here.view;
  if (turn === null) return null;
  if (!isTrainee) {
    return (
      <>
        <p className="drill-turn">
          {tell('{post} is next.', { post: postWords(turn.post, house) })}
        </p>
        <button type="button" className="button primary drill-next" onClick={here.goOn}>
          {tell('Let the crew go on')}
        </button>
      </>
    );
  }
  const isCount = turn.does === 'second' && turn.plates !== null;
  return (
    <>
      <p className="drill-turn">
        {tell('Your turn, {post}:', { post: postWords(begun.trainee, house) })}{' '}
        <b>{turnWords(turn, house)}</b>
      </p>
      {isCount ? (
        <CountAsked turn={turn} here={here} />
      ) : (
        <button type="button" className="button primary drill-next" onClick={here.asTold}>
          {turnWords(turn, house)}
        </button>
      )}
    </>
  );
};

const Instead = ({ here }: { readonly here: DrillHere }) => {
  const tell = useTell();
  const { seen, stoppedForNothing } = here.view;
  return (
    <section className="drill-instead" aria-label={tell('Instead of going on')}>
      <button type="button" className="button" onClick={() => here.act({ does: 'look' })}>
        {tell('Go and look')}
      </button>
      <button type="button" className="button" onClick={() => here.act({ does: 'doubt' })}>
        {tell('Say that it is not known')}
      </button>
      {seen === null ? null : (
        <button type="button" className="button" onClick={() => here.act({ does: 'found' })}>
          {tell('Write down how I found it')}
        </button>
      )}
      <button type="button" className="drill-stop" onClick={() => here.act({ does: 'stop' })}>
        <b>{tell('STOP')}</b>
        <span>{tell('in this drill only: it tells nobody in the house')}</span>
      </button>
      <p role="status" className="quiet">
        {stoppedForNothing
          ? tell('Nothing was wrong, and the lead lifted it. Whoever is not sure says STOP.')
          : ''}
      </p>
    </section>
  );
};

const LINES_SHOWN = 8;

const Lines = ({ begun, here, house }: PartProps) => {
  const tell = useTell();
  const { lines } = here.view;
  const first = Math.max(0, lines.length - LINES_SHOWN);
  return (
    <section className="drill-lines">
      <h3>{tell('What was said last')}</h3>
      {lines.length === 0 ? <p className="quiet">{tell('Nothing yet.')}</p> : null}
      <ol start={first + 1}>
        {lines.slice(first).map(({ number, step, post, did }) => (
          <li key={number}>
            <b>{postWords(post, house)}</b> {didWords(did, house)}{' '}
            <span className="quiet">
              {tell('step {number}, {title}', {
                number: step + 1,
                title: begun.titles[step] ?? '',
              })}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
};

const SetHead = ({ begun, here }: Omit<PartProps, 'house'>) => {
  const tell = useTell();
  const { sets } = useWork();
  const { end } = here.view;
  const step = end?.step ?? here.view.step;
  const { set } = begun.start;
  const name = sets.find(({ id }) => id === set)?.set.hang?.name ?? '';
  const names = { number: step + 1, of: begun.titles.length };
  return (
    <header className="drill-set">
      <span className="drill-number">{set}</span>
      <div>
        <p>{name}</p>
        <p className="drill-step">
          {tell('Step {number} of {of}:', names)} <b>{begun.titles[step]}</b>
        </p>
      </div>
    </header>
  );
};

export const Practice = ({
  begun,
  onAnother,
}: {
  readonly begun: Begun;
  readonly onAnother: () => void;
}) => {
  const tell = useTell();
  const { house } = useWork();
  const here = useDrill(begun);
  const { now, seen, end } = here.view;
  const told = now.sets[begun.start.set]?.standing ?? null;
  return (
    <div className="drill-practice">
      <SetHead begun={begun} here={here} />
      <div className="drill-columns">
        <div>
          {end === null ? (
            <>
              <Next begun={begun} here={here} house={house} />
              <Instead here={here} />
            </>
          ) : (
            <DrillEnded begun={begun} view={here.view} onAnother={onAnother} />
          )}
        </div>
        <div>
          {told === null ? null : (
            <Stands
              head={tell('What the record of this drill says')}
              standing={told}
              begun={begun}
              house={house}
            />
          )}
          {seen === null ? null : (
            <Stands head={tell('What you saw')} standing={seen} begun={begun} house={house} />
          )}
          <Lines begun={begun} here={here} house={house} />
        </div>
      </div>
    </div>
  );
};
