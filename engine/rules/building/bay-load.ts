import { type Finding, measure } from '#findings';
import type { Bay } from '#house';
import { lack, sourceOf } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseCase, HouseRule, Opinion } from '../rule.ts';
import { worstBy } from '../worst.ts';
import { type Carrier, heaviestOf, judgeCarrier } from './carried-total.ts';

/**
 * STL-001 and STL-002: all sets of a bay together, hung or bare, put no more on its head-block
 * beam than it may carry, downward and sideways (C41). Nobody at the rail can see this sum.
 */
export const bayLoad: HouseRule = (the) =>
  the.house.bays.flatMap((bay) =>
    carriers(the, bay).flatMap((carrier) =>
      judgeCarrier(carrier, { over: 'STL-001', near: 'STL-002' }),
    ),
  );

/**
 * STL-003: within its limit standing, a bay is within it too when its heaviest set starts or
 * stops. A bay that is past its limit standing is STL-001.
 */
export const bayMoving: HouseRule = (the) =>
  the.house.bays.flatMap((bay) => [...movingLacks(the, bay), ...movingFindings(the, bay)]);

const carriers = ({ assessment }: HouseCase, bay: Bay): readonly Carrier[] => {
  const totals = assessment.totals.bays.filter((one) => one.bay === bay.id);
  return [
    {
      name: `bay ${bay.id}, downward`,
      totals: totals.map(({ when, vertical, wire }) => ({ when, total: vertical, wire })),
      limit: bay.verticalLimit,
      limitName: `vertical limit of bay ${bay.id}`,
      formula: 'trade formulas C39, C41: Σ g · (arbor + hand line)',
    },
    {
      name: `bay ${bay.id}, sideways`,
      totals: totals.map(({ when, horizontal, wire }) => ({ when, total: horizontal, wire })),
      limit: bay.horizontalLimit,
      limitName: `horizontal limit of bay ${bay.id}`,
      formula: 'trade formulas C39, C41: Σ g · arbor / r',
    },
  ];
};

const movingLacks = ({ assessment }: HouseCase, bay: Bay): readonly Opinion[] =>
  assessment.totals.bays
    .filter((one) => one.bay === bay.id && one.when === 'planned')
    .flatMap(({ vertical, moving }) =>
      // Where the standing total is not known either, STL-001 has missed it.
      moving.known || !vertical.known
        ? []
        : moving.needs.map((need) => lack(need, 'bays with a set moving', 'house')),
    );

type Moving = {
  readonly carrier: Carrier;
  readonly set: string;
  readonly movingN: number;
  readonly limitN: number;
  readonly source: string;
};

const movingFindings = (the: HouseCase, bay: Bay): readonly Finding[] => {
  const over = carriers(the, bay).flatMap((carrier, index) => {
    const { limit } = carrier;
    const heaviest = heaviestOf(carrier);
    if (!limit.known || heaviest === undefined || isAbove(heaviest.total.value, limit.value)) {
      return [];
    }
    const worst = worstBy(movingOf(the, bay, index === 0), ({ movingN }) => movingN);
    return worst !== undefined && isAbove(worst.movingN, limit.value)
      ? [{ ...worst, carrier, limitN: limit.value, source: sourceOf(limit) }]
      : [];
  });
  const worst = worstBy(over, ({ movingN, limitN }) => movingN / limitN);
  return worst === undefined ? [] : [movingFinding(the, worst)];
};

const movingOf = ({ assessment }: HouseCase, bay: Bay, isVertical: boolean) =>
  assessment.totals.bays.flatMap(({ bay: id, moving }) =>
    id === bay.id && moving.known
      ? [
          {
            set: moving.value.set,
            movingN: isVertical ? moving.value.vertical : moving.value.horizontal,
          },
        ]
      : [],
  );

const movingFinding = (
  { house }: HouseCase,
  { carrier, set, movingN, limitN, source }: Moving,
): Finding => {
  const { movingShare } = house.rules;
  return raise('STL-003', {
    at: {},
    measured: measure(movingN, 'force'),
    limit: measure(limitN, 'force'),
    limitSource: source,
    facts: {
      carrier: carrier.name,
      moving: set,
      share: movingShare.known ? measure(movingShare.value, 'ratio') : 'not known',
    },
  });
};
