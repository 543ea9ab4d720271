/** Height, lock, service and what hangs of one set, as somebody saw them. */
import { KNOWLEDGE_BASES, SERVICES } from '#state';
import { message, phrase, type Voice } from '#texts';
import { exampleIn } from '../house-entry/typed-figures.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ChoiceField, TextField } from './choice-field.tsx';
import type { FoundDraft } from './found-draft.ts';

type FieldsProps = {
  readonly each: SetReckoning;
  readonly draft: FoundDraft;
  readonly hasArbor: boolean;
  readonly onType: (part: Partial<FoundDraft>) => void;
};

const BASIS_WORDS: Readonly<Record<(typeof KNOWLEDGE_BASES)[number], string>> = {
  counted: message('counted'),
  weighed: message('weighed'),
  pullTested: message('pull-tested'),
  carriedOver: message('carried over from an older record'),
  unknown: message('unknown'),
};

const SERVICE_WORDS: Readonly<Record<(typeof SERVICES)[number], string>> = {
  in: message('in use'),
  paused: message('paused'),
  lockedOut: message('locked out'),
  deadHung: message('held by steel'),
};

const pairs = <K extends string>(
  words: Readonly<Record<K, string>>,
  keys: readonly K[],
  voice: Voice,
) => keys.map((key) => [key, phrase(voice, words[key])] as const);

export const FoundFields = ({ each, draft, hasArbor, onType }: FieldsProps) => {
  const tell = useTell();
  const { house } = useWork();
  const hint = tell('such as {example}', { example: exampleIn('length', house) });
  return (
    <>
      <div className="found-fields">
        <TextField
          label={tell('Height of the batten now')}
          value={draft.height}
          hint={hint}
          onType={(height) => onType({ height })}
        />
        <TextField
          label={tell('or between that and')}
          value={draft.upTo}
          hint={tell('where it was not measured')}
          onType={(upTo) => onType({ upTo })}
        />
        {hasArbor ? <LockFields draft={draft} onType={onType} /> : null}
      </div>
      <div className="found-fields">
        <ChoiceField
          label={tell('In use')}
          value={draft.service}
          choices={pairs(SERVICE_WORDS, SERVICES, house)}
          onChoose={(service) => onType({ service })}
        />
        {draft.service === 'lockedOut' || draft.tagNumber !== '' || draft.tagReason !== '' ? (
          <>
            <TextField
              label={tell('Number of the tag')}
              value={draft.tagNumber}
              onType={(tagNumber) => onType({ tagNumber })}
            />
            <TextField
              label={tell('Reason on the tag')}
              value={draft.tagReason}
              onType={(tagReason) => onType({ tagReason })}
            />
          </>
        ) : null}
        <ChoiceField
          label={tell('How all this is known')}
          value={draft.basis === 'unknown' ? '' : draft.basis}
          choices={pairs(
            BASIS_WORDS,
            KNOWLEDGE_BASES.filter((basis) => basis !== 'unknown'),
            house,
          )}
          onChoose={(basis) => onType({ basis: basis === '' ? 'unknown' : basis })}
        />
      </div>
      <Items each={each} draft={draft} onType={onType} />
    </>
  );
};

const LockFields = ({ draft, onType }: Pick<FieldsProps, 'draft' | 'onType'>) => {
  const tell = useTell();
  return (
    <>
      <ChoiceField
        label={tell('Rope lock')}
        value={draft.lock}
        choices={[
          // Of a lock and not of a zone, for which other languages have another word.
          ['closed', tell(' closed')],
          ['open', tell(' open')],
        ]}
        onChoose={(lock) => onType({ lock })}
      />
      <ChoiceField
        label={tell('Ring of the lock')}
        value={draft.ring}
        choices={[
          ['on', tell('on')],
          ['off', tell('off')],
        ]}
        onChoose={(ring) => onType({ ring })}
      />
      <ChoiceField
        label={tell('Collar on the rods')}
        value={draft.collar}
        choices={[
          ['secured', tell('secured')],
          ['loose', tell('loose')],
        ]}
        onChoose={(collar) => onType({ collar })}
      />
    </>
  );
};

const PHASES = [
  ['away', message('not here')],
  ['beside', message('beside the set')],
  ['attachedSlack', message('attached, slack')],
  ['attachedResting', message('attached, resting on the deck')],
  ['flying', message('hangs in the air')],
  ['heldElsewhere', message('held by something else')],
] as const;

/** Which pieces of the plan hang there; that none does is known, that nobody looked is not. */
const Items = ({ each, draft, onType }: Pick<FieldsProps, 'each' | 'draft' | 'onType'>) => {
  const tell = useTell();
  const voice = useVoice();
  const phases = PHASES.map(([phase, words]) => [phase, phrase(voice, words)] as const);
  const planned = each.set.hang?.items ?? [];
  const { items } = draft;
  const choose = (item: string, phase: string): void => {
    const { [item]: _before, ...others } = items ?? {};
    onType({ items: phase === '' ? others : { ...others, [item]: phase } });
  };
  const all = Object.fromEntries(planned.map(({ id }) => [id, 'flying']));
  return (
    <fieldset className="found-items">
      <legend>{tell('What hangs')}</legend>
      <p role="status" className="quiet">
        {items === null
          ? tell('Nobody has looked.')
          : Object.keys(items).length === 0
            ? tell('Nothing hangs.')
            : ''}
      </p>
      <div className="found-fields">
        {planned.map(({ id, name }) => (
          <ChoiceField
            key={id}
            label={name}
            value={items?.[id] ?? ''}
            choices={phases}
            none={items === null ? tell('nobody looked') : tell('not here')}
            onChoose={(phase) => choose(id, phase)}
          />
        ))}
      </div>
      <p className="buttons">
        {planned.length === 0 ? null : (
          <button type="button" onClick={() => onType({ items: all })}>
            {tell('All of it hangs in the air')}
          </button>
        )}
        <button type="button" onClick={() => onType({ items: {} })}>
          {tell('Nothing hangs')}
        </button>
        <button type="button" onClick={() => onType({ items: null })}>
          {tell('Nobody has looked')}
        </button>
      </p>
    </fieldset>
  );
};
