/** A set found again: looked at, counted and measured as a whole, with a second person by name. */
import { useState } from 'react';
import type { Refusal } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { ITEM_PHASES } from '#state';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { exampleIn } from '../house-entry/typed-figures.ts';
import { ChoiceField, TextField } from '../house-found/choice-field.tsx';
import { StackCount } from '../house-found/stack-count.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { CallForm } from './call-form.tsx';
import { closedNow, type FindDraft, foundOf, missingOf, NOTHING_FOUND } from './find-draft.ts';
import { RestraintRows } from './restraint-rows.tsx';
import type { SetOnDesk } from './set-on-desk.ts';

const PHASES = {
  away: message('not here'),
  beside: message('beside the set'),
  attachedSlack: message('attached, slack'),
  attachedResting: message('attached, resting on the deck'),
  flying: message('hangs in the air'),
  heldElsewhere: message('held by something else'),
} as const;

const BASES = [
  ['counted', message('counted')],
  ['weighed', message('weighed')],
  ['pullTested', message('pull-tested')],
] as const;

export const FindForm = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const saying = useSay();
  const { id, set, now, house, isLive, post, pieces } = desk;
  const [draft, setDraft] = useState<FindDraft>(NOTHING_FOUND);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const mark = decimalMarkOf({ units: house.units, ...voice });
  const asked = { items: pieces.map((piece) => piece.id), set, mark };
  const type = (part: Partial<FindDraft>): void => {
    setDraft({ ...draft, ...part });
    setRefusals([]);
  };
  const send = (): void => {
    const found = foundOf(draft, asked, closedNow(now, id));
    if (!found.ok) {
      setRefusals(found.error);
      return;
    }
    if (post === null) return;
    saying.say({ kind: 'set found', set: id, payload: { ...found.value, post } });
    setDraft(NOTHING_FOUND);
  };
  const missing = [
    ...(post === null ? [message('the post of this device')] : []),
    ...missingOf(draft, asked),
  ];
  return (
    <CallForm
      title={tell('Found: how set {id} stands now', { id })}
      about={tell(
        'Look, count and measure; enter what you see and nothing else. Nothing is filled in from ' +
          'before. A second person counts for themselves.',
      )}
      missing={missing}
      refusals={refusals}
      saying={saying}
      isLive={isLive}
      button={tell('Record how it was found')}
      onSend={send}
    >
      <StackCount stack={draft.stack} onCount={(stack) => type({ stack })} />
      <Where desk={desk} draft={draft} onType={type} />
      <Pieces desk={desk} draft={draft} onType={type} />
      <RestraintRows restraints={draft.restraints} onType={(restraints) => type({ restraints })} />
      <Known draft={draft} onType={type} />
      <Settles desk={desk} draft={draft} onType={type} />
    </CallForm>
  );
};

type PartProps = {
  readonly desk: SetOnDesk;
  readonly draft: FindDraft;
  readonly onType: (part: Partial<FindDraft>) => void;
};

const oneOf = <T extends string>(values: readonly T[], chosen: string): T | '' =>
  values.find((each) => each === chosen) ?? '';

const Where = ({ desk: { house, set }, draft, onType }: PartProps) => {
  const tell = useTell();
  const none = tell('not looked at');
  return (
    <div className="found-fields">
      <TextField
        label={tell('Height of the batten now')}
        value={draft.height}
        hint={tell('such as {example}', { example: exampleIn('length', house) })}
        onType={(height) => onType({ height })}
      />
      <ChoiceField
        label={tell('Rope lock')}
        value={draft.lock}
        none={none}
        choices={[
          // Of a lock and not of a zone, for which other languages have another word.
          ['closed', tell(' closed')],
          ['open', tell(' open')],
        ]}
        onChoose={(lock) => onType({ lock: oneOf(['closed', 'open'], lock) })}
      />
      <ChoiceField
        label={tell('Ring of the lock')}
        value={draft.ring}
        none={none}
        choices={[
          ['on', tell('on')],
          ['off', tell('off')],
        ]}
        onChoose={(ring) => onType({ ring: oneOf(['on', 'off'], ring) })}
      />
      <ChoiceField
        label={tell('Collar on the rods')}
        value={draft.collar}
        none={none}
        choices={[
          ['secured', tell('secured')],
          ['loose', tell('loose')],
        ]}
        onChoose={(collar) => onType({ collar: oneOf(['secured', 'loose'], collar) })}
      />
      {set.tag !== null ? null : (
        <ChoiceField
          label={tell('What carries it')}
          value={draft.service}
          none={none}
          choices={[
            ['in', tell('its arbor, in use')],
            ['deadHung', tell('held by steel')],
          ]}
          onChoose={(service) => onType({ service: oneOf(['in', 'deadHung'], service) })}
        />
      )}
    </div>
  );
};

const Pieces = ({ desk: { pieces }, draft, onType }: PartProps) => {
  const tell = useTell();
  const all = (phase: (typeof ITEM_PHASES)[number]) =>
    Object.fromEntries(pieces.map(({ id }) => [id, phase]));
  if (pieces.length === 0) {
    return (
      <p className="quiet">
        {tell('The show hangs nothing here. Where something hangs all the same, call the lead.')}
      </p>
    );
  }
  return (
    <fieldset className="call-part">
      <legend>{tell('What hangs')}</legend>
      <div className="found-fields">
        {pieces.map(({ id, name }) => (
          <ChoiceField
            key={id}
            label={name}
            value={draft.items[id] ?? ''}
            none={tell('not looked at')}
            choices={ITEM_PHASES.map((phase) => [phase, tell(PHASES[phase])] as const)}
            onChoose={(chosen) => {
              const phase = oneOf(ITEM_PHASES, chosen);
              const { [id]: _before, ...others } = draft.items;
              onType({ items: phase === '' ? others : { ...others, [id]: phase } });
            }}
          />
        ))}
      </div>
      <p className="buttons">
        <button type="button" onClick={() => onType({ items: all('flying') })}>
          {tell('All of it hangs in the air')}
        </button>
        <button type="button" onClick={() => onType({ items: all('away') })}>
          {tell('Nothing hangs')}
        </button>
      </p>
    </fieldset>
  );
};

const Known = ({ draft, onType }: Pick<PartProps, 'draft' | 'onType'>) => {
  const tell = useTell();
  return (
    <div className="found-fields">
      <ChoiceField
        label={tell('How all this is known')}
        value={draft.basis}
        none={tell('not said')}
        choices={BASES.map(([basis, words]) => [basis, tell(words)] as const)}
        onChoose={(basis) => onType({ basis: BASES.find(([each]) => each === basis)?.[0] ?? '' })}
      />
      <TextField
        label={tell('Second person who counted')}
        value={draft.second}
        hint={tell('name, or empty')}
        onType={(second) => onType({ second })}
      />
    </div>
  );
};

/** Notes of paper that this find answers: chosen by a person, none by itself. */
const Settles = ({ desk: { set }, draft, onType }: PartProps) => {
  const tell = useTell();
  if (set.notes.length === 0) return null;
  const toggle = (seq: number): void =>
    onType({
      settles: draft.settles.includes(seq)
        ? draft.settles.filter((each) => each !== seq)
        : [...draft.settles, seq],
    });
  return (
    <fieldset className="call-part">
      <legend>{tell('Notes of paper that this answers')}</legend>
      {set.notes.map((seq) => (
        <label key={seq} className="call-check">
          <input
            type="checkbox"
            checked={draft.settles.includes(seq)}
            onChange={() => toggle(seq)}
          />
          {tell('Note {seq}', { seq })}
        </label>
      ))}
    </fieldset>
  );
};
