/**
 * One straight piece of the way, run through exactly: the force along the way is a straight line in
 * x, and so is the mass that moves. Nothing is stepped through time.
 *
 *     mass that stays, or leaves with its speed (a cloth that lands):   m·v·dv/dx = N
 *     mass that joins from rest (a cloth picked up):                    v·d(m·v)/dx = N
 *
 *     N  N   net    drive less friction and hold, at x = 0; slope netSlope
 *     m  kg  mass   at x = 0; slope massSlope
 *     v  m/s        speed of the batten, never below zero
 *     x  m          travelled on this piece
 */
import { crossing } from '#numerics';
import { integralFromRoot } from './quadrature.ts';

export type Piece = {
  readonly lengthM: number;
  readonly netN: number;
  readonly netSlope: number;
  readonly massKg: number;
  readonly massSlope: number;
};

export type Passage = {
  /** Less than the length where it came to rest. */
  readonly travelledM: number;
  readonly speedMs: number;
  /** Without end where it creeps up to a balance that does not hold. */
  readonly timeS: number;
};

/** To its end or to rest, and as it was where the force turned, if it got there. */
export type Crossing = { readonly end: Passage; readonly turn: Passage | null };

const netAt = ({ netN, netSlope }: Piece, x: number): number => netN + netSlope * x;
const massAt = ({ massKg, massSlope }: Piece, x: number): number => massKg + massSlope * x;

/** From one speed to the next, or to rest. */
export const pass = (piece: Piece, speedMs: number): Crossing => {
  const turnM = -piece.netN / piece.netSlope;
  const turns = turnM > 0 && turnM < piece.lengthM;
  if (!turns) return { end: passPart(piece, speedMs), turn: null };
  const turn = passPart(cut(piece, 0, turnM), speedMs);
  if (turn.travelledM < turnM || turn.speedMs === 0) return { end: turn, turn: null };
  const rest = cut(piece, turnM, piece.lengthM);
  const then = passPart(rest, turn.speedMs);
  const end = {
    // The whole of it, where the sum of two parts may miss the last place.
    travelledM: then.travelledM < rest.lengthM ? turnM + then.travelledM : piece.lengthM,
    speedMs: then.speedMs,
    timeS: turn.timeS + then.timeS,
  };
  return { end, turn };
};

const cut = (piece: Piece, fromM: number, toM: number): Piece => ({
  ...piece,
  lengthM: toM - fromM,
  netN: netAt(piece, fromM),
  massKg: massAt(piece, fromM),
});

/** A piece on which the force does not turn, so that the speed only grows or only falls. */
const passPart = (part: Piece, speedMs: number): Passage => {
  const { lengthM, massSlope } = part;
  const restM = restAfter(part, speedMs);
  const travelledM = restM ?? lengthM;
  if (travelledM === 0) return { travelledM, speedMs: restM === null ? speedMs : 0, timeS: 0 };
  const endMs = restM === null ? Math.sqrt(Math.max(0, squareAfter(part, speedMs, lengthM))) : 0;
  const run: Run = { part, travelledM, speedMs, endMs };
  return { travelledM, speedMs: endMs, timeS: massSlope === 0 ? timeEven(run) : timeUneven(run) };
};

/**
 * Square of the speed at x, from the speed at 0. Also for x below zero, back along the piece.
 *
 *     leaving   v² = v0² + 2·∫ N/m dx        joining   (m·v)² = (m0·v0)² + 2·∫ m·N dx
 *
 * Source  the two laws above, integrated once
 */
const squareAfter = (part: Piece, speedMs: number, x: number): number =>
  part.massSlope > 0
    ? momentumSquare(part, speedMs, x) / massAt(part, x) ** 2
    : speedMs ** 2 + 2 * netPerMass(part, x);

const momentumSquare = (part: Piece, speedMs: number, x: number): number => {
  const { netN, netSlope, massKg, massSlope } = part;
  const work =
    massKg * netN +
    ((massKg * netSlope + massSlope * netN) / 2) * x +
    (massSlope * netSlope * (x * x)) / 3;
  return (massKg * speedMs) ** 2 + 2 * x * work;
};

