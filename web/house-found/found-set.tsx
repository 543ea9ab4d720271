/** One set as it is found: written down as a whole, with who looked and how it is known. */
import { useState } from 'react';
import { tradeWord } from '#drawings';
import { purchaseOf } from '#house';
import type { Refusal } from '#outcome';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { withFound } from '../editing/state-edits.ts';
import { at } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { draftOf, type FoundDraft, foundOf } from './found-draft.ts';
import { FoundFields } from './found-fields.tsx';
import { HeightNotes } from './height-notes.tsx';
import { NotWritten } from './not-written.tsx';
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

const foundAt = (inside: string) => ({ kind: 'house', part: 'found', at: null, inside }) as const;

export const FoundSet = ({ each, before, after }: SetProps) => {
  const { house } = useWork();
  const left = leftOf(each.set);
  const hasArbor = purchaseOf(each.set.lineSet.suspension) !== null;
  const ways = (
    <p className="found-ways">
      <Link to={{ kind: 'house', part: 'found', at: null }}>The walk round</Link>
      {before === null ? null : <Link to={foundAt(before)}>before: set {before}</Link>}
      {after === null ? null : <Link to={foundAt(after)}>next: set {after}</Link>}
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

/** The form of the set: what is typed, what is missing, and writing it down as a whole. */
const useWriting = (id: string) => {
  const record = useRecord();
  const who = useWho();
  const written = at(record.document ?? undefined, ['sets', id]);
  const [typed, setTyped] = useState<FoundDraft | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [said, setSaid] = useState('');
  const draft = typed ?? draftOf(written);
  const missing = missingOf(draft, who.by);
  const type = (part: Partial<FoundDraft>): void => {
    setTyped({ ...draft, ...part });
    setRefusals([]);
    setSaid('');
  };
  const write = async (then: string | null): Promise<void> => {
    if (missing.length > 0) return;
    const looked = { at: record.now(), by: who.by.trim() };
    const found = foundOf(draft, looked);
    const refused = await record.change(
      { write: (state) => withFound(state, id, found, looked), what: `set ${id} as found` },
      looked,
    );
    setRefusals(refused);
    if (refused.length > 0) return;
    setTyped(null);
    setSaid(`Set ${id} is written down.`);
    if (then !== null) go(foundAt(then));
  };
  const unsaid = missing.length > 0 ? `Still to say: ${missing.join(', ')}.` : '';
  const words = said || unsaid || (typed === null ? '' : 'Not written down yet.');
  return { draft, who, refusals, words, isMissing: missing.length > 0, type, write };
};

/** Whoever counts plates has counted; the basis can be said otherwise. */
const counted = (stack: FoundDraft['stack'], basis: string): Partial<FoundDraft> =>
  basis === 'unknown' && stack !== null ? { stack, basis: 'counted' } : { stack };

const WriteDown = ({ each, after, hasArbor }: WriteProps) => {
  const { draft, who, refusals, words, isMissing, type, write } = useWriting(each.id);
  return (
    <form
      className="found-form"
      aria-label={`Set ${each.id} as found`}
      onSubmit={(event) => {
        event.preventDefault();
        void write(null);
      }}
    >
      {hasArbor ? (
        <StackCount stack={draft.stack} onCount={(stack) => type(counted(stack, draft.basis))} />
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
      <NotWritten refusals={refusals} />
      <p className="buttons">
        <button type="submit" disabled={isMissing}>
          Write it down
        </button>
        {after === null ? null : (
          <button type="button" disabled={isMissing} onClick={() => void write(after)}>
            Write it down and go on to set {after}
          </button>
        )}
        <span role="status">{words}</span>
      </p>
    </form>
  );
};
