/** One set as it is found: written down as a whole, with who looked and how it is known. */
import { useState } from 'react';
import { tradeWord } from '#drawings';
import { purchaseOf } from '#house';
import type { Refusal } from '#outcome';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { withFound } from '../editing/state-edits.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { at, isSame } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { draftOf, type FoundDraft, foundOf } from './found-draft.ts';
import { FoundFields } from './found-fields.tsx';
import { HeightNotes } from './height-notes.tsx';
import { PullTestForm } from './pull-test.tsx';
import { Restraints } from './restraints.tsx';
import { StackCount } from './stack-count.tsx';
import { useRecord, useWho } from './use-record.ts';
import { leftOf } from './walk.ts';

type SetProps = {
  readonly each: SetReckoning;
  readonly before: string | null;
  readonly after: string | null;
};

const found = (inside: string) => ({ kind: 'house', part: 'found', at: null, inside }) as const;

export const FoundSet = ({ each, before, after }: SetProps) => {
  const { house } = useWork();
  const left = leftOf(each.set);
  const hasArbor = purchaseOf(each.set.lineSet.suspension) !== null;
  const ways = (
    <p className="found-ways">
      <Link to={{ kind: 'house', part: 'found', at: null }}>The walk round</Link>
      {before === null ? null : <Link to={found(before)}>before: set {before}</Link>}
      {after === null ? null : <Link to={found(after)}>next: set {after}</Link>}
      <Link to={{ kind: 'set', set: each.id }}>set {each.id} as planned</Link>
    </p>
  );
  return (
    <section aria-labelledby="found-head">
      {ways}
      <h2 id="found-head">
        {tradeWord(house, 'set')} {each.id}, {each.set.hang?.name ?? 'empty by the plan'}
      </h2>
      <p className="quiet">
        {left.length === 0 ? 'Everything is written down.' : `Left to look at: ${left.join(', ')}.`}
      </p>
      <WriteDown each={each} after={after} hasArbor={hasArbor} />
      {hasArbor ? <PullTestForm each={each} /> : null}
      <Restraints id={each.id} />
      <HeightNotes each={each} />
      {ways}
    </section>
  );
};

type WriteProps = {
  readonly each: SetReckoning;
  readonly after: string | null;
  readonly hasArbor: boolean;
};

const missingOf = (draft: FoundDraft, by: string): readonly string[] => [
  ...(by.trim() === '' ? ['who looked'] : []),
  ...(draft.stack !== null && draft.basis === 'unknown' ? ['how it is known'] : []),
];

const WriteDown = ({ each, after, hasArbor }: WriteProps) => {
  const record = useRecord();
  const who = useWho();
  const written = at(record.document ?? undefined, ['sets', each.id]);
  const [typed, setTyped] = useState<FoundDraft | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [said, setSaid] = useState('');
  const draft = typed ?? draftOf(written);
  const type = (part: Partial<FoundDraft>): void => {
    setTyped({ ...draft, ...part });
    setRefusals([]);
    setSaid('');
  };
  const missing = missingOf(draft, who.by);
  const isTyped =
    typed !== null && !isSame({ ...typed } as never, { ...draftOf(written) } as never);
  const write = async (then: string | null): Promise<void> => {
    const looked = { at: record.now(), by: who.by.trim() };
    const edit = {
      write: (state: Parameters<typeof withFound>[0]) =>
        withFound(state, each.id, foundOf(draft, looked), looked),
      what: `set ${each.id} as found`,
    };
    const refused = await record.change(edit, looked);
    setRefusals(refused);
    if (refused.length > 0) return;
    setTyped(null);
    setSaid(`Set ${each.id} is written down.`);
    if (then !== null) go(found(then));
  };
  return (
    <form
      className="found-form"
      aria-label={`Set ${each.id} as found`}
      onSubmit={(event) => {
        event.preventDefault();
        if (missing.length === 0) void write(null);
      }}
    >
      {hasArbor ? (
        <StackCount
          stack={draft.stack}
          onCount={(stack) =>
            type({
              stack,
              ...(draft.basis === 'unknown' && stack !== null ? { basis: 'counted' } : {}),
            })
          }
        />
      ) : null}
      <FoundFields each={each} draft={draft} hasArbor={hasArbor} onType={type} />
      <div className="found-fields">
        <TextField label="Looked at by" value={who.by} hint="name or post" onType={who.type} />
        <TextField
          label="Second person, if any"
          value={draft.second}
          onType={(second) => type({ second })}
        />
      </div>
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title="not written down, nothing changed" isNews>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
      <p className="buttons">
        <button type="submit" disabled={missing.length > 0}>
          Write it down
        </button>
        {after === null ? null : (
          <button type="button" disabled={missing.length > 0} onClick={() => void write(after)}>
            Write it down and go on to set {after}
          </button>
        )}
        <span role="status">
          {said !== ''
            ? said
            : missing.length > 0
              ? `Still to say: ${missing.join(', ')}.`
              : isTyped
                ? 'Not written down yet.'
                : ''}
        </span>
      </p>
    </form>
  );
};
