/** One set as it is found: written down as a whole, with who looked and how it is known. */
import { useState } from 'react';
import { purchaseOf } from '#house';
import type { Refusal } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { phrase, type Voice } from '#texts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { withFound } from '../editing/state-edits.ts';
import { readFigures } from '../house-entry/typed-figures.ts';
import { at } from '../keeping/json.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { draftOf, type FoundDraft, foundOf, shownDraft } from './found-draft.ts';
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
  const tell = useTell();
  const { house } = useWork();
  const left = leftOf(each.set, house);
  const { id } = each;
  const hasArbor = purchaseOf(each.set.lineSet.suspension) !== null;
  const ways = (
    <p className="found-ways">
      <Link to={{ kind: 'house', part: 'found', at: null }}>{tell('The walk round')}</Link>
      {before === null ? null : (
        <Link to={foundAt(before)}>{tell('before: set {id}', { id: before })}</Link>
      )}
      {after === null ? null : (
        <Link to={foundAt(after)}>{tell('next: set {id}', { id: after })}</Link>
      )}
      <Link to={{ kind: 'set', set: each.id }}>{tell('set {id} as planned', { id })}</Link>
    </p>
  );
  return (
    <section aria-labelledby="found-head">
      {ways}
      <h2 id="found-head">
        {tell('set {id}, {name}', { id, name: each.set.hang?.name ?? tell('empty by the plan') })}
      </h2>
      <p className="quiet">
        {left.length === 0
          ? tell('Everything is written down.')
          : tell('Left to look at: {left}.', { left: left.join(', ') })}
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

const missingOf = (draft: FoundDraft, by: string, voice: Voice): readonly string[] => [
  ...(by.trim() === '' ? [phrase(voice, 'who looked')] : []),
  ...(draft.stack !== null && draft.basis === 'unknown' ? [phrase(voice, 'how it is known')] : []),
];

/** The form of the set: what is typed, what is missing, and writing it down as a whole. */
const useWriting = (id: string) => {
  const tell = useTell();
  const voice = useVoice();
  const mark = decimalMarkOf({ units: 'metric', ...voice });
  const record = useRecord();
  const who = useWho();
  const written = at(record.document ?? undefined, ['sets', id]);
  const [typed, setTyped] = useState<FoundDraft | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [said, setSaid] = useState('');
  const draft = typed ?? shownDraft(draftOf(written), mark);
  const missing = missingOf(draft, who.by, voice);
  const type = (part: Partial<FoundDraft>): void => {
    setTyped({ ...draft, ...part });
    setRefusals([]);
    setSaid('');
  };
  const write = async (then: string | null): Promise<void> => {
    if (missing.length > 0) return;
    const looked = { at: record.now(), by: who.by.trim() };
    const read = readFigures('length', [draft.height, draft.upTo], mark, `sets.${id}.height`);
    if (!read.ok) {
      setRefusals([read.error]);
      return;
    }
    const [height = '', upTo = ''] = read.value;
    const found = foundOf({ ...draft, height, upTo }, looked);
    const refused = await record.change(
      { write: (state) => withFound(state, id, found, looked), what: `set ${id} as found` },
      looked,
    );
    setRefusals(refused);
    if (refused.length > 0) return;
    setTyped(null);
    setSaid(tell('Set {id} is written down.', { id }));
    if (then !== null) go(foundAt(then));
  };
  const unsaid =
    missing.length > 0 ? tell('Still to say: {missing}.', { missing: missing.join(', ') }) : '';
  const words = said || unsaid || (typed === null ? '' : tell('Not written down yet.'));
  return { draft, who, refusals, words, isMissing: missing.length > 0, type, write };
};

/** Whoever counts plates has counted; the basis can be said otherwise. */
const counted = (stack: FoundDraft['stack'], basis: string): Partial<FoundDraft> =>
  basis === 'unknown' && stack !== null ? { stack, basis: 'counted' } : { stack };

const WriteDown = ({ each, after, hasArbor }: WriteProps) => {
  const tell = useTell();
  const { draft, who, refusals, words, isMissing, type, write } = useWriting(each.id);
  return (
    <form
      className="found-form"
      aria-label={tell('Set {id} as found', { id: each.id })}
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
        <TextField
          label={tell('Looked at by')}
          value={who.by}
          hint={tell('name or post')}
          onType={who.type}
        />
        <TextField
          label={tell('Second person, if any')}
          value={draft.second}
          onType={(second) => type({ second })}
        />
      </div>
      <NotWritten refusals={refusals} />
      <p className="buttons">
        <button type="submit" disabled={isMissing}>
          {tell('Write it down')}
        </button>
        {after === null ? null : (
          <button type="button" disabled={isMissing} onClick={() => void write(after)}>
            {tell('Write it down and go on to set {id}', { id: after })}
          </button>
        )}
        <span role="status">{words}</span>
      </p>
    </form>
  );
};
