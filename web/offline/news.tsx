/** What a page says of itself: that it shows a copy and how old, and that a newer one is there. */
import { useEffect, useState } from 'react';
import { Notice } from '../frame/notice.tsx';
import type { Moment } from '../keeping/copies.ts';
import type { Open } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { sayAsOf } from './age-words.ts';
import { ownBuild } from './house-fetch.ts';
import { isNewer, useBuildNews } from './use-news.ts';
import './news.css';

const TICK_MS = 15_000;

const useNow = (): number => {
  const [nowMs, setNow] = useState(() => Date.now());
  useEffect(() => {
    const tick = (): void => setNow(Date.now());
    const timer = setInterval(tick, TICK_MS);
    // A page that slept says at once how old it has become.
    document.addEventListener('visibilitychange', tick);
    window.addEventListener('beforeprint', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
      window.removeEventListener('beforeprint', tick);
    };
  }, []);
  return nowMs;
};

/** In the margin of every printed page, where the browser prints there; else on the first alone. */
const inMargin = (words: string): string =>
  `@media print { @page { @top-left { content: ${JSON.stringify(words)}; } } }`;

const NotLive = ({ asOf }: { readonly asOf: Moment }) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  const words = tell('not live: {asOf}', { asOf: sayAsOf(asOf, useNow(), voice) });
  return (
    <div className="not-live">
      <style>{inMargin(words)}</style>
      <Notice degree="caution" title={words}>
        <div className="not-on-paper">
          <p role="status">
            {tell(
              'The server is not reached. Shown is what this device read last; others may have ' +
                'changed it since. Edits of the plan stay on this page until the server takes ' +
                'them. How things stand cannot be written down until then.',
            )}
          </p>
          <p className="buttons">
            <button type="button" onClick={() => void keeper.refresh()}>
              {tell('Ask the server again')}
            </button>
          </p>
        </div>
      </Notice>
    </div>
  );
};

const LoadNow = ({ open }: { readonly open: Open }) => {
  const tell = useTell();
  const unsaved = Object.values(open.documents).some(({ save }) => save.is !== 'saved');
  const isLost = unsaved && !open.keptOnDevice;
  return (
    <>
      <p>
        {isLost
          ? tell('Save first: this device keeps no copy of what is not saved.')
          : tell('What is not saved stays on this page when it is loaded anew.')}
      </p>
      <p className="buttons">
        <button type="button" disabled={isLost} onClick={() => location.reload()}>
          {tell('Load the newer version now')}
        </button>
      </p>
    </>
  );
};

const NewerVersion = ({ open }: { readonly open: Open }) => {
  const tell = useTell();
  const news = useBuildNews();
  if (news.isRefused) {
    return (
      <Notice degree="caution" title={tell('this page is too old for the server')} isNews>
        <p>
          {tell(
            'The server was renewed and takes no edits from this older version; nothing was ' +
              'changed there.',
          )}
        </p>
        <LoadNow open={open} />
      </Notice>
    );
  }
  if (!isNewer(news, ownBuild())) return null;
  return (
    <div role="status">
      <Notice degree="note" title={tell('A newer version is on the server.')}>
        <p>
          {tell(
            'This page goes on as it is. The newer version is taken when the page is next ' +
              'opened, or now.',
          )}
        </p>
        <LoadNow open={open} />
      </Notice>
    </div>
  );
};

export const News = ({ open }: { readonly open: Open }) => (
  <div className="page-news">
    {open.asOf === null ? null : <NotLive asOf={open.asOf} />}
    <NewerVersion open={open} />
  </div>
);
