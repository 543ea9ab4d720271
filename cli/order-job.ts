import { assessSet, orderPhysicsOf, type SetAssessment, standingOf } from '#assessment';
import type { House } from '#house';
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import { type Metres, metres } from '#quantities';
import { inHouseWords, sayMoment } from '#sheets';
import type { Show } from '#show';
import type { HouseState, OrderPhysics, Standing } from '#state';
import { unknownSetState } from '#state';
import { COMMAND_REFUSALS } from './refusal-codes.ts';

/** One set of a house with its show and the record, as an order of work needs it. */
export type OrderJob = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState;
  readonly set: SetAssessment;
  readonly physics: OrderPhysics;
};

/** Where the work begins, who says so, and what is taken for granted about it. */
export type OrderStart = { readonly standing: Standing; readonly assumed: readonly string[] };

type Answer<T> = Result<T, readonly Refusal[]>;

const refused = (
  name: 'noState' | 'noSet' | 'notKnown' | 'coupled',
  path: string,
  found: string,
  accepted: string,
): Answer<never> => fail([{ code: COMMAND_REFUSALS[name].code, path, found, accepted }]);

export const notKnown = (path: string, needs: readonly string[]): Answer<never> =>
  fail(
    needs.map((need) => ({
      code: COMMAND_REFUSALS.notKnown.code,
      path,
      found: 'unknown',
      accepted: need,
    })),
  );

/** The set with its physics, or by name everything that is not known of it. */
export const openJob = (
  { house, show, state }: Pick<OrderJob, 'house' | 'show'> & { readonly state: HouseState | null },
  id: string,
): Answer<OrderJob> => {
  const lineSet = house.lineSets.find((each) => each.id === id);
  if (lineSet === undefined) {
    return refused('noSet', '', id, house.lineSets.map((each) => each.id).join(', '));
  }
  if (state === null) {
    const accepted = '--state FILE: how the set stands, and the loose bricks as counted';
    return refused('noState', '', 'no record of how things stand', accepted);
  }
  const set = assessSet(house, show, state, lineSet);
  const others = set.hang?.coupledWith ?? [];
  if (others.length > 0) {
    const found = `set ${id}, coupled with ${others.join(', ')}`;
    return refused(
      'coupled',
      '',
      found,
      'a set that moves by itself; this order stays with people',
    );
  }
  const physics = orderPhysicsOf(set, house, state);
  return physics.known
    ? ok({ house, show, state, set, physics: physics.value })
    : notKnown(`set ${id}`, physics.needs);
};

/** Half a foot: how far a height read off at the rail may be off. */
const MEASURED_M = 0.15;

/** A batten that is recorded a hand past its stop stands on it. */
const onTravel = (heightM: number, { lowStop, highStop }: OrderPhysics): Metres =>
  metres(
    heightM < lowStop.heightM && heightM > lowStop.heightM - MEASURED_M
      ? lowStop.heightM
      : heightM > highStop.heightM && heightM < highStop.heightM + MEASURED_M
        ? highStop.heightM
        : heightM,
  );

/** As the record has the set. */
export const recordedStart = ({ house, state, set, physics }: OrderJob): Answer<OrderStart> => {
  const id = set.lineSet.id;
  const standing = standingOf(state.sets[id] ?? unknownSetState);
  if (!standing.known) return notKnown(`sets.${id}`, standing.needs);
  const { value } = standing;
  const strange = Object.keys(value.items).filter((item) => !isOnShow(set, item));
  if (strange.length > 0) {
    return notKnown(
      `sets.${id}.items`,
      strange.map((item) => `what ${item} is: the show has none`),
    );
  }
  const height = onTravel(value.height, physics);
  const assumed = [
    `Set ${id} stands as recorded ${sayMoment(state.at)} by ${state.by}: look first.`,
    ...(height === value.height
      ? []
      : [
          inHouseWords(
            'The batten is recorded a hand past its stop; it is taken to stand on it.',
            house,
          ),
        ]),
  ];
  return ok({ standing: { ...value, height }, assumed });
};

const isOnShow = ({ hang }: SetAssessment, item: string): boolean =>
  (hang?.items ?? []).some(({ id }) => id === item);

const SAID_BARE =
  'is taken to be bare on its low stop, pipe weight only, locked, in use and held by nothing ' +
  'else, because you said so and not because anybody recorded it: look and count first.';

/** Bare on its low stop, because the person who asks says so. */
export const bareStart = ({ house, set, physics }: OrderJob): Answer<OrderStart> => {
  const { id, arbor } = set.lineSet;
  if (arbor === null || arbor.pipeWeight === null) return notKnown(`set ${id}`, ['pipe weight']);
  return ok({
    standing: {
      height: metres(physics.lowStop.heightM),
      stack: arbor.pipeWeight.map((run) => ({ ...run, tag: 'pipe' })),
      items: {},
      restraints: [],
      service: 'in',
      closed: [],
    },
    assumed: [inHouseWords(`Set ${id} ${SAID_BARE}`, house)],
  });
};

/** Bricks that the plan may take although somebody keeps them for other work. */
export const stockWords = ({ house, state }: OrderJob): readonly string[] =>
  house.galleries.flatMap(({ id, name }) => {
    const gallery = state.galleries[id];
    if (gallery === undefined) {
      return [
        `${name}: ${inHouseWords('no loose bricks are counted there: none are taken', house)}.`,
      ];
    }
    const kept = gallery.reserved.map(({ kind, count, for: what }) => `${count} ${kind} (${what})`);
    return kept.length === 0
      ? []
      : [`${name}: reserved, but counted as loose here: ${kept.join(', ')}. Ask before taking.`];
  });
