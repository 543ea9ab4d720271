/** Stages written by hand on the six-line set with a lamp of 200 lb, and how they are told. */
import { FOOT, metres, POUND_FORCE } from '#quantities';
import type { Standing, Step } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { clearItem, ft, hung, setWith, words } from './example-jobs.contract.ts';
import { heldLoads, type Trust } from './held-loads.ts';
import { type LoadChange, loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { siteOf } from './site.ts';
import type { Stage } from './stages.ts';
import { told } from './told.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const LAMP = setWith({ lamp: clearItem(200) });

type Asked = {
  readonly start?: Partial<Standing>;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
  readonly extra?: Partial<NonNullable<Trust['extra']>>;
};

/** The lamp hangs, with 8 F, batten in; the lock is trusted with 50 lb where the run is closed. */
export const worldOf = ({ start = {}, goal = {}, options = {}, extra }: Asked) => {
  const whole: OrderGoal = { items: {}, bricks: { F: 16 }, height: null, service: 'in', ...goal };
  const loads = loadsOf(
    siteOf(examplePhysics(LAMP), { ...hung(LAMP, 3, [['F', 8]]), ...start }, whole, {
      ...USUAL,
      doubtShare: 0,
      neatM: FOOT,
      ...options,
    }),
  );
  const line = { resists: 'out', ratedN: 200 * POUND_FORCE, span: null, as: 'line' } as const;
  const held = heldLoads(loads, {
    lockN: 50 * POUND_FORCE,
    exposedJ: Number.POSITIVE_INFINITY,
    extra: extra === undefined ? null : { ...line, ...extra },
  });
  return { loads, held };
};

export type Leg = {
  readonly step: Step | null;
  readonly load?: LoadChange;
  readonly order?: string;
};

export const flyTo = (heightFt: number): Leg => ({
  step: { act: 'fly', to: metres(ft(heightFt)) },
});

export const plates = (
  act: 'add' | 'remove',
  count: number,
  full: number,
  gallery = 'upper',
): Leg => ({
  step: { act, kind: 'F', count, gallery },
  load: { counts: [full] },
  order: '0'.repeat(full),
});

/** Each leg leaves the set as the one before it but for what it changes. */
export const tellLegs = (asked: Asked, legs: readonly Leg[]) => {
  const { loads, held } = worldOf(asked);
  const { start } = loads.site;
  const stages: Stage[] = [
    {
      step: null,
      load: loads.first,
      order: loads.site.order.join(''),
      heightM: start.height,
      way: null,
      gallery: null,
      isAtBatten: false,
    },
  ];
  for (const { step, load = {}, order } of legs) {
    const before = stages.at(-1);
    if (before === undefined) continue;
    const heightM = step?.act === 'fly' ? step.to : before.heightM;
    const [lo, hi] = [Math.min(before.heightM, heightM), Math.max(before.heightM, heightM)];
    stages.push({
      step,
      load: loads.changed(before.load, load),
      order: order ?? before.order,
      heightM,
      way: step?.act === 'fly' ? { lo, hi } : null,
      gallery: step !== null && 'gallery' in step ? step.gallery : null,
      isAtBatten: step?.act === 'attach' || step?.act === 'release',
    });
  }
  return told(loads, held, stages);
};

/** The steps in a word or three. */
export const tellWords = (asked: Asked, legs: readonly Leg[]): readonly string[] => {
  const { steps } = tellLegs(asked, legs);
  return words({
    steps,
    states: [],
    restraint: null,
    exposedJ: null,
    searched: 0,
    optimal: true,
  });
};
