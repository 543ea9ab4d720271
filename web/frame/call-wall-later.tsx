/** The call on the wall is fetched once the first picture stands, as all that is live is. */
import { lazy, Suspense, useEffect, useState } from 'react';
import { whenIdle } from '../offline/when-idle.ts';

const CallWall = lazy(async () => ({
  default: (await import('../call-desk/call-wall.tsx')).CallWall,
}));

/** Once for the page: a wall that is drawn anew has it at once. */
let isDue = false;

export const CallWallLater = () => {
  const [isIn, setIn] = useState(isDue);
  useEffect(() => {
    whenIdle(() => {
      isDue = true;
      setIn(true);
    });
  }, []);
  return isIn ? (
    <Suspense fallback={null}>
      <CallWall />
    </Suspense>
  ) : null;
};
