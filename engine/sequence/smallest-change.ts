import { kilograms, metres } from '#quantities';
import type { OrderPhysics } from '#state';
import type { Trust } from './held-loads.ts';
import { existsWith, type Job, loadsFor, solve } from './job.ts';
import { waysOf } from './least-restraint.ts';
import type { Loads } from './load.ts';
import { goalShortfall } from './shortfall.ts';
import type { BrokenRule, SmallestChange } from './types.ts';

export type Change = { readonly rule: BrokenRule; readonly change: SmallestChange };

/** More than any house has: a limit taken away. */
const NO_LIMIT = 1e6;

/** Halvings of a stretch of travel: 60 m comes down to a millimetre. */
const HALVINGS = 16;

/** Steps of all tolerances: about a thousandth of them, finer than anybody weighs. */
const DOUBT_STEPS = 1024;

/**
 * What to change so that an order exists where no restraint makes one. Each of the limits that are
 * no holds is taken away by itself; the first that makes an order is named, as small as it can be.
 */
export const smallestChange = (job: Job): Change | null =>
  fewerTolerances(job) ??
  moreStock(job) ??
  moreTravel(job) ??
  longerRod(job) ??
  strongerArbor(job) ??
  oneMoreGallery(job);

/** Any restraint that may be rigged, as strong as anybody could wish; null is none. */
const wishedFor = ({ options }: Job): readonly Trust['extra'][] => [
  null,
  ...waysOf(options.restraint).map((way) => ({ ...way, ratedN: NO_LIMIT, span: null })),
];

/** Whether an order would exist, by staging alone or with any restraint that may be rigged. */
const exists = (job: Job, loads: Loads = loadsFor(job), extras = wishedFor(job)): boolean =>
  goalShortfall(job, loads) === 0 &&
  extras.some((extra) => existsWith(job, loads, extra).order === 'exists');

const withPhysics = (job: Job, change: Partial<OrderPhysics>): Job => ({
  ...job,
  physics: { ...job.physics, ...change },
});

/**
 * Masses better known, where they are the trouble: how much better at least. Each restraint is
 * asked only whether it does with one step of doubt more than those before it, which is the
 * costly answer where it is no; so it is given once and not at every halving.
 */
export const fewerTolerances = (job: Job): Change | null => {
  const loads = loadsFor(job);
  const { doubtShare } = job.options;
  if (doubtShare === 0) return null;
  // Loads weigh the same however well they are known: made once, asked again. What the arbor may
  // weigh is so asked with all the doubt there is, and is for `strongerArbor` to say.
  const known = (step: number, extra: Trust['extra']): boolean => {
    const options = { ...job.options, doubtShare: (doubtShare * step) / DOUBT_STEPS };
    return exists({ ...job, options }, { ...loads, site: { ...loads.site, options } }, [extra]);
  };
  let most = -1;
  for (const extra of wishedFor(job)) {
    if (most + 1 >= DOUBT_STEPS || !known(most + 1, extra)) continue;
    let [enough, not] = [most + 1, DOUBT_STEPS];
    while (not - enough > 1) {
      const middle = (enough + not) >> 1;
      if (known(middle, extra)) enough = middle;
      else not = middle;
    }
    most = enough;
  }
  if (most < 0) return null;
  const share = (doubtShare * most) / DOUBT_STEPS;
  return { rule: 'HOLD', change: { change: 'tolerances', share } };
};

const moreStock = (job: Job): Change | null => {
  const stock = Object.fromEntries(job.physics.bricks.map(({ id }) => [id, NO_LIMIT]));
  const galleries = job.physics.galleries.map((gallery) => ({ ...gallery, stock }));
  if (!exists(withPhysics(job, { galleries }))) return null;
  return { rule: 'STOCK', change: { change: 'stock' } };
};

const moreTravel = (job: Job): Change | null => {
  const { lowStop, highStop } = job.physics;
  const { travel } = job.options;
  if (travel === null) return null;
  const withEnds = (fromM: number, toM: number): boolean =>
    exists({ ...job, options: { ...job.options, travel: { fromM, toM } } });
  if (travel.toM < highStop.heightM && withEnds(travel.fromM, highStop.heightM)) {
    const toM = halved(travel.toM, highStop.heightM, (end) => withEnds(travel.fromM, end));
    return { rule: 'TRAVEL', change: { change: 'higher', to: metres(toM) } };
  }
  if (travel.fromM > lowStop.heightM && withEnds(lowStop.heightM, travel.toM)) {
    const toM = halved(travel.fromM, lowStop.heightM, (end) => withEnds(end, travel.toM));
    return { rule: 'TRAVEL', change: { change: 'lower', to: metres(toM) } };
  }
  return null;
};

/** The nearest end that will do, from one that will not and one that will. */
const halved = (notM: number, enoughM: number, isEnough: (endM: number) => boolean): number => {
  let [not, enough] = [notM, enoughM];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (not + enough) / 2;
    if (isEnough(middle)) enough = middle;
    else not = middle;
  }
  return enough;
};

const longerRod = (job: Job): Change | null => {
  if (!exists(withPhysics(job, { rodM: NO_LIMIT }))) return null;
  const { rodM } = job.physics;
  const longM = halved(rodM, 2 * rodM + 1, (each) => exists(withPhysics(job, { rodM: each })));
  return { rule: 'ROD', change: { change: 'rod', by: metres(longM - rodM) } };
};

const strongerArbor = (job: Job): Change | null => {
  const { arborMassLimitKg: limitKg } = job.physics;
  const { site, first, changed } = loadsFor(job);
  // Where it carries all that may ever lie on it, it is in nobody's way, and nothing is searched.
  if (changed(first, { counts: site.counts.most }).fitsArbor) return null;
  const withLimit = (each: number): boolean => exists(withPhysics(job, { arborMassLimitKg: each }));
  if (limitKg === null || !withLimit(NO_LIMIT)) return null;
  const enoughKg = halved(limitKg, doubledUntil(limitKg, withLimit), withLimit);
  return { rule: 'MASS', change: { change: 'arbor', by: kilograms(enoughKg - limitKg) } };
};

/** The first of twice, four times, eight times and so on that will do. */
const doubledUntil = (start: number, isEnough: (value: number) => boolean): number => {
  let value = Math.max(1, 2 * start);
  while (!isEnough(value)) value *= 2;
  return value;
};

/** Someone who reaches the arbor wherever it is; and at which heights that was used. */
const oneMoreGallery = (job: Job): Change | null => {
  const stock = Object.fromEntries(job.physics.bricks.map(({ id }) => [id, NO_LIMIT]));
  const id = 'anywhere';
  const gallery = { id, name: id, floorM: 0, reachFromM: -NO_LIMIT, reachToM: NO_LIMIT, stock };
  const wider = withPhysics(job, { galleries: [...job.physics.galleries, gallery] });
  const loads = loadsFor(wider);
  const answer = solve(wider, loads, null);
  if (answer.is !== 'found') return null;
  const heights: number[] = [];
  const index = wider.physics.galleries.length - 1;
  const { trail } = answer.solved;
  for (let each = trail.before === null ? null : trail; each !== null; each = each.before) {
    if (each.deed.deed !== 'brick' || each.deed.gallery !== index) continue;
    const { span } = each.place;
    heights.push((span.lo + span.hi) / 2);
  }
  if (heights.length === 0) return null;
  return {
    rule: 'REACH',
    change: {
      change: 'gallery',
      from: metres(Math.min(...heights)),
      to: metres(Math.max(...heights)),
    },
  };
};