/** ∫ N/m dx from 0 to x, with the logarithm written so that a mass that hardly changes is exact. */
const netPerMass = ({ netN, netSlope, massKg, massSlope }: Piece, x: number): number => {
  const grown = (massSlope * x) / massKg;
  const first = grown === 0 ? 1 : Math.log1p(grown) / grown;
  return (x / massKg) * (netN * first + netSlope * x * secondOf(grown));
};

/** Below this the difference loses more places than the series leaves out. */
const SMALL = 0.05;
const TERMS = 14;

/** (1 − ln(1 + e)/e) / e, which is a half where e is nothing. */
const secondOf = (grown: number): number => {
  if (Math.abs(grown) > SMALL) return (1 - Math.log1p(grown) / grown) / grown;
  let [sum, power] = [0, 1];
  for (let term = 0; term < TERMS; term++) {
    sum += power / (term + 2);
    power *= -grown;
  }
  return sum;
};

/** Where the set comes to rest on a part; null where it gets to the end. */
const restAfter = (part: Piece, speedMs: number): number | null => {
  const { lengthM, netN, netSlope, massKg, massSlope } = part;
  // In its middle, for at an end the force may be a rounding of nothing.
  if (netAt(part, lengthM / 2) >= 0) return null;
  if (speedMs === 0) return 0;
  if (squareAfter(part, speedMs, lengthM) > 0) return null;
  if (massSlope === 0) {
    const root = Math.sqrt(Math.max(0, netN ** 2 - netSlope * massKg * speedMs ** 2));
    return Math.min(lengthM, (massKg * speedMs ** 2) / (root - netN));
  }
  const joins = massSlope > 0;
  return crossing(
    (x) => (joins ? momentumSquare(part, speedMs, x) : squareAfter(part, speedMs, x)),
    (x) => 2 * netAt(part, x) * (joins ? massAt(part, x) : 1 / massAt(part, x)),
    { from: 0, to: lengthM },
  );
};

type Run = {
  readonly part: Piece;
  readonly travelledM: number;
  readonly speedMs: number;
  readonly endMs: number;
};

/**
 * Time over a part whose mass stays, by the closed form of m·x'' = N + N'·x.
 *
 *     N' = 0   t = 2·x / (v0 + v1)
 *     N' > 0   t = ln[(v1 + y1) / (v0 + y0)] / w      away from a balance: grows like e^(w·t)
 *     N' < 0   t = angle from (y0, v0) to (y1, v1) / w   about a balance: swings
 *
 *     w  1/s  √(|N'| / m)        y  m/s  N / (m·w)
 *
 * Source  solution of the linear equation; where the force slows the set, run backwards in time
 */
const timeEven = ({ part, travelledM, speedMs, endMs }: Run): number => {
  const { netN, netSlope, massKg } = part;
  if (netSlope === 0) return (2 * travelledM) / (speedMs + endMs);
  const perS = Math.sqrt(Math.abs(netSlope) / massKg);
  const [y0, y1] = [netN, netAt(part, travelledM)].map((net) => net / (massKg * perS));
  const [from, to] = [y0 ?? 0, y1 ?? 0];
  const gain = (2 * travelledM * (netN + (netSlope * travelledM) / 2)) / massKg;
  const gained = gain / (speedMs + endMs);
  const apart = perS * travelledM;
  if (netSlope < 0) {
    const turned = gained * from + speedMs * apart;
    return Math.atan2(turned, from * to + speedMs * endMs) / perS;
  }
  const drives = from + to >= 0;
  const grown = drives ? (gained + apart) / (speedMs + from) : (apart - gained) / (endMs - to);
  return Math.log1p(grown) / perS;
};

/**
 * Time over a part whose mass changes, ∫ dx/v, from the end at which the set is slowest: there v
 * may start as √x.
 */
const timeUneven = ({ part, travelledM, speedMs, endMs }: Run): number => {
  const grows = endMs >= speedMs;
  const joins = part.massSlope > 0;
  // Joining mass slows a set that is driven: then neither end need be the slowest, and both are
  // above zero or the first one is the start.
  const fromStart = grows || (joins && netAt(part, travelledM / 2) > 0);
  const base = fromStart ? part : cut(part, travelledM, part.lengthM);
  const [slowMs, sign] = fromStart ? [speedMs, 1] : [endMs, -1];
  return integralFromRoot((x) => 1 / Math.sqrt(squareAfter(base, slowMs, sign * x)), travelledM);
};
