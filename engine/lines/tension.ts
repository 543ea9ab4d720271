import type { Bearing } from '#house';
import { GRAVITY, type Newtons, newtons } from '#quantities';
import { blockPlaces } from './run.ts';
import type { LineRun } from './types.ts';

/**
 * By how much each block makes the tension larger on the side that is pulled.
 *
 * Source  published: Wire Rope Users Manual, 4th edition, p. 88: 1.09 for plain bearings and 1.04
 *         for rolling ones. Other pages give 1.02 for a modern rope on a good sheave, and 1.02 to
 *         1.10 in all: no block is exactly this
 */
export const BLOCK_FRICTION: Readonly<Record<Bearing, number>> = { plain: 1.09, rolling: 1.04 };

/** Which way the batten travels, and what each block on the way takes. */
export type BlockFriction = { readonly bearing: Bearing; readonly batten: 'out' | 'in' };

export type BlockTension = {
  readonly block: 'loft' | 'mule' | 'head' | 'arbor';
  /** On the batten's side of it, and beyond it. */
  readonly before: Newtons;
  readonly after: Newtons;
};

export type RunTension = {
  readonly batten: Newtons;
  /** At the loft block and the head block, on the batten's side of each. */
  readonly loft: Newtons;
  readonly head: Newtons;
  /** Where the line meets the arbor; with double purchase on the leg that moves. */
  readonly arbor: Newtons;
  /** The largest anywhere along the line: what its strength must hold. */
  readonly most: Newtons;
  readonly blocks: readonly BlockTension[];
};

/**
 * Tension along one line, from the batten over every block to the arbor.
 *
 *     T(z) = T_0 + w·g·(z − z_e)          over a block: times K, where friction is asked for
 *
 *     T_0  N     tensionN       at the batten
 *     w    kg/m  massPerLength
 *     z_e  m     run.wireEndZ
 *     K    -     1 at rest; a block multiplies when the batten goes out, divides when it comes in
 *
 * The way that a line takes does not matter, only the height: the highest point carries most.
 *
 * Source  equilibrium of the wire; the-job.md C31. K: BLOCK_FRICTION
 * Omits   friction unless it is asked for: at rest it can hold either way; sag of the run
 * Check   VAL-LIN-09; with double purchase the last block is the arbor's
 */
export const tensionAlongRun = ({
  run,
  tensionN,
  massPerLengthKg,
  friction,
}: {
  readonly run: LineRun;
  readonly tensionN: number;
  readonly massPerLengthKg: number;
  readonly friction?: BlockFriction;
}): RunTension => {
  const places = blockPlaces(run).map(({ z }) => z);
  const heights = run.purchase === 2 ? [...places, run.attachZ] : places;
  const factor = factorOf(friction);
  const blocks: BlockTension[] = [];
  let nowN = tensionN;
  let nowZ = run.wireEndZ;
  const climbTo = (z: number): number => nowN + massPerLengthKg * GRAVITY * (z - nowZ);
  for (const [index, z] of heights.entries()) {
    const before = newtons(climbTo(z));
    const after = newtons(before * factor);
    blocks.push({ block: kindOf(index, places.length), before, after });
    [nowN, nowZ] = [after, z];
  }
  const at = (kind: BlockTension['block']): number =>
    blocks.find(({ block }) => block === kind)?.before ?? tensionN;
  const arborN = run.purchase === 2 ? at('arbor') : climbTo(run.attachZ);
  const allN = [tensionN, arborN, ...blocks.flatMap(({ before, after }) => [before, after])];
  return {
    batten: newtons(tensionN),
    loft: newtons(at('loft')),
    head: newtons(at('head')),
    arbor: newtons(arborN),
    most: newtons(Math.max(...allN)),
    blocks,
  };
};

/**
 * The same at rest, where only heights count: at the loft block, at the head block on the batten's
 * side, and the largest along the line.
 *
 * Source  T(z) = T_0 + w·g·(z − z_e), as above with K = 1
 * Check   tension.test.ts: equal to tensionAlongRun without friction
 */
export const tensionsAtRest = (
  { loftZ, headZ, wireEndZ, attachZ, mules }: LineRun,
  tensionN: number,
  massPerLengthKg: number,
): { readonly loft: Newtons; readonly head: Newtons; readonly most: Newtons } => {
  const perM = massPerLengthKg * GRAVITY;
  let highestZ = Math.max(wireEndZ, attachZ, loftZ, headZ);
  for (const { z } of mules ?? []) highestZ = Math.max(highestZ, z);
  return {
    loft: newtons(tensionN + perM * (loftZ - wireEndZ)),
    head: newtons(tensionN + perM * (headZ - wireEndZ)),
    most: newtons(tensionN + perM * (highestZ - wireEndZ)),
  };
};

const factorOf = (friction: BlockFriction | undefined): number => {
  if (friction === undefined) return 1;
  const factor = BLOCK_FRICTION[friction.bearing];
  return friction.batten === 'out' ? factor : 1 / factor;
};

const kindOf = (index: number, inAir: number): BlockTension['block'] => {
  if (index === 0) return 'loft';
  if (index === inAir) return 'arbor';
  return index === inAir - 1 ? 'head' : 'mule';
};
