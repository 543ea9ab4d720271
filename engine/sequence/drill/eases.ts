/** What either answer of each pull says of the masses in doubt. */
import { GRAVITY, kilograms, newtons } from '#quantities';
import type { Pulled } from './pulls-on-stop.ts';
import type { StopLoad } from './stop-loads.ts';
import type { DrillEase, MassRange } from './types.ts';
import type { Weighed } from './weighed-items.ts';

type Offs = { readonly leastN: number; readonly mostN: number };

/**
 * Each pull from the base load on, with what is known before it: that it stayed at all before.
 *
 *     it stays under P:  U ≥ P − f        it lifts under P:  U ≤ P
 *
 * Source  statics of the hand line; when it lifts, friction was against the pull too, and a bound
 *         that leaves it out is the wider one
 */
export const easesOf = (
  loads: readonly StopLoad[],
  { base, most, pullN }: Pulled,
  { frictionN, weighed }: { readonly frictionN: number; readonly weighed: Weighed },
): readonly Omit<DrillEase, 'step'>[] => {
  const eases: Omit<DrillEase, 'step'>[] = [];
  let seenN = Number.NEGATIVE_INFINITY;
  for (const [index, load] of loads.slice(base, most + 1).entries()) {
    const { listedN, doubtN } = load;
    // What a pull has shown stays shown, but for what the new brick may itself be off by.
    seenN -= Math.abs(doubtN - (loads[base + index - 1] ?? load).doubtN);
    const leastN = Math.max(-doubtN, seenN);
    const stays = { leastN: Math.max(leastN, pullN - frictionN - listedN), mostN: doubtN };
    const lifts = { leastN, mostN: Math.min(doubtN, pullN - listedN) };
    eases.push({
      bricks: base + index,
      listedN: newtons(listedN),
      knownN: { least: newtons(listedN + leastN), most: newtons(listedN + doubtN) },
      ifItStays: stays.leastN < stays.mostN ? massRange(stays, load, weighed) : null,
      ifItLifts: massRange(lifts, load, weighed),
    });
    seenN = stays.leastN;
  }
  return eases;
};

/** The masses in doubt, with all the rest at whatever suits them least. */
const massRange = (
  { leastN, mostN }: Offs,
  { doubtN }: StopLoad,
  { listedKg, doubtKg }: Weighed,
): MassRange => {
  const restKg = Math.max(0, doubtN / GRAVITY - doubtKg);
  return {
    leastKg: kilograms(listedKg + Math.max(-doubtKg, leastN / GRAVITY - restKg)),
    mostKg: kilograms(listedKg + Math.min(doubtKg, mostN / GRAVITY + restKg)),
  };
};
