/** For the tests of the drill: a header of any weight, and a set of which the truth is known. */
import { FOOT, metres, POUND_FORCE } from '#quantities';
import type { Drill, DrillAsked } from '#sequence';
import type { OrderNode, OrderPhysics, Standing, Step } from '#state';

const ID = 'header';

export const HEADER_ASKED: DrillAsked = {
  items: [ID],
  kinds: ['F'],
  handLinePerBatten: 1,
  callN: 5 * POUND_FORCE,
  anyway: false,
};

export const onLowStop = (pipe: Standing['stack'][number]): Standing => ({
  height: metres(3 * FOOT),
  stack: [pipe],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
});

type Laden = Pick<Standing, 'stack' | 'items'>;

const off = <T extends Laden>(laden: T): T => ({
  ...laden,
  items: { ...laden.items, [ID]: 'away' },
});
const isOn = ({ items }: Pick<Standing, 'items'>): boolean => items[ID] === 'flying';

/** The set with a header of this weight on it instead of its own, give or take a half width. */
export const withHeader = (
  physics: OrderPhysics,
  { weightN, halfN }: { readonly weightN: number; readonly halfN: number },
): OrderPhysics => {
  const shiftN = (laden: Pick<Standing, 'items'>): number => (isOn(laden) ? weightN : 0);
  const node = (each: OrderNode, byN: number): OrderNode => ({
    heightM: each.heightM,
    belowN: each.belowN + byN,
    aboveN: each.aboveN + byN,
    contact: { lowN: each.contact.lowN + byN, highN: each.contact.highN + byN },
    doubtN: each.doubtN + (byN > 0 ? halfN : 0),
  });
  return {
    ...physics,
    at: (standing) => {
      const { lowN, highN, doubtN } = physics.at(off(standing));
      const byN = shiftN(standing);
      return { lowN: lowN + byN, highN: highN + byN, doubtN: doubtN + (byN > 0 ? halfN : 0) };
    },
    curve: (laden) => physics.curve(off(laden)).map((each) => node(each, shiftN(laden))),
    frictionN: (items) => physics.frictionN({}) + (isOn({ items }) ? 0.05 * weightN : 0),
    itemMostN: (id) => (id === ID ? weightN + halfN : 0),
    itemLeastN: (id) => (id === ID ? weightN - halfN : 0),
    contactM: () => null,
  };
};

/** The same set with every mass but the header's exactly as it is written. */
export const onlyHeaderInDoubt = (physics: OrderPhysics, halfN: number): OrderPhysics => ({
  ...physics,
  at: (standing) => ({ ...physics.at(standing), doubtN: isOn(standing) ? halfN : 0 }),
  curve: (laden) =>
    physics.curve(laden).map((each) => ({ ...each, doubtN: isOn(laden) ? halfN : 0 })),
});

/** What nature has chosen: all masses but those of the bricks, each brick, and the friction. */
export type Truth = {
  readonly offN: number;
  readonly brickOffN: readonly number[];
  readonly frictionN: number;
};

export type Drilled = {
  /** As it was done, with what was seen. */
  readonly steps: readonly Step[];
  readonly bricks: number;
  /** True imbalance at each pull, N. */
  readonly imbalancesN: readonly number[];
  readonly outN: number;
  readonly inN: number;
};

/** The drill as a crew does it: pull up to the figure, and stop at the first that lifts. */
export const drilled = (
  { steps, eases, pull }: Drill,
  { offN, brickOffN, frictionN }: Truth,
  handLinePerBatten = 1,
): Drilled | null => {
  const imbalancesN: number[] = [];
  for (const { step, bricks, listedN } of eases) {
    const brickN = brickOffN.slice(0, bricks).reduce((sum, each) => sum + each, 0);
    const trueN = listedN + offN - brickN;
    imbalancesN.push(trueN);
    const liftsAtN = (trueN + frictionN) / handLinePerBatten;
    if (liftsAtN > pull) continue;
    const done = steps.slice(0, step);
    const last = steps[step];
    if (last?.act !== 'ease') return null;
    const end = steps.filter(({ act }, index) => index > step && act === 'reopen');
    return {
      steps: [...done, { ...last, lifted: true }, ...end],
      bricks,
      imbalancesN,
      outN: liftsAtN,
      inN: (frictionN - trueN) / handLinePerBatten,
    };
  }
  return null;
};
