import { assert } from '#outcome';
import {
  GRAVITY,
  type Joules,
  joules,
  kilograms,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  newtons,
  type Seconds,
  seconds,
} from '#quantities';
import { heightAfter, type Straight, workOver } from './along.ts';
import { type Leg, legsOf, pieceOf } from './legs.ts';
import { type Passage, pass } from './piece.ts';
import type { Contact, Moving, Pull, Travel, Way } from './types.ts';

export type RunawayCase = Travel & {
  readonly moves: Moving;
  /** What a hold drags with, such as a lock that slips; none is 0. */
  readonly hold: number;
  /** Already moving when it is let go. */
  readonly already?: { readonly way: Way; readonly speed: number };
};

/** What the set is doing at one height of its way. */
export type Passing = {
  readonly height: Metres;
  /** Null where it would creep to rest at a balance, without end. */
  readonly time: Seconds | null;
  readonly speed: MetresPerSecond;
};

export type Run = Passing & {
  readonly moves: true;
  readonly way: Way;
  readonly end: 'stop' | 'rest';
  /** At rest on the way: whether it then goes back by itself. */
  readonly goesBack: boolean;
  /** If nothing were lost where pieces land or are picked up. */
  readonly speedAtMost: MetresPerSecond;
  readonly arborSpeed: MetresPerSecond;
  readonly energy: {
    /** Of the motion at the end. */
    readonly kinetic: Joules;
    /** That the imbalance gave, and where it went. */
    readonly released: Joules;
    readonly friction: Joules;
    readonly hold: Joules;
    readonly landed: Joules;
  };
  readonly acceleration: { readonly start: number; readonly end: number };
  /** In the lines at the end, before anything stops them. */
  readonly pull: Pull;
  readonly mass: { readonly moving: number; readonly hanging: number };
  readonly contacts: readonly Contact[];
  /** At every node of curve and mass, and where the force turns: there it is fastest, or nearly. */
  readonly passings: readonly Passing[];
};

export type Still = {
  readonly moves: false;
  readonly why: 'atStop' | 'held' | 'inBalance';
  readonly way: Way | null;
};

/**
 * The motion of a set with nobody in control, from where it is to its stop or to rest.
 *
 *     m·v·dv/dx = D(x) − f(x) − H        m = M + A/r² + lines + blocks
 *
 *     D  N   U coming in, −U going out: piecewise straight with jumps
 *     f  N   friction: a share of the weights that hang at x, and a constant
 *     H  N   hold     what a hold drags with
 *     M  kg  hanging  batten and all on it at x
 *     A  kg  arbor    with its bricks; r purchase: it moves 1/r as far, so it counts A/r²
 *     x  m            travelled by the batten
 *
 * Each stretch is run through by its closed form (piece.ts), so nothing is stepped. Where a piece
 * lands its mass leaves with its speed and the rest keeps theirs; the energy of what landed is
 * lost. Where a piece is picked up from rest the momentum is kept and speed is lost. A cloth does
 * either bit by bit. `speedAtMost` has none of these losses: √(2·(released − friction − hold) / m).
 *
 * Source  Newton's second law; calculations.md section 6, the-job.md C46, C51, C52
 * Holds   the curve covers the travel; f and H as at speed; the lines stay taut
 * Omits   air, the hand line's mass, friction that grows with speed (each slows it); the mass of a
 *         tipping piece counts as it pulls, not as it turns (a few per cent either way); a loom's
 *         loop may keep what counts here as lost (see speedAtMost)
 * Check   VAL-MOT-01 to VAL-MOT-05; against an integrator, VAL-MOT-08
 */
export const runaway = (the: RunawayCase): Run | Still => {
  const starts = waysOf(the).map((way) => ({ way, legs: legsOf(the, way) }));
  for (const { way, legs } of starts) {
    const [first, ...others] = legs;
    const goes = first !== undefined && (the.already !== undefined || first.net.first > 0);
    if (goes) return runOf(the, way, [first, ...others]);
  }
  return stillOf(the, starts);
};

const waysOf = (the: RunawayCase): readonly Way[] =>
  the.already === undefined ? ['in', 'out'] : [the.already.way];

const stillOf = (
  the: RunawayCase,
  starts: readonly { readonly way: Way; readonly legs: readonly Leg[] }[],
): Still => {
  if (the.already !== undefined) return { moves: false, why: 'atStop', way: the.already.way };
  const driven = starts.find(({ legs }) => (legs[0]?.drive.first ?? 0) > 0);
  if (driven !== undefined) return { moves: false, why: 'held', way: driven.way };
  const shut = starts.find(({ legs }) => legs.length === 0);
  const open = starts.find(({ legs }) => legs.length > 0);
  // Not driven the open way, and not in balance: it leans on the stop.
  const leans = shut !== undefined && (open?.legs[0]?.drive.first ?? 0) < 0;
  return leans
    ? { moves: false, why: 'atStop', way: shut.way }
    : { moves: false, why: 'inBalance', way: null };
};

/** What has been gathered on the way. */
type Tally = {
  readonly timeS: number;
  readonly speedMs: number;
  readonly releasedJ: number;
  readonly frictionJ: number;
  readonly travelledM: number;
  readonly contacts: readonly Contact[];
  readonly passings: readonly Passing[];
};

type Arrival = { readonly leg: Leg; readonly passage: Passage; readonly turn: Passage | null };

const arrive = (leg: Leg, speedMs: number): Arrival => {
  const { end, turn } = pass(pieceOf(leg), speedMs);
  return { leg, passage: end, turn };
};

