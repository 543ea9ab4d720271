/**
 * A sign-off of the balance card of a set, as it stands on this screen: what was shown goes in as
 * its hash, with the last event that it rests on. It is never queued, and void by rule.
 */
import { useState } from 'react';
import { sha256OfValue } from '#events';
import { sheetOf } from '#sheets';
import { keeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { SAID_ABOVE } from '../self-check/screens.ts';
import { useOutcomeWords } from './note-form.tsx';
import { sayServerTime } from './say-standing.ts';
import type { SaidHere } from './server.ts';
import { live, useLive } from './use-live.ts';

/** Without the time of printing and who prints: the same figures have the same hash. */
const STAMP = { revision: '', printedAt: '', printedBy: '' };

const shownHash = (work: Work, set: string): string | null => {
  const { house, show, state, assessment, findings } = work;
  const context = { house, show, state, assessment, findings, stamp: STAMP, selfCheck: SAID_ABOVE };
  const card = sheetOf(context, `balance-card/${set}`);
  if (card === undefined) return null;
  // As JSON has it, which is what a hash of a value is over.
  return sha256OfValue(JSON.parse(JSON.stringify({ set, blocks: card.blocks })));
};

const documentsOf = ({ kept: { house, show, state } }: Work) =>
  [house, show, state].filter((each) => each !== null);

/** Whether the figures on this screen come from what the server has, to the last revision. */
const isAsOnServer = (work: Work): boolean => {
  const open = keeper.state();
  if (open.phase !== 'open' || !live.isSettled()) return false;
  return documentsOf(work).every(({ id, document }) => {
    const held = open.documents[id];
    return (
      held !== undefined &&
      held.save.is === 'saved' &&
      held.document === document &&
      held.server.document === document
    );
  });
};

type SignProps = {
  readonly set: string;
  readonly target: string;
  readonly said: SaidHere | null;
};

export const SignPart = ({ set, target, said }: SignProps) => {
  const tell = useTell();
  const say = useOutcomeWords();
  const work = useWork();
  const { standing, seq, outbox, outcomes } = useLive();
  const [given, setGiven] = useState<string | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  const pending = outbox.find(({ command }) => command.commandId === given);
  const outcome = given === null ? undefined : outcomes[given];
  const mayRead = said !== null && said.seen !== null;
  const sign = (): void => {
    const shown = shownHash(work, set);
    if (shown === null || said === null || said.seen === null || !isAsOnServer(work)) {
      setWhy(
        tell('Not signed: what is shown is not saved yet, or is being read anew. Look again.'),
      );
      return;
    }
    setWhy(null);
    const payload = {
      statement: `I have read the balance card of set ${set} as it was shown`,
      shown,
      basis: seq,
      restsOn: documentsOf(work).map(({ id }) => `document:${id}`),
      role: said.role,
      second: null,
    };
    setGiven(live.give({ kind: 'signed', target, payload, seen: said.seen }));
  };
  const isOff = said !== null && !said.signOffs;
  const isReady = standing.is === 'live' && mayRead && !isOff && pending === undefined;
  return (
    <>
      <p>
        {tell(
          'A sign-off says that a person has read these figures. It certifies nothing; what is ' +
            'safe is for a competent person to say.',
        )}
      </p>
      <p className="buttons">
        <button type="button" disabled={!isReady} onClick={sign}>
          {tell('Sign the balance card as shown')}
        </button>
        <span role="status">
          {standing.is === 'live' ? '' : tell('Not live: nothing can be signed now.')}
          {isOff ? tell('Sign-offs are off: the server is reached without HTTPS.') : ''}
          {pending === undefined ? '' : pending.way === 'asking' ? tell('Unknown: checking') : ''}
          {pending?.way === 'sending' ? tell('Sending') : ''}
          {why ?? ''}
          {outcome === undefined || why !== null ? '' : say(outcome)}
        </span>
      </p>
      <SignedList said={said} />
    </>
  );
};

const SignedList = ({ said }: { readonly said: SaidHere | null }) => {
  const tell = useTell();
  const voice = useVoice();
  const when = (ms: number): string => sayServerTime(ms, Date.now(), voice);
  return (
    <ul>
      {(said?.signed ?? []).map(({ event, standing }) => (
        <li key={event.seq}>
          {event.by === null
            ? tell('Signed at this machine, {when}, event {seq}: {statement}', {
                when: when(event.atMs),
                seq: event.seq,
                statement: event.payload.statement,
              })
            : tell('Signed by {by} ({role}), {when}, event {seq}: {statement}', {
                by: said?.names[event.by] ?? event.by,
                role: event.payload.role,
                when: when(event.atMs),
                seq: event.seq,
                statement: event.payload.statement,
              })}
          {standing.stands ? (
            <p>{tell('It stands: nothing that it rests on has changed.')}</p>
          ) : (
            <p className="void">
              {standing.because === 'withdrawn'
                ? tell('Void: withdrawn by event {seq}, {when}.', {
                    seq: standing.event.seq,
                    when: when(standing.event.atMs),
                  })
                : tell('Void: what it rests on has changed since, event {seq}, {when}.', {
                    seq: standing.event.seq,
                    when: when(standing.event.atMs),
                  })}
            </p>
          )}
        </li>
      ))}
    </ul>
  );
};
