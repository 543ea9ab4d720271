import type { FloorTotal } from '#assessment';
import { type Finding, type MeasureKind, measure, type Reckoned } from '#findings';
import type { Gallery, Known } from '#house';
import { byKnown, lack, sourceOf } from '../known-values.ts';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseRule, Opinion } from '../rule.ts';
import { worstBy } from '../worst.ts';

/**
 * FLR-001 and FLR-002: bricks, people and tools on a gallery are within what its floor may take:
 * over the whole floor, along one row of bricks, and in courses (C43, C44). As counted that is
 * now. With every show brick that the house owns on it, as late in a strike, it is a caution: they
 * may also come back to more than one gallery.
 */
export const floorLoad: HouseRule = ({ house, assessment }) =>
  house.galleries.flatMap((gallery) => {
    const totals = assessment.totals.floors.filter((one) => one.gallery === gallery.id);
    return totals.flatMap((total) => judgeFloor(gallery, total));
  });

type Kind = Extract<MeasureKind, 'pressure' | 'forcePerLength' | 'count'>;

type Checked = {
  readonly what: string;
  readonly kind: Kind;
  readonly carried: Reckoned<number>;
  readonly limit: Known<number>;
  readonly limitName: string;
};

const checksOf = (gallery: Gallery, total: FloorTotal): readonly Checked[] => [
  {
    what: 'bricks, people and tools over the whole floor',
    kind: 'pressure',
    carried: total.pressure,
    limit: gallery.floorLimit,
    limitName: `floor limit of ${gallery.name}`,
  },
  {
    what: 'bricks in one row along it',
    kind: 'forcePerLength',
    carried: total.lineLoad,
    limit: gallery.lineLoadLimit,
    limitName: `limit of ${gallery.name} along its length`,
  },
  {
    what: 'courses of bricks in one row along it',
    kind: 'count',
    carried: total.courses,
    limit: gallery.coursesAllowed,
    limitName: `courses of bricks allowed on ${gallery.name}`,
  },
];

type Judged = Checked & { readonly value: number; readonly limitSi: number };

/** One finding for a gallery at a time: what is furthest past its limit, or nearest to it. */
const judgeFloor = (gallery: Gallery, total: FloorTotal): readonly Opinion[] => {
  const checks = checksOf(gallery, total);
  const judged = checks.flatMap((check): readonly Judged[] =>
    check.carried.known && check.limit.known
      ? [{ ...check, value: check.carried.value, limitSi: check.limit.value }]
      : [],
  );
  const worst = worstBy(judged.filter(isWorthSaying), ({ value, limitSi }) => value / limitSi);
  return [
    ...checks.flatMap((check) => checkLacks(check, total)),
    ...(worst === undefined ? [] : [against(gallery, total, worst)]),
  ];
};

/** Half a course cannot be put down, so that being near a number of courses says nothing. */
const isWorthSaying = ({ kind, value, limitSi }: Judged): boolean =>
  isAbove(value, kind === 'count' ? limitSi : NEAR_LOAD * limitSi);

const BLOCKS = 'floors of the galleries';

const checkLacks = ({ carried, limit, limitName }: Checked, { when }: FloorTotal) => [
  // What nobody has counted is the record's to miss.
  ...(carried.known || when === 'recorded'
    ? []
    : carried.needs.map((need) => lack(need, BLOCKS, 'house'))),
  ...byKnown(limit, limitName, BLOCKS, () => [], 'house'),
];

const against = (gallery: Gallery, total: FloorTotal, worst: Judged): Finding => {
  const { what, kind, value, limit, limitSi } = worst;
  const isOver = isAbove(value, limitSi);
  const isNow = total.when === 'recorded';
  return raise(isOver ? 'FLR-001' : 'FLR-002', {
    at: { gallery: gallery.id },
    level: isOver && isNow ? 'stop' : isOver || isNow ? 'caution' : 'note',
    measured: measure(value, kind),
    limit: measure(isOver ? limitSi : NEAR_LOAD * limitSi, kind),
    limitSource: isOver && limit.known ? sourceOf(limit) : NEAR_SOURCE,
    facts: {
      gallery: gallery.name,
      when: isNow ? 'as counted' : 'with every show brick of the house on it',
      what,
      full: measure(limitSi, kind),
      bricks: total.bricks.known ? measure(total.bricks.value, 'mass') : 'not known',
    },
  });
};

const NEAR_SOURCE = '90 % of the limit: common practice, no source';
