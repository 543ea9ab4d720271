/**
 * Somebody else has saved since: both versions against what both began from, which places both
 * changed, and a choice for each. Nothing is merged until a person has seen what would be saved.
 */
import { useId, useMemo, useState } from 'react';
import type { Side } from '#differences';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import type { JsonObject } from '../keeping/json.ts';
import type { Kept, Open } from '../keeping/kept.ts';
import { askRevision, type Stored } from '../keeping/server.ts';
import { useKeeper, useKeeperState } from '../keeping/use-keeper.ts';
import { useTell, useTellCount } from '../language/use-tell.ts';
import { useAsked } from './asked.ts';
import { type Choices, contestOf, isContested, type SaidPlace } from './contest.ts';
import { against } from './judged.ts';
import { Said } from './said.tsx';
import { useTradeVoice } from './voice.ts';

export const ContestView = ({ kept }: { readonly kept: Kept }) => {
  const tell = useTell();
  const state = useKeeperState();
  const { save, id } = kept;
  const began = save.is === 'conflict' ? save.began : 0;
  const asked = useAsked(`${id} ${began}`, () => askRevision(id, began));
  if (save.is !== 'conflict' || state.phase !== 'open') return null;
  if (asked.is === 'waiting') {
    return <p>{tell('Fetching revision {began}, from which both began …', { began })}</p>;
  }
  if (asked.is === 'failed') {
    return (
      <>
        <p>
          {tell(
            'Revision {began}, from which both began, was not fetched, so what differs cannot be ' +
              'shown yet. {title}',
            { began, title: asked.title },
          )}
        </p>
        <p className="buttons">
          <button type="button" onClick={asked.again}>
            {tell('Ask again')}
          </button>
        </p>
      </>
    );
  }
  return <Contested kept={kept} open={state} theirs={save.theirs} began={asked.value.document} />;
};

type ContestedProps = {
  readonly kept: Kept;
  readonly open: Open;
  readonly theirs: Stored;
  readonly began: JsonObject;
};

const NO_CHOICES: Choices = new Map();

const Contested = ({ kept, open, theirs, began }: ContestedProps) => {
  const tell = useTell();
  const [choices, setChoices] = useState(NO_CHOICES);
  const [first] = useState(theirs.revision);
  const voice = useTradeVoice(open, kept.document);
  const contest = useMemo(
    () => contestOf({ began, mine: kept.document, theirs: theirs.document }, choices, voice),
    [began, kept.document, theirs, choices, voice],
  );
  const { places } = contest;
  const isMarked = (line: Parameters<typeof isContested>[0]) => isContested(line, places);
  const choose = ({ place }: SaidPlace, side: Side): void =>
    setChoices(new Map([...choices, [place.key, { side, place }]]));
  return (
    <div className="contest">
      <div role="status">
        {theirs.revision === first ? null : (
          <p>
            {tell(
              'Revision {revision} has come from {savedBy} since you began to choose; what is ' +
                'shown is against that. A choice whose place it changed is open again.',
              { revision: theirs.revision, savedBy: theirs.savedBy },
            )}
          </p>
        )}
      </div>
      <div className="two-versions">
        <section aria-label={tell('What you changed')}>
          <h3>{tell('What you changed')}</h3>
          <Said groups={contest.mine} empty={tell('Nothing.')} isMarked={isMarked} />
        </section>
        <section aria-label={tell('What they changed')}>
          <h3>{tell('What {savedBy} changed', { savedBy: theirs.savedBy })}</h3>
          <Said groups={contest.theirs} empty={tell('Nothing.')} isMarked={isMarked} />
        </section>
      </div>
      <details className="by-place" open={places.length > 0}>
        <summary>
          <PlacesWords count={places.length} />
        </summary>
        <p className="quiet">{tell('What only one of you changed is taken from that one.')}</p>
        {places.map((said) => (
          <PlaceChoice
            key={said.place.key}
            said={said}
            theirName={theirs.savedBy}
            onChoose={(side) => choose(said, side)}
          />
        ))}
        <Result kept={kept} open={open} theirs={theirs} contest={contest} />
      </details>
    </div>
  );
};

const PlacesWords = ({ count }: { readonly count: number }) => {
  const tell = useTell();
  const tellCount = useTellCount();
  return count === 0
    ? tell('No place was changed by both: see them put together')
    : tellCount(count, [
        'Place by place: {count} place that both changed',
        'Place by place: {count} places that both changed',
      ]);
};

type PlaceProps = {
  readonly said: SaidPlace;
  readonly theirName: string;
  readonly onChoose: (side: Side) => void;
};

const PlaceChoice = ({ said, theirName, onChoose }: PlaceProps) => {
  const tell = useTell();
  const name = useId();
  const { heading, chosen } = said;
  const option = (side: Side, whose: string, lines: readonly string[]) => (
    <label>
      <input type="radio" name={name} checked={chosen === side} onChange={() => onChoose(side)} />
      <span>
        <b>{whose}</b>: {lines.join('; ')}
      </span>
    </label>
  );
  return (
    <fieldset className="place-choice">
      <legend>{heading}</legend>
      {option('mine', tell('mine'), said.mine)}
      {option('theirs', theirName, said.theirs)}
    </fieldset>
  );
};

type ResultProps = {
  readonly kept: Kept;
  readonly open: Open;
  readonly theirs: Stored;
  readonly contest: ReturnType<typeof contestOf>;
};

/** What the choices make, judged before it can be saved, and shown before it is. */
const Result = ({ kept, open, theirs, contest }: ResultProps) => {
  const tell = useTell();
  const tellCount = useTellCount();
  const keeper = useKeeper();
  const { result, places, change } = contest;
  const refusals = useMemo(
    () => (result === null ? [] : against(open, kept.kind, result)),
    [open, kept.kind, result],
  );
  if (result === null) {
    const left = places.filter(({ chosen }) => chosen === null).length;
    return (
      <p role="status">
        {tellCount(left, [
          '{count} place is still to be chosen.',
          '{count} places are still to be chosen.',
        ])}
      </p>
    );
  }
  if (refusals.length > 0) {
    return (
      <Notice degree="caution" title={tell('these two do not go together')} isNews>
        <p>
          {tell(
            'Nothing was saved. Choose otherwise in a place that is named, or mend your version:',
          )}
        </p>
        <RefusalsWithPlace refusals={refusals} />
      </Notice>
    );
  }
  return (
    <section className="put-together" aria-label={tell('What would be saved')}>
      <h3>
        {tell('What would be saved as revision {next}, against revision {revision}', {
          next: theirs.revision + 1,
          revision: theirs.revision,
        })}
      </h3>
      <Said groups={change} empty={tell('Nothing but theirs: no new revision is made.')} />
      <p className="buttons">
        <button type="button" onClick={() => keeper.settle(kept.id, result, theirs.revision)}>
          {tell('Save them put together')}
        </button>
        <span className="quiet">{tell('Undo brings your version back.')}</span>
      </p>
    </section>
  );
};
