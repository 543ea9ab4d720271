/** Spoils one specimen in one place, and says what must be refused and where. */
import type { Refusal, Result } from '#outcome';
import { assert } from '#outcome';
import { computeInput } from '../compute/compute-input.ts';
import type { ComputeName } from '../compute/inputs.ts';
import { readHouse, readHouseValue } from '../read-house.ts';
import { readOrder, readOrderValue } from '../read-order.ts';
import { readShow, readShowValue } from '../read-show.ts';
import { readState, readStateValue } from '../read-state.ts';
import * as specimens from './specimens.ts';

export type Provocation = {
  readonly title: string;
  readonly input: unknown;
  readonly read: (input: unknown) => Result<unknown, readonly Refusal[]>;
  readonly path: string;
  /** Codes that come with it, where one slip truly is two faults. */
  readonly with: readonly string[];
};

export type Provocations = Readonly<Record<string, readonly Provocation[]>>;

type Document = 'house' | 'show' | 'state' | 'order';
type Specimen = Document | ComputeName;

const SPECIMENS: Readonly<Record<Specimen, unknown>> = {
  house: specimens.house,
  show: specimens.show,
  state: specimens.state,
  order: specimens.order,
  balance: specimens.balance,
  bricks: specimens.brickTask,
  mix: specimens.mix,
  takeoff: specimens.takeoff,
  pullTest: specimens.pullTest,
  reach: specimens.reach,
  batten: specimens.batten,
  lines: specimens.lines,
  totals: specimens.totals,
  releasable: specimens.releasable,
  runaway: specimens.runaway,
  dropped: specimens.dropped,
  plan: specimens.plan,
  verify: specimens.verify,
};

const soundHouse = readHouseValue(specimens.house);
assert(soundHouse.ok, 'the specimen of a house is sound');
const { house } = soundHouse.value;
const soundShow = readShowValue(specimens.show, house);
assert(soundShow.ok, 'the specimen of a show is sound');
const { show } = soundShow.value;

const readValue = (specimen: Specimen) => (input: unknown) => {
  if (specimen === 'house') return readHouseValue(input);
  if (specimen === 'show') return readShowValue(input, house);
  if (specimen === 'state') return readStateValue(input, house, show);
  if (specimen === 'order') return readOrderValue(input, house, show);
  return computeInput(specimen).read(input);
};

const READ_TEXT: Readonly<Record<Document, Provocation['read']>> = {
  house: readHouse,
  show: (input) => readShow(input, house),
  state: (input) => readState(input, house, show),
  order: (input) => readOrder(input, house, show),
};

type Holder = Record<string, unknown>;

const copy = (specimen: Specimen): Holder => JSON.parse(JSON.stringify(SPECIMENS[specimen]));

/** Goes to the holder of the last key of `lineSets[0].type`. */
const holderOf = (raw: Holder, at: string): { holder: Holder; key: string } => {
  const keys = at.match(/[^.[\]]+/g) ?? [];
  const key = keys.at(-1) ?? '';
  const holder = keys.slice(0, -1).reduce<Holder>((inner, next) => {
    const below = inner[next];
    assert(typeof below === 'object' && below !== null, `${at} leads somewhere`);
    return below as Holder;
  }, raw);
  return { holder, key };
};

type Expected = { readonly at?: string; readonly with?: readonly string[] };

/** Writes a value at a path; the refusal is expected there, or where `at` says. */
export const put = (
  specimen: Specimen,
  path: string,
  value: unknown,
  { at = path, with: others = [] }: Expected = {},
): Provocation => {
  const raw = copy(specimen);
  const { holder, key } = holderOf(raw, path);
  holder[key] = value;
  const shown = typeof value === 'string' ? value.slice(0, 40) : typeof value;
  return {
    title: `${specimen}, ${path} as ${shown}`,
    input: raw,
    read: readValue(specimen),
    path: at,
    with: others,
  };
};

/** Takes a field away. */
export const omit = (
  specimen: Specimen,
  path: string,
  { at = path, with: others = [] }: Expected = {},
): Provocation => {
  const raw = copy(specimen);
  const { holder, key } = holderOf(raw, path);
  delete holder[key];
  const read = readValue(specimen);
  return { title: `${specimen} without ${path}`, input: raw, read, path: at, with: others };
};

/** Several changes at once, each a path and a value. */
export const puts = (
  specimen: Specimen,
  changes: Readonly<Record<string, unknown>>,
  at: string,
  others: readonly string[] = [],
): Provocation => {
  const raw = copy(specimen);
  for (const [path, value] of Object.entries(changes)) {
    const { holder, key } = holderOf(raw, path);
    holder[key] = value;
  }
  const title = `${specimen} with ${Object.keys(changes).join(', ')}`;
  return { title, input: raw, read: readValue(specimen), path: at, with: others };
};

/** Another value altogether in the place of a document. */
export const instead = (
  specimen: Specimen,
  title: string,
  input: unknown,
  path = '',
): Provocation => ({
  title: `${specimen}: ${title}`,
  input,
  read: readValue(specimen),
  path,
  with: [],
});

/** A text in the place of that of a sound document. */
export const asText = (
  specimen: Document,
  title: string,
  spoiled: (sound: string) => unknown,
  path = '',
): Provocation => ({
  title: `${specimen} text: ${title}`,
  input: spoiled(JSON.stringify(SPECIMENS[specimen], null, 2)),
  read: READ_TEXT[specimen],
  path,
  with: [],
});
