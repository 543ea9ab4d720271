/** The two-way pull test of a set: both steady pulls at one height, and what they come to. */
import { useState } from 'react';
import { tradeWord } from '#drawings';
import type { Refusal } from '#outcome';
import { sayMeasure, sayMoment } from '#sheets';
import { withFound } from '../editing/state-edits.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { exampleOf } from '../house-entry/form.ts';
import { at, type Json, type JsonObject } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { useRecord, useWho } from './use-record.ts';

type Pulls = { readonly out: string; readonly in: string; readonly height: string };

const EMPTY: Pulls = { out: '', in: '', height: '' };

const missingOf = (pulls: Pulls, by: string): readonly string[] => [
  ...(pulls.out.trim() === '' ? ['the pull out'] : []),
  ...(pulls.in.trim() === '' ? ['the pull in'] : []),
  ...(pulls.height.trim() === '' ? ['the height'] : []),
  ...(by.trim() === '' ? ['who pulled'] : []),
];

export const PullTestForm = ({ each }: { readonly each: SetReckoning }) => {
  const { house } = useWork();
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
    const looked = { at: record.now(), by: who.by.trim() };
    const test: Json = {
      out: pulls.out.trim(),
      in: pulls.in.trim(),
      height: pulls.height.trim(),
      ...looked,
    };
    const knowledge = (state: JsonObject): Json => {
      const second = at(state, ['sets', each.id, 'knowledge', 'second']);
      return { basis: 'pullTested', ...looked, ...(second === undefined ? {} : { second }) };
    };
    const edit = {
      write: (state: JsonObject) =>
        withFound(state, each.id, { pullTest: test, knowledge: knowledge(state) }, looked),
      what: `pull test of set ${each.id}`,
    };
    const refused = await record.change(edit, looked);
    setRefusals(refused);
    if (refused.length === 0) setPulls(EMPTY);
  };
  const force = `such as ${exampleOf('force', house.units)}`;
  return (
    <form
      className="found-form"
      aria-label={`Pull test of set ${each.id}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (missing.length === 0) void write();
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
          hint={`such as ${exampleOf('length', house.units)}`}
          onType={(height) => type({ height })}
        />
        <TextField label="Pulled by" value={who.by} hint="name or post" onType={who.type} />
      </div>
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title="not written down, nothing changed" isNews>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
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

/** The last test, and beside it what the count makes of the set. */
const TestNow = ({ each }: { readonly each: SetReckoning }) => {
  const { house } = useWork();
  const { pull, imbalance, state } = each.set.recorded;
  const counted = imbalance.known
    ? [...new Set([imbalance.value.low, imbalance.value.high])]
        .map((value) => sayMeasure({ value, kind: 'imbalance' }, house))
        .join(' to ')
    : `not known: ${imbalance.needs.join('; ')}`;
  return (
    <dl className="found-facts">
      <div>
        <dt>by the pull test</dt>
        <dd>
          {pull === null
            ? 'not tested'
            : pull.known
              ? `${sayMeasure({ value: pull.value.imbalance, kind: 'imbalance' }, house)}, friction ${sayMeasure({ value: pull.value.friction, kind: 'force' }, house)}`
              : `not known: ${pull.needs.join('; ')}`}
        </dd>
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
