/** One house with its devices, from the first command to the clear sky after the last. */
import { chanceFrom } from './chance.ts';
import { RuleBroken } from './delivery-rules.ts';
import { House, type Storage } from './house.ts';
import { Network } from './network.ts';
import { notesAndSigns, writingHands } from './notes-and-signs.ts';
import { Tablet } from './tablet.ts';
import { Timeline } from './timeline.ts';
import { CLEAR, type Weather, weatherBy } from './weather.ts';
import { Witness } from './witness.ts';

export type Told = {
  readonly seed: number;
  readonly devices: number;
  readonly commands: number;
  readonly events: number;
  readonly crashes: number;
  readonly faults: number;
  readonly outcomes: Readonly<Record<string, number>>;
};

/** A tap every so often; a crew under way taps more often than this at no time. */
const PAUSE_MS = { least: 200, most: 4000 } as const;
const SETTLE_MS = 180_000;

/** Runs it to its end; throws `RuleBroken` where a rule is broken. */
export const runWorld = (seed: number, commands: number, storage: Storage): Told => {
  const chance = chanceFrom(seed);
  const timeline = new Timeline();
  const bad = weatherBy(chance);
  let weather: Weather = bad;
  const sky = (): Weather => weather;
  const network = new Network(timeline, chance, sky);
  const house = new House({ timeline, chance, weather: sky, storage, work: notesAndSigns(chance) });
  const witness = new Witness(timeline);
  witness.watch(house);
  const around = { timeline, chance, weather: sky, network, house, witness };
  const devices = 2 + chance.below(11);
  const tablets = Array.from(
    { length: devices },
    (_, at) =>
      new Tablet({
        ...{ ...around, name: `tablet-${at + 1}`, hands: writingHands(chance) },
        standing: { by: 'person-1', mayNote: !chance.isIn(0.1) },
      }),
  );
  const act = (tablet: Tablet): void => {
    if (witness.given >= commands) return;
    tablet.act();
    timeline.in(chance.between(PAUSE_MS.least, PAUSE_MS.most), () => act(tablet));
  };
  for (const tablet of tablets) act(tablet);
  while (witness.given < commands) timeline.run(timeline.nowMs + 10_000);
  weather = CLEAR;
  house.isQuiet = true;
  timeline.run(timeline.nowMs + 60_000);
  for (const tablet of tablets) tablet.wake();
  timeline.run(timeline.nowMs + SETTLE_MS);
  agree(house, tablets);
  const { events, outcomes } = witness.judge(house.log);
  const { crashes, faults } = house;
  return { seed, devices, commands: witness.given, events, crashes, faults, outcomes };
};

/** In the end every device has the whole record, and waits for nothing. */
export const agree = (house: House, tablets: readonly Tablet[]): void => {
  const { seq, hash } = house.log.head();
  for (const { name, pinned, isIdle, state } of tablets) {
    if (pinned?.seq !== seq || pinned.hash !== hash) {
      const how = `${name} has ${pinned?.seq} of ${seq} (${state.streamIs}, ${state.stop})`;
      throw new RuleBroken('agree', how);
    }
    if (!isIdle) throw new RuleBroken('told', `${name} still waits for an answer`);
  }
};
