/** A lock-out tag placed, and given back: whoever repaired it and whoever looked are two people. */
import { useState } from 'react';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { ChoiceField, TextField } from '../house-found/choice-field.tsx';
import { useTell } from '../language/use-tell.ts';
import { CallForm } from './call-form.tsx';
import type { SetOnDesk } from './set-on-desk.ts';

export const TagForms = ({ desk }: { readonly desk: SetOnDesk }) =>
  desk.set.tag === null ? <PlaceTag desk={desk} /> : <ReturnTag desk={desk} tag={desk.set.tag} />;

const SERVICES = [
  ['lockedOut', message('locked out: nothing is done with it')],
  ['paused', message('paused: it waits where it stands')],
] as const;

const PlaceTag = ({ desk: { id, isLive } }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const saying = useSay();
  const [number, setNumber] = useState('');
  const [reason, setReason] = useState('');
  const [service, setService] = useState<'lockedOut' | 'paused' | ''>('');
  const missing = [
    ...(number.trim() === '' ? [message('the number of the tag')] : []),
    ...(reason.trim() === '' ? [message('the reason')] : []),
    ...(service === '' ? [message('locked out or paused')] : []),
  ];
  const send = (): void => {
    if (service === '') return;
    const tag = { number: number.trim(), reason: reason.trim() };
    saying.say({ kind: 'tag placed', set: id, payload: { tag, service } });
    setNumber('');
    setReason('');
    setService('');
  };
  return (
    <CallForm
      title={tell('Tag on set {id}', { id })}
      about={tell('The tag on the lever and a person keep it out of use; this writes it down.')}
      missing={missing}
      saying={saying}
      isLive={isLive}
      button={tell('The tag is on it')}
      onSend={send}
    >
      <div className="found-fields">
        <TextField label={tell('Number of the tag')} value={number} onType={setNumber} />
        <TextField label={tell('Reason on the tag')} value={reason} onType={setReason} />
        <ChoiceField
          label={tell('What it means')}
          value={service}
          none={tell('not said')}
          choices={SERVICES.map(([each, words]) => [each, tell(words)] as const)}
          onChoose={(chosen) => setService(SERVICES.find(([each]) => each === chosen)?.[0] ?? '')}
        />
      </div>
    </CallForm>
  );
};

type ReturnProps = {
  readonly desk: SetOnDesk;
  readonly tag: { readonly number: string; readonly reason: string };
};

const ReturnTag = ({ desk: { id, isLive }, tag }: ReturnProps) => {
  const tell = useTell();
  const saying = useSay();
  const [number, setNumber] = useState('');
  const [repairedBy, setRepairedBy] = useState('');
  const [words, setWords] = useState('');
  const missing = [
    ...(number.trim() === '' ? [message('the number that stands on the tag')] : []),
    ...(repairedBy.trim() === '' ? [message('who repaired it')] : []),
    ...(words.trim() === '' ? [message('what was done and tried')] : []),
  ];
  const send = (): void => {
    const payload = { repairedBy: repairedBy.trim(), words: words.trim() };
    saying.say({ kind: 'tag returned', set: id, payload: { number: number.trim(), ...payload } });
  };
  return (
    <CallForm
      title={tell('Give the tag back: set {id}', { id })}
      about={tell(
        'Tag {number}: {reason}. You have looked at the repair and are not the one who made it. ' +
          'No tag is given back by time.',
        tag,
      )}
      missing={missing}
      saying={saying}
      isLive={isLive}
      button={tell('I have looked: the tag comes off')}
      onSend={send}
    >
      <div className="found-fields">
        <TextField label={tell('Number on the tag')} value={number} onType={setNumber} />
        <TextField label={tell('Repaired by')} value={repairedBy} onType={setRepairedBy} />
        <TextField label={tell('What was done and tried')} value={words} onType={setWords} />
      </div>
    </CallForm>
  );
};
