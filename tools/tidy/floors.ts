/**
 * The house: its rooms, their floors, and who may open which door. This table is the law; the
 * dependency rules, the room checks and HOUSE.md follow from it.
 *
 * Stairs go down only: a room may open any door on a lower floor, none on its own or above.
 * `highest`, `typesOnly` and `not` narrow that for one room.
 */
export type Room = {
  /** The door is `#name`. */
  readonly name: string;
  readonly folder: string;
  readonly floor: number;
  /** Pure rooms see no Node and no browser. */
  readonly zone: 'pure' | 'node' | 'browser';
  /** Packages that its own code may open; tests may open development ones too. */
  readonly packages: readonly string[] | 'any';
  /** Highest floor it may open, when narrower than the stairs. */
  readonly highest?: number;
  /** Doors of which it may take the types only. */
  readonly typesOnly?: readonly string[];
  readonly not?: readonly string[];
};

const engine = (name: string, floor: number): Room => ({
  name,
  folder: `engine/${name}`,
  floor,
  zone: 'pure',
  packages: [],
});

export const ROOMS: readonly Room[] = [
  engine('outcome', 0),
  engine('quantities', 1),
  engine('numerics', 1),
  engine('findings', 2),
  { name: 'texts', folder: 'texts', floor: 2, zone: 'pure', packages: [] },
  engine('house', 3),
  engine('show', 4),
  engine('state', 5),
  engine('takeoff', 6),
  engine('beam', 6),
  engine('lines', 6),
  engine('balance', 6),
  engine('motion', 6),
  engine('sightlines', 6),
  engine('sequence', 7),
  engine('cues', 7),
  engine('crew', 8),
  engine('assessment', 9),
  // A judge who shares the planner's code shares its mistakes.
  { ...engine('rules', 10), highest: 5, typesOnly: ['assessment'] },
  // The search and the judge meet here, and nowhere below.
  engine('orders', 11),
  engine('placing', 12),
  {
    name: 'documents',
    folder: 'documents',
    floor: 11,
    zone: 'pure',
    packages: ['zod', 'jsonc-parser'],
    // A file is not an opinion: no calculators.
    highest: 5,
  },
  {
    name: 'events',
    folder: 'events',
    floor: 11,
    zone: 'pure',
    packages: ['zod', '@noble/hashes'],
    highest: 5,
  },
  {
    name: 'call',
    folder: 'call',
    floor: 12,
    zone: 'pure',
    packages: [],
    // It judges nothing by itself: what it asks, `rules` and `orders` answer.
    not: ['documents'],
  },
  { name: 'drawings', folder: 'drawings', floor: 11, zone: 'pure', packages: [] },
  // Reruns the validation cases: the one room with a way into an outbuilding, see CASES_DOOR.
  { name: 'selfcheck', folder: 'selfcheck', floor: 11, zone: 'pure', packages: [] },
  {
    name: 'sheets',
    folder: 'sheets',
    floor: 12,
    zone: 'pure',
    packages: ['qrcode-generator'],
    not: ['documents', 'events'],
    // A sheet prints a report that others ran.
    typesOnly: ['selfcheck'],
  },
  {
    name: 'exchange',
    folder: 'exchange',
    floor: 12,
    zone: 'pure',
    packages: ['fflate', 'fast-xml-parser'],
    // A table is what is written in a document, never what was worked out from it.
    not: ['takeoff', 'beam', 'lines', 'balance', 'motion', 'sequence', 'assessment', 'rules'],
  },
  // What two revisions say apart, in words; it judges neither.
  {
    name: 'differences',
    folder: 'differences',
    floor: 12,
    zone: 'pure',
    packages: [],
    highest: 11,
  },
  // A show put on the sets of another house.
  { name: 'fitting', folder: 'fitting', floor: 13, zone: 'pure', packages: [] },
  // Opened by who chooses a language; the rooms that speak are given one, and open none.
  {
    name: 'languages',
    folder: 'languages',
    floor: 12,
    zone: 'pure',
    packages: ['@formatjs/icu-messageformat-parser'],
    highest: 2,
  },
  {
    name: 'archive',
    folder: 'archive',
    floor: 13,
    zone: 'pure',
    packages: ['fflate', 'zod'],
  },
  { name: 'print', folder: 'print', floor: 13, zone: 'node', packages: 'any' },
  { name: 'installation', folder: 'installation', floor: 13, zone: 'node', packages: 'any' },
  { name: 'server', folder: 'server', floor: 14, zone: 'node', packages: 'any' },
  { name: 'web', folder: 'web', floor: 14, zone: 'browser', packages: 'any', not: ['print'] },
  { name: 'cli', folder: 'cli', floor: 14, zone: 'node', packages: 'any' },
];

/** Folders with code that are no rooms: nobody opens them, but `selfcheck` through CASES_DOOR. */
export const OUTBUILDINGS = [
  'tools',
  'validation',
  'simulation',
  'journeys',
  'pins',
  'bench',
  'examples',
  'bin',
] as const;

/** The lists of validation cases, which `selfcheck` reruns on the installed program. */
export const CASES_DOOR = {
  opener: 'selfcheck',
  files: ['validation/cases.ts', 'validation/development-cases.ts'],
} as const;

/** The small stair inside `server`, lowest step first; rooms of one step do not open each other. */
export const SERVER_STAIR: readonly (readonly string[])[] = [
  ['log', 'auth', 'lan'],
  ['live'],
  ['http'],
];

/** On the small stair `live` opens `log`, and only `http` opens all. */
export const SERVER_REFUSED: Readonly<Record<string, readonly string[]>> = { live: ['auth'] };

/** Whether the door of `to` may be opened from `from`, for values or at least for types. */
export const mayOpen = (from: Room, to: Room): 'yes' | 'types' | 'no' => {
  if (from.not?.includes(to.name)) return 'no';
  if (from.typesOnly?.includes(to.name)) return 'types';
  return to.floor < from.floor && to.floor <= (from.highest ?? Number.POSITIVE_INFINITY)
    ? 'yes'
    : 'no';
};
