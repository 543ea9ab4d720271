/**
 * A sign-off of the balance card of a set, as it stands on this screen: what was shown goes in as
 * its hash, with the last event that it rests on. It is never queued, and void by rule.
 */
import { useRef, useState } from 'react';
import { sha256OfValue } from '#events';
import { sheetOf } from '#sheets';
import { keeper } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import { Proof } from '../people/proof.tsx';
import { useSession } from '../people/session.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { SAID_ABOVE } from '../self-check/screens.ts';
import type { SaidHere } from './server.ts';
import { SignedList } from './signed-list.tsx';
import { useGiven } from './use-given.ts';
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

/** The sign-off as it may be given now; null where what is shown is not what the server has. */
const signOffOf = (work: Work, { set, said }: SignProps, basis: number) => {
  const shown = shownHash(work, set);
  if (shown === null || said === null || !isAsOnServer(work)) return null;
  return {
    statement: `I have read the balance card of set ${set} as it was shown`,
    shown,
    basis,
    restsOn: documentsOf(work).map(({ id }) => `document:${id}`),
    role: said.role,
    second: null,
  };
};

export const SignPart = (props: SignProps) => {
  const { target, said } = props;
  const tell = useTell();
  const work = useWork();
  const { standing, seq } = useLive();
  const given = useGiven();
  /** What is said before anything is given. */
  const [before, setBefore] = useState('');
  const signer = useRef<HTMLButtonElement>(null);
  const seen = said?.seen ?? null;
  const sign = (): void => {
    const payload = signOffOf(work, props, seq);
    if (payload === null || seen === null) {
      given.forget();
      setBefore(
        tell('Not signed: what is shown is not saved yet, or is being read anew. Look again.'),
      );
      return;
    }
    setBefore('');
    given.give({ kind: 'signed', target, payload, seen });
  };
  const leave = (): void => {
    given.forget();
    signer.current?.focus();
  };
  const proved = (): void => {
    leave();
    setBefore(tell('It is you. Look at the figures once more, then sign within a minute.'));
  };
  const isOff = said !== null && !said.signOffs;
  const isReady = standing.is === 'live' && seen !== null && !isOff && !given.isPending;
  return (
    <>
      <p>
        {tell(
          'A sign-off says that a person has read these figures. It certifies nothing; what is ' +
            'safe is for a competent person to say.',
        )}
      </p>
      <p className="buttons">
        <button ref={signer} type="button" disabled={!isReady} onClick={sign}>
          {tell('Sign the balance card as shown')}
        </button>
        <span role="status">
          {standing.is === 'live' ? '' : tell('Not live: nothing can be signed now.')}
          {isOff ? tell('Sign-offs are off: the server is reached without HTTPS.') : ''}
          {before}
          {given.wantsProof ? '' : given.words}
        </span>
      </p>
      {given.wantsProof ? <SignProof onProved={proved} onLeave={leave} /> : null}
      <SignedList said={said} />
    </>
  );
};

type SignProofProps = { readonly onProved: () => void; readonly onLeave: () => void };

/** On a device of several people it says whose it asks for. */
const SignProof = (ends: SignProofProps) => {
  const tell = useTell();
  const session = useSession();
  return (
    <Proof
      why={tell(
        'Not signed yet. This device is signed in as {name}, and a sign-off needs the PIN or ' +
          'passphrase of {name} within the last minute. Somebody else signs in first.',
        { name: session?.name ?? '' },
      )}
      {...ends}
    />
  );
};
