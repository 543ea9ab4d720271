/** The two-way pull test of a set: both steady pulls at one height, and what they come to. */
import { useState } from 'react';
import type { House } from '#house';
import { ok, type Refusal, type Result } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { sayMeasure, sayMoment } from '#sheets';
import { phrase, told, type Voice } from '#texts';
import { type Looked, withFound } from '../editing/state-edits.ts';
import { readFigure } from '../house-entry/typed-figures.ts';
import { at, type Json, type JsonObject } from '../keeping/json.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { NotWritten } from './not-written.tsx';
import { missingPulls, NO_PULLS, PullFields, type Pulls } from './pull-fields.tsx';
import { useRecord, useWho } from './use-record.ts';

const missingOf = (pulls: Pulls, by: string, voice: Voice): readonly string[] => [
  ...missingPulls(pulls).map((part) => phrase(voice, part)),
  ...(by.trim() === '' ? [phrase(voice, 'who pulled')] : []),
];

/** As the document holds them; the first that reads two ways, where one does. */
const readPulls = (pulls: Pulls, voice: Voice, id: string): Result<Pulls, Refusal> => {
  const mark = decimalMarkOf({ units: 'metric', ...voice });
  const place = `sets.${id}.pullTest`;
  const out = readFigure('force', pulls.out, mark, `${place}.out`);
  if (!out.ok) return out;
  const inward = readFigure('force', pulls.in, mark, `${place}.in`);
  if (!inward.ok) return inward;
  const height = readFigure('length', pulls.height, mark, `${place}.height`);
  return height.ok ? ok({ out: out.value, in: inward.value, height: height.value }) : height;
};

/** A test says more than a count: the set is known by it, and by whom it was counted stays. */
const withTest = (state: JsonObject, id: string, pulls: Pulls, looked: Looked): JsonObject => {
  const second = at(state, ['sets', id, 'knowledge', 'second']);
  const pullTest: Json = {
    out: pulls.out.trim(),
    in: pulls.in.trim(),
    height: pulls.height.trim(),
    ...looked,
  };
  const knowledge: Json = {
    basis: 'pullTested',
    ...looked,
    ...(second === undefined ? {} : { second }),
  };
  return withFound(state, id, { pullTest, knowledge }, looked);
};

const usePulls = (id: string) => {
  const record = useRecord();
  const who = useWho();
  const [pulls, setPulls] = useState(NO_PULLS);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const voice = useVoice();
  const missing = missingOf(pulls, who.by, voice);
  const type = (part: Partial<Pulls>): void => {
    setPulls({ ...pulls, ...part });
    setRefusals([]);
  };
  const write = async (): Promise<void> => {
    if (missing.length > 0) return;
    const read = readPulls(pulls, voice, id);
    if (!read.ok) {
      setRefusals([read.error]);
      return;
    }
    const looked = { at: record.now(), by: who.by.trim() };
    const refused = await record.change(
      { write: (state) => withTest(state, id, read.value, looked), what: `pull test of set ${id}` },
      looked,
    );
    setRefusals(refused);
    if (refused.length === 0) setPulls(NO_PULLS);
  };
  return { pulls, who, refusals, missing, type, write };
};

export const PullTestForm = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const { house } = useWork();
  const { pulls, who, refusals, missing, type, write } = usePulls(each.id);
  return (
    <form
      className="found-form"
      aria-label={tell('Pull test of set {id}', { id: each.id })}
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <h3>{tell('Pull test, both ways')}</h3>
      <p className="quiet">
        {tell(
          'Steady pulls on the hand line with a gauge, at one height. A set that goes by itself ' +
            'has a pull below nothing: what holds it back, with a minus.',
        )}
      </p>
      <TestNow each={each} />
      <div className="found-fields">
        <PullFields house={house} pulls={pulls} onType={type} />
        <TextField
          label={tell('Pulled by')}
          value={who.by}
          hint={tell('name or post')}
          onType={who.type}
        />
      </div>
      <NotWritten refusals={refusals} />
      <p className="buttons">
        <button type="submit" disabled={missing.length > 0}>
          {tell('Write the pull test down')}
        </button>
        <span role="status">
          {missing.length === 0
            ? ''
            : tell('Still to say: {missing}.', { missing: missing.join(', ') })}
        </span>
      </p>
    </form>
  );
};

const pulledWords = ({ recorded }: SetReckoning['set'], house: House): string => {
  const { pull } = recorded;
  if (pull === null) return phrase(house, 'not tested');
  if (!pull.known)
    return phrase(house, 'not known: {needs}', { needs: told(house, pull.needs.join('; ')) });
  const { imbalance, friction } = pull.value;
  const side = sayMeasure({ value: imbalance, kind: 'imbalance' }, house);
  const size = sayMeasure({ value: friction, kind: 'force' }, house);
  return phrase(house, '{side}, friction {size}', { side, size });
};

/** The last test, and beside it what the count makes of the set. */
const TestNow = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const { house } = useWork();
  const { imbalance, state } = each.set.recorded;
  const counted = imbalance.known
    ? [...new Set([imbalance.value.low, imbalance.value.high])]
        .map((value) => sayMeasure({ value, kind: 'imbalance' }, house))
        .join(tell(' to '))
    : tell('not known: {needs}', { needs: told(house, imbalance.needs.join('; ')) });
  return (
    <dl className="found-facts">
      <div>
        <dt>{tell('by the pull test')}</dt>
        <dd>{pulledWords(each.set, house)}</dd>
      </div>
      <div>
        <dt>{tell('by what was counted')}</dt>
        <dd>{counted}</dd>
      </div>
      {state.pullTest === null ? null : (
        <div>
          <dt>{tell('tested')}</dt>
          <dd>
            {tell('{moment}, {by}, at {height}', {
              moment: sayMoment(state.pullTest.at, house),
              by: state.pullTest.by,
              height: sayMeasure({ value: state.pullTest.height, kind: 'length' }, house),
            })}
          </dd>
        </div>
      )}
    </dl>
  );
};
