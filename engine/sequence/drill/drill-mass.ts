import { correctedMass, pullTest } from '#balance';
import { GRAVITY, type Kilograms, kilograms, type Newtons } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import { stopLoad } from './stop-loads.ts';
import type { NoDrill } from './types.ts';
import { weighedItems } from './weighed-items.ts';

export type DrillMass = {
  readonly imbalance: Newtons;
  readonly friction: Newtons;
  /** Items that hang in full: their masses together, and what all the rest leaves in doubt. */
  readonly weighs: readonly string[];
  readonly massKg: Kilograms;
  readonly doubtKg: Kilograms;
};

/**
 * What hangs on the stop, weighed by two steady pulls on the hand line, out and in.
 *
 *     m = m_listed + (U_measured − U_listed) / g
 *
 * Source  C25 (`pullTest`, `correctedMass`); the-job.md R8, S10
 * Holds   both pulls steady, with the load of `standing`; batten, arbor and bricks within theirs
 */
export const drillMass = (
  physics: OrderPhysics,
  standing: Standing,
  pulls: { readonly outN: number; readonly inN: number; readonly handLinePerBatten: number },
): DrillMass | NoDrill => {
  const weighed = weighedItems(physics, standing);
  if ('why' in weighed) return weighed;
  const { listedN, doubtN } = stopLoad(physics, standing);
  const { imbalance, friction } = pullTest(pulls);
  const { listedKg, doubtKg, items } = weighed;
  return {
    imbalance,
    friction,
    weighs: items,
    massKg: correctedMass({ listedKg, carriedShare: 1, measuredN: imbalance, listedN }),
    doubtKg: kilograms(Math.max(0, doubtN / GRAVITY - doubtKg)),
  };
};
