/**
 * A whole load-in of the example house as the record that it becomes: every set bare and all bricks
 * loose in the morning, then every step of every order that the judge takes, with each brick told.
 */
import { type CallDocuments, crewTurn, type DrillRun, openRun, signedSteps, takeTurn } from '#call';
import type { HouseEvent } from '#events';
import { isAccepted, showOrders } from '#orders';
import { metres } from '#quantities';
import type { GalleryState, HouseState, SetState, Step } from '#state';
import { openExample } from '../examples/open-example.ts';

/** Loose before the load-in, from the remarks of the house. */
const LOOSE: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  upper: { F: 280, H: 26, O: 21 },
  mid: { F: 52, H: 14, O: 0 },
};

const START_MS = Date.parse('2026-11-25T08:00:00Z');
const AT = '2026-11-25T07:30:00Z';

const bareSets = ({ house, state }: CallDocuments): HouseState['sets'] =>
  Object.fromEntries(
    house.lineSets.flatMap(({ id, arbor, lowStop }): readonly (readonly [string, SetState])[] => {
      const before = state.sets[id];
      if (before === undefined || arbor === null || !lowStop.height.known) return [];
      const height = metres(lowStop.height.value);
      const bare: SetState = {
        ...before,
        height: { low: height, high: height },
        stack: (arbor.pipeWeight ?? []).map((run) => ({ ...run, tag: 'pipe' as const })),
        items: [],
        restraints: [],
        service: before.service === 'lockedOut' ? 'lockedOut' : 'in',
        knowledge: { ...before.knowledge, at: AT },
      };
      return [[id, bare]];
    }),
  );

const looseBricks = ({ galleries }: HouseState): HouseState['galleries'] =>
  Object.fromEntries(
    Object.entries(galleries).map(([id, gallery]): readonly [string, GalleryState] => [
      id,
      { ...gallery, stock: LOOSE[id] ?? gallery.stock, countedAt: AT, reserved: [] },
    ]),
  );

/** Everything struck, and everything that lies on arbors tonight lying on the galleries. */
export const morningOf = (documents: CallDocuments): CallDocuments => ({
  ...documents,
  state: {
    ...documents.state,
    at: AT,
    sets: bareSets(documents),
    galleries: looseBricks(documents.state),
  },
});

const POSTS = [
  ...['headFly', 'rail', 'deck', 'watcher', 'bullLine', 'marshal:run'],
  ...['gallery:upper', 'gallery:mid', 'marshal:drop:upper', 'marshal:drop:mid'],
] as const;

const TURNS_MOST = 2000;

/** Works one set by its order; null where it was done, else why it stopped. */
const workSet = (run: DrillRun, set: string, steps: readonly Step[]): string | null => {
  const told = run.say('headFly', {
    kind: 'plan told',
    set,
    payload: { job: 'load', steps: [...steps] },
  });
  if (told.outcome === 'refused') return `${told.code}: ${told.words}`;
  for (let turns = 0; turns < TURNS_MOST; turns++) {
    const turn = crewTurn(run.now(), set);
    if (turn === null) break;
    const answer = takeTurn(run, turn);
    if (answer.outcome === 'refused') return `${answer.code}: ${answer.words}`;
  }
  const plan = run.now().sets[set]?.plan ?? null;
  return plan !== null && plan.done === plan.steps.length ? null : 'it was not worked to its end';
};

export type LoadIn = {
  readonly events: readonly HouseEvent[];
  readonly done: readonly string[];
  readonly steps: number;
  /** Sets that have an order and were not loaded, with why. */
  readonly left: readonly (readonly [set: string, why: string])[];
};

export const wholeLoadIn = (): LoadIn => {
  const documents = morningOf(openExample('kestlemere'));
  const { house, show, state } = documents;
  const orders = showOrders(house, show, state);
  const run = openRun({ documents, posts: POSTS, startMs: START_MS, isDrill: false });
  const done: string[] = [];
  const left: (readonly [string, string])[] = [];
  let count = 0;
  for (const { set, kind } of orders.jobs) {
    if (kind !== 'load') continue;
    const asked = orders.of(set, kind);
    if (!('order' in asked) || !isAccepted(asked.order)) {
      left.push([set, 'no order is accepted']);
      continue;
    }
    const steps = signedSteps(asked.order.steps, set);
    const why = workSet(run, set, steps);
    if (why === null) {
      done.push(set);
      count += steps.length;
    } else left.push([set, why]);
  }
  return { events: run.events(), done, steps: count, left };
};
