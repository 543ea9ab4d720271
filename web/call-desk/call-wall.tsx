/** Tells the wall how the sets stand in the open call, and says beneath it that it does. */
import { useEffect } from 'react';
import { wallSigns } from '#drawings';
import { Link } from '../address/link.tsx';
import { LIVE_PLACE, OVERVIEW_PLACE } from '../call/places.ts';
import { useCall } from '../call/use-call.ts';
import { tellWall } from '../frame/wall-sets.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { clockWords } from './desk-words.ts';
import { CallWallSets } from './wall-of-call.ts';
import './call-wall.css';

const WALL = new CallWallSets();

export const CallWall = () => {
  const tell = useTell();
  const { now, isLive, documents } = useCall();
  const { house, show, kept, nowMs } = useWork();
  const houseId = String(kept.house.document['id']);
  const call = now?.call ?? null;
  const isHere = call?.house === houseId;
  const state = documents?.state ?? null;
  useEffect(() => {
    if (!isHere || now === null || state === null) {
      tellWall(null);
      return;
    }
    const sets = WALL.of({ house, show, state }, now);
    tellWall({
      house: houseId,
      sets,
      signs: (set) => WALL.signs(set) ?? wallSigns(set, house, nowMs),
    });
  }, [isHere, now, state, house, show, houseId, nowMs]);
  useEffect(() => () => tellWall(null), []);
  if (!isHere || call === null) return null;
  return (
    <p className="call-wall">
      {isLive
        ? tell('A call is open since {time}. The wall shows every set as it stands in it.', {
            time: clockWords(call.openedMs),
          })
        : tell(
            'A call was open when this device last heard. The wall is of then, and NOT LIVE.',
          )}{' '}
      <Link to={LIVE_PLACE}>{tell('Your post')}</Link>{' '}
      <Link to={OVERVIEW_PLACE}>{tell('Overview of the call')}</Link>
    </p>
  );
};
