/** Height, lock, service and what hangs of one set, as somebody saw them. */
import { tradeWord } from '#drawings';
import { KNOWLEDGE_BASES, SERVICES } from '#state';
import { exampleOf } from '../house-entry/form.ts';
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
  counted: 'counted',
  weighed: 'weighed',
  pullTested: 'pull-tested',
  carriedOver: 'carried over from an older record',
  unknown: 'unknown',
};

const SERVICE_WORDS: Readonly<Record<(typeof SERVICES)[number], string>> = {
  in: 'in use',
  paused: 'paused',
  lockedOut: 'locked out',
  deadHung: 'held by steel',
};

const pairs = <K extends string>(words: Readonly<Record<K, string>>, keys: readonly K[]) =>
  keys.map((key) => [key, words[key]] as const);

export const FoundFields = ({ each, draft, hasArbor, onType }: FieldsProps) => {
  const { house } = useWork();
  const batten = tradeWord(house, 'batten');
  const hint = `such as ${exampleOf('length', house.units)}`;
  return (
    <>
      <div className="found-fields">
        <TextField
          label={`Height of the ${batten} now`}
          value={draft.height}
          hint={hint}
          onType={(height) => onType({ height })}
        />
        <TextField
          label="or between that and"
          value={draft.upTo}
          hint="where it was not measured"
          onType={(upTo) => onType({ upTo })}
        />
        {hasArbor ? <LockFields draft={draft} onType={onType} /> : null}
      </div>
      <div className="found-fields">
        <ChoiceField
          label="In use"
          value={draft.service}
          choices={pairs(SERVICE_WORDS, SERVICES)}
          onChoose={(service) => onType({ service })}
        />
        {draft.service === 'lockedOut' || draft.tagNumber !== '' || draft.tagReason !== '' ? (
          <>
            <TextField
              label="Number of the tag"
              value={draft.tagNumber}
              onType={(tagNumber) => onType({ tagNumber })}
            />
            <TextField
              label="Reason on the tag"
              value={draft.tagReason}
              onType={(tagReason) => onType({ tagReason })}
            />
          </>
        ) : null}
        <ChoiceField
          label="How all this is known"
          value={draft.basis === 'unknown' ? '' : draft.basis}
          choices={pairs(
            BASIS_WORDS,
            KNOWLEDGE_BASES.filter((basis) => basis !== 'unknown'),
          )}
          onChoose={(basis) => onType({ basis: basis === '' ? 'unknown' : basis })}
        />
      </div>
      <Items each={each} draft={draft} onType={onType} />
    </>
  );
};

const LockFields = ({ draft, onType }: Pick<FieldsProps, 'draft' | 'onType'>) => (
  <>
    <ChoiceField
      label="Rope lock"
      value={draft.lock}
      choices={[
        ['closed', 'closed'],
        ['open', 'open'],
      ]}
      onChoose={(lock) => onType({ lock })}
    />
    <ChoiceField
      label="Ring of the lock"
      value={draft.ring}
      choices={[
        ['on', 'on'],
        ['off', 'off'],
      ]}
      onChoose={(ring) => onType({ ring })}
    />
    <ChoiceField
      label="Collar on the rods"
      value={draft.collar}
      choices={[
        ['secured', 'secured'],
        ['loose', 'loose'],
      ]}
      onChoose={(collar) => onType({ collar })}
    />
  </>
);

const PHASES = [
  ['away', 'not here'],
  ['beside', 'beside the set'],
  ['attachedSlack', 'attached, slack'],
  ['attachedResting', 'attached, resting on the deck'],
  ['flying', 'hangs in the air'],
  ['heldElsewhere', 'held by something else'],
] as const;

/** Which pieces of the plan hang there; that none does is known, that nobody looked is not. */
const Items = ({ each, draft, onType }: Pick<FieldsProps, 'each' | 'draft' | 'onType'>) => {
  const planned = each.set.hang?.items ?? [];
  const { items } = draft;
  const choose = (item: string, phase: string): void => {
    const { [item]: _before, ...others } = items ?? {};
    onType({ items: phase === '' ? others : { ...others, [item]: phase } });
  };
  const all = Object.fromEntries(planned.map(({ id }) => [id, 'flying']));
  return (
    <fieldset className="found-items">
      <legend>What hangs</legend>
      <p role="status" className="quiet">
        {items === null
          ? 'Nobody has looked.'
          : Object.keys(items).length === 0
            ? 'Nothing hangs.'
            : ''}
      </p>
      <div className="found-fields">
        {planned.map(({ id, name }) => (
          <ChoiceField
            key={id}
            label={name}
            value={items?.[id] ?? ''}
            choices={PHASES}
            none={items === null ? 'nobody looked' : 'not here'}
            onChoose={(phase) => choose(id, phase)}
          />
        ))}
      </div>
      <p className="buttons">
        {planned.length === 0 ? null : (
          <button type="button" onClick={() => onType({ items: all })}>
            All of it hangs in the air
          </button>
        )}
        <button type="button" onClick={() => onType({ items: {} })}>
          Nothing hangs
        </button>
        <button type="button" onClick={() => onType({ items: null })}>
          Nobody has looked
        </button>
      </p>
    </fieldset>
  );
};
