import { assessSet, orderPhysicsOf, type SetAssessment } from '#assessment';
import type { House } from '#house';
import { fail, ok, type Refusal, type Result } from '#outcome';
import type { Show } from '#show';
import type { HouseState, OrderPhysics } from '#state';
import { freeFor } from './kept-stock.ts';
import { refuse } from './refusal-codes.ts';

/** One set of a house with its show and the record, as an order of work needs it. */
export type OrderJob = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState;
  readonly set: SetAssessment;
  /** Its galleries have what work on this set may take: what is kept for other work is left out. */
  readonly physics: OrderPhysics;
};

export type Answer<T> = Result<T, readonly Refusal[]>;

export const notKnown = (path: string, needs: readonly string[]): Answer<never> =>
  fail(needs.map((need) => refuse('notKnown', path, { found: 'unknown', accepted: need })));

/**
 * The set with its physics, or by name everything that is not known of it. A coupled set is opened
 * only by whoever asks for its partner too.
 */
export const openJob = (
  {
    house,
    show,
    state,
  }: { readonly house: House; readonly show: Show; readonly state: HouseState | null },
  setId: string,
  partner: string | null = null,
): Answer<OrderJob> => {
  const lineSet = house.lineSets.find(({ id }) => id === setId);
  if (lineSet === undefined) {
    const accepted = house.lineSets.map(({ id }) => id).join(', ');
    return fail([refuse('noSet', '', { found: setId, accepted })]);
  }
  if (state === null) {
    const accepted = 'a state document: how the set stands, and the loose bricks as counted';
    return fail([refuse('noState', '', { found: 'no record of how things stand', accepted })]);
  }
  const set = assessSet(house, show, state, lineSet);
  const coupled = set.hang?.coupledWith ?? [];
  const others = coupled.filter((each) => each !== partner);
  if (others.length > 0 || (partner !== null && coupled.length === 0)) {
    const partners = coupled.length === 0 ? 'none' : coupled.join(', ');
    const found = `set ${setId}, coupled with ${partners}`;
    const accepted =
      partner === null
        ? 'a set that moves by itself; of two coupled sets ask for both'
        : `two sets that are coupled with each other and with no third`;
    return fail([refuse('coupled', '', { found, accepted })]);
  }
  const person = set.takeoffs.find(({ item }) => item.carriesPerson);
  if (person !== undefined) {
    const found = `set ${setId}: ${person.item.name} carries a person`;
    return fail([refuse('carriesPerson', '', { found, accepted: 'a set that carries none' })]);
  }
  const physics = orderPhysicsOf(set, house, freeFor(setId, house, state));
  return physics.known
    ? ok({ house, show, state, set, physics: physics.value })
    : notKnown(`set ${setId}`, physics.needs);
};
