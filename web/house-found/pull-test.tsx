/** The two-way pull test of a set: both steady pulls at one height, and what they come to. */
import { useState } from 'react';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { sayMeasure, sayMoment } from '#sheets';
import { type Looked, withFound } from '../editing/state-edits.ts';
import { exampleOf } from '../house-entry/form.ts';
import { at, type Json, type JsonObject } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { NotWritten } from './not-written.tsx';
import { useRecord, useWho } from './use-record.ts';

type Pulls = { readonly out: string; readonly in: string; readonly height: string };

const EMPTY: Pulls = { out: '', in: '', height: '' };

const missingOf = (pulls: Pulls, by: string): readonly string[] => [
  ...(pulls.out.trim() === '' ? ['the pull out'] : []),
  ...(pulls.in.trim() === '' ? ['the pull in'] : []),
  ...(pulls.height.trim() === '' ? ['the height'] : []),
  ...(by.trim() === '' ? ['who pulled'] : []),
];

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
  const [pulls, setPulls] = useState(EMPTY);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const missing = missingOf(pulls, who.by);
  const type = (part: Partial<Pulls>): void => {
    setPulls({ ...pulls, ...part });
    setRefusals([]);
  };
  const write = async (): Promise<void> => {
    if (missing.length > 0) return;
    const looked = { at: record.now(), by: who.by.trim() };
    const refused = await record.change(
      { write: (state) => withTest(state, id, pulls, looked), what: `pull test of set ${id}` },
      looked,
    );
    setRefusals(refused);
    if (refused.length === 0) setPulls(EMPTY);
  };
  return { pulls, who, refusals, missing, type, write };
};

export const PullTestForm = ({ each }: { readonly each: SetReckoning }) => {
  const { house } = useWork();
  const { pulls, who, refusals, missing, type, write } = usePulls(each.id);
  const force = `such as ${exampleOf('force', house.units)}`;
  const length = `such as ${exampleOf('length', house.units)}`;
  return (
    <form
      className="found-form"
      aria-label={`Pull test of set ${each.id}`}
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <h3>Pull test, both ways</h3>
      <p className="quiet">
        Steady pulls on the {tradeWord(house, 'handLine')} with a gauge, at one height. A set that
        goes by itself has a pull below nothing: what holds it back, with a minus.
      </p>
      <TestNow each={each} />
      <div className="found-fields">
        <TextField
          label="Pull that takes it out"
          value={pulls.out}
          hint={force}
          onType={(out) => type({ out })}
        />
        <TextField
          label="Pull that takes it in"
          value={pulls.in}
          hint={force}
          onType={(inward) => type({ in: inward })}
        />
        <TextField
          label={`With the ${tradeWord(house, 'batten')} at`}
          value={pulls.height}
          hint={length}
          onType={(height) => type({ height })}
        />
        <TextField label="Pulled by" value={who.by} hint="name or post" onType={who.type} />
      </div>
      <NotWritten refusals={refusals} />
      <p className="buttons">
        <button type="submit" disabled={missing.length > 0}>
          Write the pull test down
        </button>
        <span role="status">
          {missing.length === 0 ? '' : `Still to say: ${missing.join(', ')}.`}
        </span>
      </p>
    </form>
  );
};

const pulledWords = ({ recorded }: SetReckoning['set'], house: House): string => {
  const { pull } = recorded;
  if (pull === null) return 'not tested';
  if (!pull.known) return `not known: ${pull.needs.join('; ')}`;
  const { imbalance, friction } = pull.value;
  const side = sayMeasure({ value: imbalance, kind: 'imbalance' }, house);
  return `${side}, friction ${sayMeasure({ value: friction, kind: 'force' }, house)}`;
};

/** The last test, and beside it what the count makes of the set. */
const TestNow = ({ each }: { readonly each: SetReckoning }) => {
  const { house } = useWork();
  const { imbalance, state } = each.set.recorded;
  const counted = imbalance.known
    ? [...new Set([imbalance.value.low, imbalance.value.high])]
        .map((value) => sayMeasure({ value, kind: 'imbalance' }, house))
        .join(' to ')
    : `not known: ${imbalance.needs.join('; ')}`;
  return (
    <dl className="found-facts">
      <div>
        <dt>by the pull test</dt>
        <dd>{pulledWords(each.set, house)}</dd>
      </div>
      <div>
        <dt>by what was counted</dt>
        <dd>{counted}</dd>
      </div>
      {state.pullTest === null ? null : (
        <div>
          <dt>tested</dt>
          <dd>
            {sayMoment(state.pullTest.at)}, {state.pullTest.by}, at{' '}
            {sayMeasure({ value: state.pullTest.height, kind: 'length' }, house)}
          </dd>
        </div>
      )}
    </dl>
  );
};
