/** The search for an order on a thread of its own, so that the page answers while it runs. */
import { openDesk } from '#call';
import { readHouseValue } from '#documents';
import { caseInCall, NOT_PLANNED } from '../call-desk/plan-in-call.ts';
import { readShowOnce, readStateOnce } from '../reckoning/read-once.ts';
import { type FoundAnswer, foundOf } from './found.ts';
import { answerOf } from './question.ts';
import type { SearchRequest } from './searcher.ts';

/** The page has read the same documents, and sends none that it did not understand. */
const searched = (request: SearchRequest): FoundAnswer => {
  if ('inCall' in request) {
    const { inCall: documents, now, asked } = request;
    const inCall = caseInCall(documents, openDesk(documents), { now, set: asked.set });
    return inCall === null
      ? { refusals: [NOT_PLANNED] }
      : foundOf(answerOf(inCall.documents, asked, inCall));
  }
  const { documents, asked } = request;
  const house = readHouseValue(documents.house);
  if (!house.ok) return { refusals: house.error };
  const show = readShowOnce(documents.show, house.value.house);
  if (!show.ok) return { refusals: show.error };
  const state = documents.state && readStateOnce(documents.state, house.value.house);
  if (state !== null && !state.ok) return { refusals: state.error };
  const read = {
    house: house.value.house,
    show: show.value.show,
    state: state === null ? null : state.value.state,
  };
  return foundOf(answerOf(read, asked));
};

self.addEventListener('message', ({ data }: MessageEvent<SearchRequest>) => {
  self.postMessage(searched(data));
});
