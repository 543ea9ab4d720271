/** Every free set reckoned on a thread of its own, so that the page answers while it runs. */
import { readHouseValue } from '#documents';
import { assert } from '#outcome';
import { type PlacingAsked, placesFor, workOn } from '#placing';
import { readShowOnce, readStateOnce } from '../reckoning/read-once.ts';
import type { PlaceAnswer, PlaceRequest } from './place-search.ts';

/** The page has read the same documents, and sends none that it did not understand. */
const askedOf = ({ documents, question, nowMs }: PlaceRequest): PlacingAsked => {
  const house = readHouseValue(documents.house);
  assert(house.ok, 'the page read this house');
  const show = readShowOnce(documents.show, house.value.house);
  assert(show.ok, 'the page read this show');
  const state = documents.state && readStateOnce(documents.state, house.value.house);
  if (state !== null) assert(state.ok, 'the page read this record');
  return {
    ...question,
    house: house.value.house,
    show: show.value.show,
    state: state === null ? null : state.value.state,
    nowMs,
  };
};

const post = (answer: PlaceAnswer): void => self.postMessage(answer);

self.addEventListener('message', ({ data }: MessageEvent<PlaceRequest>) => {
  const asked = askedOf(data);
  if (data.ask === 'places') post({ is: 'places', places: placesFor(asked) });
  else for (const set of data.ask.workOn) post({ is: 'work', set, work: workOn(asked, set) });
  post({ is: 'done' });
});
