/**
 * Where each planted bug of a call shows: worlds in which people do what it lets through.
 */
import { inMemory } from '../storages.ts';
import { CALL_RULES } from './call-rules.ts';
import { type Chosen, runCallWorld } from './call-world.ts';
import type { Mischief } from './people.ts';

const NO_SLIPS = {
  strays: 0,
  miscounts: 0,
  forgets: 0,
  wrongSet: 0,
  otherwise: 0,
  leaves: 0,
} as const;
const BUSY = { ...NO_SLIPS, mischief: 0.12 };
const CALM = { ...NO_SLIPS, mischief: 0.02 };
/** Given to one kind of mischief. */
const given = (only: Mischief, mischief = 0.08): Chosen['habits'] => ({
  ...NO_SLIPS,
  ...{ mischief, only },
});
const COMMANDS = 1200;
/** A change in the program turns a world another way: then the next seeds are tried. */
const SEEDS_MOST = 10;

type World = Chosen & { readonly seed: number };

const at = (seed: number, sets: readonly string[], habits: Chosen['habits'] = BUSY): World => ({
  ...{ seed, which: 'asItIs', sets, habits },
});

const TWO = ['16', '8'];
const HEAVY = ['5', '19', '32', '11'];
const THREE = ['16', '15', '17'];

const WORLDS: Readonly<Record<keyof typeof CALL_RULES, World>> = {
  held: at(1, ['9', '11'], CALM),
  locked: at(1, THREE, given('lookAgain')),
  lockLimit: at(1, THREE, given('doubtLock')),
  collar: at(1, THREE, given('lookAgain')),
  dropZone: at(1, THREE, CALM),
  oneGallery: at(1, HEAVY, CALM),
  neighbours: at(1, THREE, CALM),
  clearWay: at(1, THREE, given('goAway')),
  coupled: at(1, ['23', '27'], CALM),
  outOfUse: at(1, THREE, given('tag', 0.03)),
  keepOut: { seed: 1, which: 'keepOut', sets: ['15', '16'], habits: CALM },
  known: at(1, THREE, { ...BUSY, mischief: 0.4 }),
  register: at(1, TWO, given('askAnything')),
  limits: at(1, ['8', '16', '29'], given('carryOff', 0.01)),
  nobody: { seed: 1, which: 'person', sets: ['17', '18'], habits: CALM },
  expects: at(1, TWO),
  taken: at(1, TWO),
  explained: at(1, TWO),
  sameFold: at(1, TWO),
  read: at(1, HEAVY, { ...CALM, skips: 0.5 }),
  twoPeople: at(3, TWO),
  stopped: at(1, TWO, given('stop', 0.02)),
  judged: at(1, TWO),
  right: at(1, THREE),
};

const NAMES = Object.keys(CALL_RULES) as readonly (keyof typeof CALL_RULES)[];

/** Runs the worlds of one rule, by its number; throws where a rule is broken. */
export const runPlantedWorlds = (id: string): void => {
  const rule = NAMES.find((name) => CALL_RULES[name].id === id);
  if (rule === undefined) throw new Error(`there is no rule ${id}`);
  const { seed, ...chosen } = WORLDS[rule];
  for (let next = 0; next < SEEDS_MOST; next += 1) {
    runCallWorld(seed + next, COMMANDS, inMemory(), chosen);
  }
};
