import { type Finding, measure, type Place } from '#findings';
import type { LineSet } from '#house';
import { isAbove, isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseRule, SetRule } from '../rule.ts';
import { type ListedMass, massesOfItem, massesOfSet } from './listed-masses.ts';
import { BANDS } from './plausible-bands.ts';

/**
 * UNI-001: every mass lies in the band for its kind. Outside it, the unit is asked for; nothing
 * is ever converted unasked (C87). What a whole type of set lists is asked once.
 */
export const houseOutsideBand: HouseRule = ({ house }) => [
  ...house.brickKinds.flatMap(({ id, mass }) =>
    mass.known
      ? askedOf([{ what: `brick ${id}`, value: mass.value, band: 'brick', like: null }], {
          brickKind: id,
        })
      : [],
  ),
  ...firstOfEach(house.lineSets).flatMap(({ lineSet, masses }) =>
    askedOf(masses, { set: lineSet.id }),
  ),
];

export const itemOutsideBand: SetRule = ({ set: { hang, lineSet } }) =>
  (hang?.items ?? []).flatMap((item) =>
    askedOf(massesOfItem(item, lineSet), { set: lineSet.id, item: item.id }),
  );

/** Sets of one type share their values: each mass of a type is looked at on its first set. */
const firstOfEach = (lineSets: readonly LineSet[]) => {
  const seen = new Set<string>();
  return lineSets.map((lineSet) => ({
    lineSet,
    masses: massesOfSet(lineSet).filter(({ what, value }) => {
      const key = `${lineSet.typeId} ${what} ${value}`;
      const isFirst = !seen.has(key);
      seen.add(key);
      return isFirst;
    }),
  }));
};

const askedOf = (masses: readonly ListedMass[], at: Place): readonly Finding[] =>
  masses.flatMap(({ what, value, band }) => {
    const { low, high, kind, why, source } = BANDS[band];
    const isLow = isBelow(value, low);
    if (!isLow && !isAbove(value, high)) return [];
    return [
      raise('UNI-001', {
        at,
        measured: measure(value, kind),
        limit: measure(isLow ? low : high, kind),
        limitSource: source,
        facts: { what, low: measure(low, kind), high: measure(high, kind), why },
      }),
    ];
  });
