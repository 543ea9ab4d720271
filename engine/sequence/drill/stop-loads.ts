/** The set on its low stop with one brick after the other on, as far as bricks go on at all. */
import type { OrderGallery, OrderPhysics, Standing } from '#state';
import type { PlateLimit } from './types.ts';

export type StopLoad = {
  /** With every mass as it is written, N; and the half width of what that may be off by. */
  readonly listedN: number;
  readonly doubtN: number;
};

/** Loads by the count of bricks that are on, from none; and what ends them. */
export type StopLoads = {
  readonly loads: readonly [StopLoad, ...StopLoad[]];
  readonly limit: PlateLimit;
};

/** A stack that is just in reach, or just fits the rods, must not be lost to rounding. */
const ROUNDING_M = 1e-9;

export const stopLoad = (physics: OrderPhysics, standing: Standing): StopLoad => {
  const { highN, doubtN } = physics.at(standing);
  return { listedN: highN, doubtN };
};

export const stopLoads = (
  physics: OrderPhysics,
  hung: Standing,
  { kind, gallery }: { readonly kind: string; readonly gallery: OrderGallery },
): StopLoads => {
  const stock = gallery.stock[kind] ?? 0;
  const bareTopM = physics.topOfStackM({ ...hung, stack: [] });
  const loads: [StopLoad, ...StopLoad[]] = [stopLoad(physics, hung)];
  let stack = hung.stack;
  for (let count = 1; count <= stock; count += 1) {
    if (!isInReach(physics.topOfStackM({ ...hung, stack }), gallery)) {
      return { loads, limit: 'reach' };
    }
    stack = [...stack, { kind, count: 1, tag: 'show' }];
    const heightM = physics.topOfStackM({ ...hung, stack }) - bareTopM;
    if (heightM > physics.rodM + ROUNDING_M) return { loads, limit: 'rod' };
    if (isTooHeavy(physics, stack)) return { loads, limit: 'mass' };
    loads.push(stopLoad(physics, { ...hung, stack }));
  }
  return { loads, limit: 'stock' };
};

const ROUNDING_KG = 1e-9;

/** Every brick as heavy as nature may have made it. */
const isTooHeavy = (
  { arborMassLimitKg: limitKg, arborKg }: OrderPhysics,
  stack: Standing['stack'],
): boolean => {
  const { massKg, doubtKg } = arborKg(stack);
  return limitKg !== null && massKg + doubtKg > limitKg + ROUNDING_KG;
};

const isInReach = (topM: number, { reachFromM, reachToM }: OrderGallery): boolean =>
  topM >= reachFromM - ROUNDING_M && topM <= reachToM + ROUNDING_M;
