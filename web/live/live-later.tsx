/** The live side is fetched once the first picture stands; until then the page is catching up. */
import { lazy, Suspense, useEffect, useState } from 'react';
import { useTell } from '../language/use-tell.ts';
import { whenIdle } from '../offline/when-idle.ts';

const LiveWord = lazy(async () => ({ default: (await import('./live-word.tsx')).LiveWord }));
const LiveAlarms = lazy(async () => ({ default: (await import('./live-word.tsx')).LiveAlarms }));

/** Once for the page: a strip that is drawn anew has it at once. */
let isDue = false;

const useIsDue = (): boolean => {
  const [isIn, setIn] = useState(isDue);
  useEffect(() => {
    whenIdle(() => {
      isDue = true;
      setIn(true);
    });
  }, []);
  return isIn;
};

const NotYet = () => {
  const tell = useTell();
  return (
    <p className="live-word" data-live="catchingUp">
      {tell('catching up')}
    </p>
  );
};

export const LiveWordLater = () =>
  useIsDue() ? (
    <Suspense fallback={<NotYet />}>
      <LiveWord />
    </Suspense>
  ) : (
    <NotYet />
  );

export const LiveAlarmsLater = () =>
  useIsDue() ? (
    <Suspense fallback={null}>
      <LiveAlarms />
    </Suspense>
  ) : null;