const runOf = (the: RunawayCase, way: Way, [first, ...others]: readonly [Leg, ...Leg[]]): Run => {
  const startMs = the.already?.speed ?? 0;
  const start: Tally = {
    timeS: 0,
    speedMs: startMs,
    releasedJ: 0,
    frictionJ: 0,
    travelledM: 0,
    contacts: [],
    passings: [passing(the.height, 0, startMs)],
  };
  let last = arrive(first, startMs);
  let so = after(start, last);
  for (const leg of others) {
    if (isAtRest(last)) break;
    so = joined(so, last.leg, leg);
    last = arrive(leg, so.speedMs);
    so = after(so, last);
  }
  return endOf(the, way, { so, startMs, first, last });
};

const isAtRest = ({ leg, passage }: Arrival): boolean =>
  passage.speedMs === 0 || passage.travelledM < leg.stretch.lengthM;

const passing = (heightM: number, timeS: number, speedMs: number): Passing => ({
  height: metres(heightM),
  time: Number.isFinite(timeS) ? seconds(timeS) : null,
  speed: metresPerSecond(speedMs),
});

/** A milligram: less than this is what a difference of two masses leaves over. */
const NO_PIECE_KG = 1e-6;

/** Across a height at which mass leaves or joins at once. */
const joined = (so: Tally, before: Leg, next: Leg): Tally => {
  const changeKg = next.hangingKg.first - before.hangingKg.last;
  if (Math.abs(changeKg) < NO_PIECE_KG) return so;
  const picks = changeKg > 0;
  const speedMs = picks ? (so.speedMs * before.movingKg.last) / next.movingKg.first : so.speedMs;
  const contact: Contact = {
    height: metres(next.stretch.fromM),
    is: picks ? 'pickingUp' : 'landing',
    mass: kilograms(Math.abs(changeKg)),
    speedBefore: metresPerSecond(so.speedMs),
    speedAfter: metresPerSecond(speedMs),
  };
  return { ...so, speedMs, contacts: [...so.contacts, contact] };
};

const after = (so: Tally, { leg, passage, turn }: Arrival): Tally => {
  const { stretch, drive, friction } = leg;
  const { travelledM, speedMs } = passage;
  const timeS = so.timeS + passage.timeS;
  const met = (at: Passage): Passing =>
    passing(heightAfter(stretch, at.travelledM), so.timeS + at.timeS, at.speedMs);
  return {
    timeS,
    speedMs,
    releasedJ: so.releasedJ + workOver(drive, stretch, travelledM),
    frictionJ: so.frictionJ + workOver(friction, stretch, travelledM),
    travelledM: so.travelledM + travelledM,
    contacts: so.contacts,
    passings: [...so.passings, ...(turn === null ? [] : [met(turn)]), met(passage)],
  };
};

type Ended = {
  readonly so: Tally;
  readonly startMs: number;
  readonly first: Leg;
  readonly last: Arrival;
};

const endOf = (the: RunawayCase, way: Way, { so, startMs, first, last }: Ended): Run => {
  const { leg, passage } = last;
  const end = so.passings.at(-1);
  assert(end !== undefined, 'a set that moves passes where it starts');
  const isAtStop = leg.stretch.toM === (way === 'in' ? the.lowStop : the.highStop);
  const reaches = isAtStop && passage.travelledM === leg.stretch.lengthM;
  const share = passage.travelledM / leg.stretch.lengthM;
  const here = (line: Straight): number => line.first + (line.last - line.first) * share;
  const movingKg = here(leg.movingKg);
  const holdJ = the.hold * so.travelledM;
  const startJ = (first.movingKg.first * startMs ** 2) / 2;
  const atMostJ = startJ + so.releasedJ - so.frictionJ - holdJ;
  const kineticJ = (movingKg * so.speedMs ** 2) / 2;
  const backN = -here(leg.drive) - here(leg.friction) - the.hold;
  const accelerationMs2 = here(leg.net) / movingKg;
  return {
    ...end,
    moves: true,
    way,
    end: reaches ? 'stop' : 'rest',
    goesBack: !reaches && backN > 0,
    speedAtMost: metresPerSecond(Math.sqrt(Math.max(0, (2 * atMostJ) / movingKg))),
    arborSpeed: metresPerSecond(so.speedMs / the.moves.purchase),
    energy: {
      kinetic: joules(kineticJ),
      released: joules(so.releasedJ),
      friction: joules(so.frictionJ),
      hold: joules(holdJ),
      landed: joules(Math.max(0, atMostJ - kineticJ)),
    },
    acceleration: { start: first.net.first / first.movingKg.first, end: accelerationMs2 },
    pull: pullsOf(the.moves, { way, hangingKg: here(leg.hangingKg), accelerationMs2 }),
    mass: { moving: movingKg, hanging: here(leg.hangingKg) },
    contacts: so.contacts,
    passings: so.passings,
  };
};

/**
 * Pull of all lines on either side while the set runs.
 *
 *     batten  M·(g + a')        arbor  (A/r)·(g − a'/r)        a' upward at the batten
 *
 * Source  Newton's second law for either side by itself; check-values 8.2
 * Omits   the lines' own weight between the two sides, and friction, which is the difference
 */
const pullsOf = (
  { arbor, purchase }: Moving,
  at: { readonly way: Way; readonly hangingKg: number; readonly accelerationMs2: number },
): Pull => {
  const upward = at.way === 'out' ? at.accelerationMs2 : -at.accelerationMs2;
  return {
    batten: newtons(at.hangingKg * (GRAVITY + upward)),
    arbor: newtons((arbor / purchase) * (GRAVITY - upward / purchase)),
  };
};
