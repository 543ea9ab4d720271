import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { bearsLine, type LineBearing } from '#rules';
import type { Step } from '#state';

/** Whether batten, lift lines and blocks bear the lines of an order; null where it rigs none. */
export type Bearing = LineBearing | { readonly needs: readonly string[] } | null;

/** Every line is taken to be pulled with all that it is rated for, and one at a time. */
export const bearingOf = (house: House, set: SetAssessment, steps: readonly Step[]): Bearing => {
  const ratings = steps.flatMap((step) =>
    step.act === 'rig' && step.restraint.kind === 'bullLine' ? [step.restraint.rating ?? 0] : [],
  );
  return ratings.length === 0 ? null : bearsLine(house, set, Math.max(...ratings));
};

/** Why the lines of an order may not be rigged; null where all that is asked passes. */
export const whyNotBorne = (bearing: Bearing): string | null => {
  if (bearing === null) return null;
  const lacks = 'needs' in bearing ? bearing.needs : bearing.lacks;
  if ('stops' in bearing && bearing.stops.length > 0) {
    const codes = [...new Set(bearing.stops.map(({ code }) => code))];
    return `batten, lift lines or blocks do not bear the line that is rigged: ${codes.join(', ')}`;
  }
  return lacks.length === 0
    ? null
    : `whether batten, lift lines and blocks bear the line is not known: ${lacks.join(', ')}`;
};
