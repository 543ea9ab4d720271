/** Coupled sets within their band, at rest and on the whole way (V9). */
import { measure } from '#findings';
import { isAbove, isBelow } from '../../limits.ts';
import { breach } from '../breach.ts';
import type { Breach } from '../verdict.ts';
import { coupledIn, isFlight, type Moment, sceneOf, setOf } from './moment.ts';
import type { PairToJudge } from './pair-verdict.ts';
import type { Both } from './replay.ts';

type Band = PairToJudge['band'];

const apartOf = ({ first, second }: Both): number => second.height - first.height;

/** How far out of the band, and past which end of it; null within. */
export const outBy = (
  { leastM, mostM }: Band,
  apartM: number,
): { readonly byM: number; readonly endM: number } | null => {
  if (isAbove(apartM, mostM)) return { byM: apartM - mostM, endM: mostM };
  if (isBelow(apartM, leastM)) return { byM: leastM - apartM, endM: leastM };
  return null;
};

export const bandBreaches = (moment: Moment): readonly Breach[] =>
  isFlight(moment.step) ? onTheWay(moment) : atRest(moment);

/** A piece that goes on both, or is on both at the start; other steps at rest change nothing. */
const atRest = (moment: Moment): readonly Breach[] => {
  const { pair, before, after, index } = moment;
  const isNew = index < 0 || coupledIn(pair, before).onBoth.length === 0;
  if (!isNew || coupledIn(pair, after).onBoth.length === 0) return [];
  const apartM = apartOf(after);
  const out = outBy(pair.band, apartM);
  if (out === null) return [];
  return [
    breach(sceneOf(moment, 'first', after), {
      rule: 'ORD-039',
      measured: measure(apartM, 'length'),
      limit: measure(out.endM, 'length'),
      facts: { ...bandFacts(moment), partnerAt: measure(after.second.height, 'length') },
    }),
  ];
};

const bandFacts = (moment: Moment) => ({
  partner: setOf(moment, 'second'),
  least: measure(moment.pair.band.leastM, 'length'),
  most: measure(moment.pair.band.mostM, 'length'),
});

/**
 * Each batten is at the same share of its way at every moment, so how far they are apart is a
 * straight line, and leaves the band where its end does or not at all.
 */
const onTheWay = (moment: Moment): readonly Breach[] => {
  const { pair, before, after } = moment;
  if (coupledIn(pair, before).onBoth.length === 0) return [];
  const [fromM, toM] = [apartOf(before), apartOf(after)];
  const [start, end] = [outBy(pair.band, fromM), outBy(pair.band, toM)];
  if (end === null) return [];
  const isSameEnd = start?.endM === end.endM;
  // Whoever brings them back towards the band has found them out of it: that was said before.
  if (isSameEnd && end.byM < start.byM) return [];
  const share = isSameEnd ? 0 : (end.endM - fromM) / (toM - fromM);
  const wayM = after.first.height - before.first.height;
  return [
    breach(sceneOf(moment, 'first', before), {
      rule: 'ORD-040',
      heightM: after.first.height,
      measured: measure(toM, 'length'),
      limit: measure(end.endM, 'length'),
      facts: {
        ...bandFacts(moment),
        from: measure(before.first.height, 'length'),
        to: measure(after.first.height, 'length'),
        partnerFrom: measure(before.second.height, 'length'),
        partnerTo: measure(after.second.height, 'length'),
        passes: measure(before.first.height + share * wayM, 'length'),
      },
    }),
  ];
};
