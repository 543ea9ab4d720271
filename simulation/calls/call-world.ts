/** One call in false weather: a house, its crew at their devices, and the true world beside it. */
import { chanceFrom } from '../chance.ts';
import { House, type Storage } from '../house.ts';
import { Network } from '../network.ts';
import { Tablet } from '../tablet.ts';
import { Timeline } from '../timeline.ts';
import { CLEAR, milder, type Weather, weatherBy } from '../weather.ts';
import { Witness } from '../witness.ts';
import { agree } from '../world.ts';
import { CallWitness } from './call-witness.ts';
import { callWork, takes } from './call-work.ts';
import { CrewHands } from './crew-hands.ts';
import { type DemoCase, demoOf } from './demo-call.ts';
import { crewOf, type Habits, habitsBy } from './people.ts';
import { Truth } from './truth.ts';

export type CallTold = {
  readonly seed: number;
  readonly which: DemoCase;
  readonly sets: readonly string[];
  readonly commands: number;
  readonly events: number;
  readonly crashes: number;
  readonly slips: number;
  readonly counts: Readonly<Record<string, number>>;
};

const PAUSE_MS = { least: 200, most: 3000 } as const;
const SETTLE_MS = 180_000;
/** A crew that has nothing left to do goes home. */
const LONGEST_MS = 7_200_000;
/** Sets that one crew works on, next to each other on the rail. */
const IN_PLAY = 5;

const ORDER: readonly DemoCase[] = [
  'asItIs',
  'asItIs',
  'asItIs',
  'regatta',
  'asItIs',
  'person',
  'keepOut',
];

/** Seeds in a row go over every set of the house. */
const inPlayBy = (seed: number, ids: readonly string[]): readonly string[] =>
  Array.from({ length: IN_PLAY }, (_, at) => ids[(seed * IN_PLAY + at) % ids.length] ?? '');

/** What is left to the seed where it is not chosen. */
export type Chosen = {
  readonly which?: DemoCase;
  readonly sets?: readonly string[];
  readonly habits?: Partial<Habits>;
};

export const runCallWorld = (
  seed: number,
  commands: number,
  storage: Storage,
  chosen: Chosen = {},
): CallTold => {
  const chance = chanceFrom(seed);
  const timeline = new Timeline();
  const bad = weatherBy(chance);
  // A crew that hears nothing does nothing: much of the time they work.
  let weather: Weather = milder(bad, chance.oneOf([0, 0.05, 0.2, 0.5]));
  const sky = (): Weather => weather;
  const network = new Network(timeline, chance, sky);
  const demo = demoOf(chosen.which ?? ORDER[seed % ORDER.length] ?? 'asItIs');
  const truth = new Truth(demo);
  const watch = new CallWitness(demo, truth);
  const crew = crewOf(demo, chance);
  const habits = { ...habitsBy(chance), ...chosen.habits };
  const inPlay = chosen.sets ?? inPlayBy(seed, [...demo.sets.keys()]);
  const work = callWork({ demo, chance, crew, witness: watch });
  const house = new House({ timeline, chance, weather: sky, storage, work });
  house.begin({ drafts: [demo.opened], by: null });
  for (const person of crew) house.begin(takes(person));
  const witness = new Witness(timeline, (command, outcome) => watch.told(command, outcome));
  witness.watch(house);
  const devices = crew.map((person) => {
    const hands = new CrewHands({ person, demo, truth, chance, habits, inPlay });
    const standing = { by: person.id, mayNote: true };
    const around = { timeline, chance, weather: sky, network, house, witness };
    return { hands, tablet: new Tablet({ ...around, hands, standing, name: person.device }) };
  });
  let most = commands;
  const act = (tablet: Tablet): void => {
    if (witness.given >= most) return;
    tablet.act();
    timeline.in(chance.between(PAUSE_MS.least, PAUSE_MS.most), () => act(tablet));
  };
  for (const { tablet } of devices) act(tablet);
  while (witness.given < most && timeline.nowMs < LONGEST_MS) {
    timeline.run(timeline.nowMs + 10_000);
  }
  most = 0;
  weather = CLEAR;
  house.isQuiet = true;
  timeline.run(timeline.nowMs + 60_000);
  for (const { tablet } of devices) tablet.wake();
  timeline.run(timeline.nowMs + SETTLE_MS);
  agree(
    house,
    devices.map(({ tablet }) => tablet),
  );
  for (const { hands, tablet } of devices) watch.agrees(tablet.name, hands.now);
  const { events } = witness.judge(house.log);
  const counts = byName(watch.counts);
  const { crashes } = house;
  const { slips } = truth;
  const { which } = demo;
  return { seed, which, sets: inPlay, commands: witness.given, events, crashes, slips, counts };
};

const byName = (counts: ReadonlyMap<string, number>): Readonly<Record<string, number>> =>
  Object.fromEntries([...counts].toSorted(([one], [other]) => one.localeCompare(other, 'en')));
