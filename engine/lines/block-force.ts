import { GRAVITY, type Newtons, newtons, radians } from '#quantities';
import { blockPlaces } from './run.ts';
import type { BlockForce, LineRun, Place } from './types.ts';

/** One leg of a line: it pulls its block along itself. */
type Pull = { readonly tensionN: number; readonly way: Place };

const DOWN: Place = { x: 0, z: -1 };

/** Way from one place towards the first of the others that is not the same place. */
const wayTo = (from: Place, others: readonly Place[]): Place => {
  for (const { x, z } of others) {
    const lengthM = Math.hypot(x - from.x, z - from.z);
    if (lengthM > 0) return { x: (x - from.x) / lengthM, z: (z - from.z) / lengthM };
  }
  return DOWN;
};

/** Angle through which a line turns that arrives along one leg and leaves along another. */
const turnOf = (one: Place, other: Place): number =>
  Math.PI -
  Math.atan2(Math.abs(one.x * other.z - one.z * other.x), one.x * other.x + one.z * other.z);

const added = (pulls: readonly Pull[], towardsX: number, turnRad: number): BlockForce => {
  const alongX = pulls.reduce((sumN, { tensionN, way }) => sumN + tensionN * way.x, 0);
  const alongZ = pulls.reduce((sumN, { tensionN, way }) => sumN + tensionN * way.z, 0);
  return {
    resultant: newtons(Math.hypot(alongX, alongZ)),
    horizontal: newtons(alongX * towardsX),
    vertical: newtons(-alongZ),
    turn: radians(turnRad),
  };
};

/** 1 where the head block is to stage left of the line, else −1. */
const headSide = ({ lineX, headX }: LineRun): number => (headX >= lineX ? 1 : -1);

/**
 * Force of a line on its loft block.
 *
 *     R = 2·T·sin(θ/2)          θ = 90° − the angle at which the run climbs to the next block
 *
 *     T  N  tensionN  at the loft block
 *
 * The sum of two equal pulls, one down to the batten and one along the run. For a level run it is
 * √2·T at 45°; a head block that stands higher than the loft blocks makes it smaller.
 *
 * Source  equilibrium of the sheave; published as a table of block factors (VAL-LIN-08);
 *         the-job.md C40
 * Omits   friction of the sheave (a part in fifty either way); the weight of the block
 * Check   VAL-LIN-08
 */
export const loftBlockForce = (run: LineRun, tensionN: number): BlockForce =>
  forceAt(run, 0, tensionN);

/** The same on each mule block of a line, by its own turn; tension at each, in their order. */
export const muleBlockForces = (
  run: LineRun,
  tensionsN: readonly number[],
): readonly BlockForce[] => tensionsN.map((tensionN, index) => forceAt(run, index + 1, tensionN));

const forceAt = (run: LineRun, index: number, tensionN: number): BlockForce => {
  const places = blockPlaces(run);
  const here = places[index] ?? { x: run.headX, z: run.headZ };
  const back = index === 0 ? DOWN : wayTo(here, places.slice(0, index).reverse());
  const on = wayTo(here, places.slice(index + 1));
  const pulls = [back, on].map((way) => ({ tensionN, way }));
  return added(pulls, headSide(run), turnOf(back, on));
};

export type HeadBlockTask = {
  /** The lines of the set, each with its tension at the head block. */
  readonly lines: readonly { readonly run: LineRun; readonly tension: number }[];
  /** The whole hand line: it hangs on the head block by both its legs. */
  readonly handLineMass: number;
  /** Tension in each leg from a pull that goes over the head block, besides its own weight. */
  readonly handLineTension?: number;
};

/**
 * Force of all lines of a set on its head block, and on the steel below it.
 *
 *     F = Σ T_i·(u_i + down) + (m·g + 2·P)·down          and on the steel with double purchase
 *                                                        Σ T_i·down more: the dead ends
 *     T_i  N   lines[].tension   at the head block
 *     u_i  -   unit vector from the head block back along the run of line i
 *     m    kg  handLineMass
 *     P    N   handLineTension
 *
 * Source  equilibrium of the sheave; the-job.md C39
 * Omits   friction of the sheave; the weight of the block
 * Check   VAL-LIN-08: n level lines give √2·Σ T; the-job.md 3E
 */
export const headBlockForce = ({
  lines,
  handLineMass,
  handLineTension = 0,
}: HeadBlockTask): { readonly block: BlockForce; readonly steel: BlockForce } => {
  const legs = lines.map(({ run, tension }) => {
    const places = blockPlaces(run);
    const head = { x: run.headX, z: run.headZ };
    return { run, tensionN: tension, way: wayTo(head, places.slice(0, -1).reverse()) };
  });
  const sumN = legs.reduce((sum, { tensionN }) => sum + tensionN, 0);
  const turnRad =
    sumN > 0
      ? legs.reduce((sum, { tensionN, way }) => sum + tensionN * turnOf(way, DOWN), 0) / sumN
      : 0;
  const deadEndsN = legs.reduce(
    (sum, { run, tensionN }) => sum + (run.purchase === 2 ? tensionN : 0),
    0,
  );
  const towardsX = legs[0] === undefined ? 1 : -headSide(legs[0].run);
  const handLineN = handLineMass * GRAVITY + 2 * handLineTension;
  const onBlock = [...legs, { tensionN: sumN + handLineN, way: DOWN }];
  const onSteel = [...onBlock, { tensionN: deadEndsN, way: DOWN }];
  return { block: added(onBlock, towardsX, turnRad), steel: added(onSteel, towardsX, turnRad) };
};

/**
 * Force on an anchor, or on the block that it holds, where a rope turns.
 *
 *     F = 2·T·sin(θ/2)
 *
 *     θ  rad  turnRad  180° with parallel legs, so 2·T; 90° gives √2·T
 *
 * Source  equilibrium of the sheave; the-job.md C45
 * Omits   friction, which lets the pulled leg carry more than T
 * Check   VAL-LIN-08
 */
export const turningBlockForce = ({
  tensionN,
  turnRad,
}: {
  readonly tensionN: number;
  readonly turnRad: number;
}): Newtons => newtons(2 * tensionN * Math.sin(turnRad / 2));
