import type { Rated } from './held.ts';
import type { Load } from './load.ts';
import type { Site } from './site.ts';
import { pointSpan } from './span.ts';

/** All that is engaged beside the lock with a load, but for a restraint that is only asked for. */
export const ratedBeside = (
  site: Site,
  { tied, onSteel, room }: Pick<Load, 'tied' | 'onSteel' | 'room'>,
): readonly Rated[] => {
  const { lowStop, highStop } = site.physics;
  const all: Rated[] = [
    { resists: 'in', ratedN: lowStop.ratedN, span: pointSpan(lowStop.heightM) },
    { resists: 'out', ratedN: highStop.ratedN, span: pointSpan(highStop.heightM) },
  ];
  if (tied) all.push(...site.tied.rated);
  if (onSteel && site.steelN !== null) {
    all.push({ resists: 'in', ratedN: site.steelN, span: room });
  }
  return all;
};
