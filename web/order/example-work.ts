/** Documents read as the screens read them, for the tests of this folder. */
import { readHouseValue, readShowValue, readStateValue } from '#documents';
import type { WorkedOrder } from '#orders';
import { assert } from '#outcome';
import { type Asked, answerOf, type Documents } from './question.ts';

/** What a JSON file holds, before anybody has read it. */
type Raw = Readonly<Record<'house' | 'show' | 'state', unknown>>;

export const documentsOf = (raw: Raw): Documents => {
  const house = readHouseValue(raw.house);
  assert(house.ok, 'the house reads');
  const show = readShowValue(raw.show, house.value.house);
  assert(show.ok, 'the show reads');
  const state = readStateValue(raw.state, house.value.house, show.value.show);
  assert(state.ok, 'the record reads');
  return { house: house.value.house, show: show.value.show, state: state.value.state };
};

export const workedOn = (documents: Documents, asked: Asked): WorkedOrder => {
  const answer = answerOf(documents, asked);
  assert('plan' in answer, `an order of set ${asked.set} can be asked for`);
  return answer;
};
