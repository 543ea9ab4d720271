/** From a post to the rest of the program: only where nothing is in hand, or it was asked for. */
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { LIVE_PLACE, OVERVIEW_PLACE } from './places.ts';

export const WayOut = () => {
  const tell = useTell();
  return (
    <p className="way-out">
      <Link to={OVERVIEW_PLACE}>{tell('Overview of the call')}</Link>
      <Link to={LIVE_PLACE}>{tell('Other posts and screens')}</Link>
    </p>
  );
};
