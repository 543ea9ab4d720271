/** Round every screen of the desk: whether it is live, the way to the others, and STOP lowest. */
import type { ReactNode } from 'react';
import { Link } from '../address/link.tsx';
import { LIVE_PLACE } from '../call/places.ts';
import { StopBar } from '../call/stop-bar.tsx';
import { StoppedWords } from '../call/stopped.tsx';
import { useCall } from '../call/use-call.ts';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { sayAsOf } from '../offline/age-words.ts';
import { useWork } from '../reckoning/use-work.ts';
import type { CallPart } from './desk-parts.ts';
import { speakingPost } from './set-on-desk.ts';
import type { OpenDesk } from './use-desk.ts';
import './call-desk.css';

type FrameProps = {
  readonly open: OpenDesk | null;
  readonly part: CallPart | null;
  readonly children: ReactNode;
};

export const DeskFrame = ({ open, part, children }: FrameProps) => {
  const { now, isLive, posts } = useCall();
  const { house } = useWork();
  return (
    <div className="call-desk" data-drill={open?.call.isDrill ? '' : undefined}>
      <div className="call-body">
        {open === null ? null : <DeskNav open={open} part={part} />}
        <NotLive open={open} />
        {(now?.stops ?? []).map((stop) =>
          now === null ? null : <StoppedWords key={stop.seq} stop={stop} now={now} house={house} />,
        )}
        {children}
      </div>
      <StopBar now={now} post={speakingPost(posts)} isLive={isLive} />
    </div>
  );
};

const DeskNav = ({ open, part }: Pick<FrameProps, 'part'> & { readonly open: OpenDesk }) => {
  const tell = useTell();
  const { call } = open;
  const parts = [
    ['head', tell('Overview')],
    ['posts', tell('Posts')],
    ['close', tell('Close the call')],
  ] as const;
  return (
    <nav className="call-nav" aria-label={tell('Of the call')}>
      {call.isDrill ? <p className="call-drill">{tell('DRILL')}</p> : null}
      <Link to={LIVE_PLACE}>{tell('Your post')}</Link>
      {parts.map(([each, words]) => (
        <Link key={each} to={{ kind: 'live', path: [each] }} isHere={each === part}>
          {words}
        </Link>
      ))}
    </nav>
  );
};

/** In words, with the age of what is shown: nothing is greyed, and nothing looks as if it were. */
const NotLive = ({ open }: Pick<FrameProps, 'open'>) => {
  const tell = useTell();
  const voice = useVoice();
  if (open === null || open.isLive) return null;
  const { asOf } = open.here;
  return (
    <Notice degree="caution" title={tell('not live')} isNews>
      <p>
        {asOf === null
          ? tell('This device does not hear the house.')
          : tell('This device does not hear the house. What is shown is {asOf}.', {
              asOf: sayAsOf(asOf, Date.now(), voice),
            })}
      </p>
      <p>{tell('Nothing is recorded from here now. Work by the paper, and write notes.')}</p>
    </Notice>
  );
};
