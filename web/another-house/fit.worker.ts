/** A show fitted to another house on a thread of its own, so that the page answers meanwhile. */
import { readHouseValue, readShowValue, readStateValue } from '#documents';
import { type FitAsked, fitShow, propose } from '#fitting';
import { assert } from '#outcome';
import type { FitAnswer, FitRequest } from './fit-search.ts';
import { moved } from './moved.ts';

/** The page has read the same documents, and sends none that it did not understand. */
const askedOf = ({ from, to, nowMs }: FitRequest): FitAsked => {
  const here = readHouseValue(from.house);
  assert(here.ok, 'the page read this house');
  const show = readShowValue(from.show, here.value.house);
  assert(show.ok, 'the page read this show');
  const there = readHouseValue(to.house);
  assert(there.ok, 'the page read the other house');
  const state = to.state === null ? null : readStateValue(to.state, there.value.house);
  return {
    from: { house: here.value.house, show: show.value.show, document: show.value.raw },
    to: { house: there.value.house, state: state?.ok ? state.value.state : null },
    nowMs,
  };
};

const post = (answer: FitAnswer): void => self.postMessage(answer);

self.addEventListener('message', ({ data }: MessageEvent<FitRequest>) => {
  const asked = askedOf(data);
  const of = asked.from.show.hangs.length;
  const proposal = data.proposal ?? propose(asked, (done) => post({ is: 'progress', done, of }));
  const mapping = moved(proposal.mapping, data.moves);
  post({ is: 'fit', proposal, fit: fitShow(asked, { ...proposal, mapping }, data.named) });
});
