import { type Finding, type MeasureKind, measure, type Place } from '#findings';
import type { House } from '#house';
import { GRAVITY } from '#quantities';
import { comparePull, isInTheAir } from '../balance/pull-test-differs.ts';
import { POUNDS_PER_KILOGRAM } from '../limits.ts';
import { raise } from '../raise.ts';
import { type HouseCase, type HouseRule, type SetRule, whenFlown } from '../rule.ts';
import { massesOfItem, massesOfSet } from './listed-masses.ts';
import { BANDS } from './plausible-bands.ts';

/**
 * UNI-002: no mass is another one of a like thing times or divided by 2.2046, as it is when one
 * of them was typed in the wrong unit (C87). Asked, never converted. Compared are units, clamps,
 * hardware and parts of one name over the whole show; battens, lift lines and arbors of a type;
 * kinds of brick by their mass per thickness; a release against its item; and what a pull test
 * says that hangs against what is listed.
 */
export const poundForKilogram: HouseRule = (the) => [
  ...groupsOf(the).flatMap(askedOfGroup),
  ...bricksByThickness(the.house),
];

/** One mass of a group of like ones. */
type Like = {
  readonly what: string;
  readonly value: number;
  readonly kind: MeasureKind;
  readonly at: Place;
};

/** Typed numbers are rounded to three figures or so; half a per cent takes that in. */
const TYPED_SHARE = 0.005;

/** Two pulls by hand are good to a few per cent of what hangs. */
const PULLED_SHARE = 0.03;

const isRatioOfUnits = (one: number, other: number, share: number): boolean => {
  const [small, large] = one < other ? [one, other] : [other, one];
  return small > 0 && Math.abs(large / small / POUNDS_PER_KILOGRAM - 1) <= share;
};

const groupsOf = (the: HouseCase): readonly (readonly Like[])[] => {
  const groups = new Map<string, Like[]>();
  const add = (key: string, like: Like): void => {
    const group = groups.get(key) ?? [];
    // Like things with one value are one thing: a whole type of set is asked about once.
    if (group.some(({ what, value }) => what === like.what && value === like.value)) return;
    groups.set(key, [...group, like]);
  };
  for (const { lineSet, hang } of the.assessment.sets) {
    const { id, typeId } = lineSet;
    for (const { what, value, band, like } of massesOfSet(lineSet)) {
      const place = { set: id };
      if (like !== null) {
        add(like, { what: `${what}, type ${typeId}`, value, kind: BANDS[band].kind, at: place });
      }
    }
    for (const item of hang?.items ?? []) {
      const place = { set: id, item: item.id };
      for (const { what, value, band, like } of massesOfItem(item, lineSet)) {
        const kind = BANDS[band].kind;
        if (like !== null) add(like, { what: `${what} on set ${id}`, value, kind, at: place });
      }
    }
  }
  return [...groups.values()];
};

/** Each value is asked about once, against the first of the group that it clashes with. */
const askedOfGroup = (group: readonly Like[]): readonly Finding[] => {
  const found: Finding[] = [];
  for (const [index, like] of group.entries()) {
    const values = group.slice(0, index);
    // A value that came before was compared then.
    if (values.some(({ value }) => value === like.value)) continue;
    const clash = values.find(({ value }) => isRatioOfUnits(value, like.value, TYPED_SHARE));
    if (clash !== undefined) found.push(asked(like, clash));
  }
  return found;
};

const asked = (like: Like, other: Pick<Like, 'what' | 'value'>): Finding =>
  raise('UNI-002', {
    at: like.at,
    measured: measure(like.value, like.kind),
    facts: { what: like.what, other: other.what, against: measure(other.value, like.kind) },
  });

/** Bricks for one arbor are about as wide: their masses go with their thicknesses. */
const bricksByThickness = ({ brickKinds }: House): readonly Finding[] =>
  askedOfGroup(
    brickKinds.flatMap(({ id, mass, thickness }): readonly Like[] =>
      mass.known && thickness.known && thickness.value > 0
        ? [
            {
              what: `brick ${id}, mass per thickness`,
              value: mass.value / thickness.value,
              kind: 'massPerLength',
              at: { brickKind: id },
            },
          ]
        : [],
    ),
  );

/** What leaves an item in view against the whole of it. */
export const releaseInPounds: SetRule = ({ set: { lineSet, takeoffs } }) =>
  takeoffs.flatMap(({ item, total }) =>
    item.releases.flatMap(({ mass, how }) => {
      if (!mass.known || !total.known) return [];
      // Half of an item may well leave. More of it than there is may not.
      if (mass.value <= total.value.massKg) return [];
      if (!isRatioOfUnits(mass.value, total.value.massKg, TYPED_SHARE)) return [];
      const at = { set: lineSet.id, item: item.id };
      const what = `release of ${item.name}: ${how}`;
      const like: Like = { what, value: mass.value, kind: 'mass', at };
      return [asked(like, { what: item.name, value: total.value.massKg })];
    }),
  );

/** What a pull test says that hangs against what is listed. */
export const pulledInPounds = whenFlown((the) => {
  const { hung, lineSet } = the.set;
  const compared = comparePull(the);
  if (compared === null || !hung.known || !isInTheAir(the, compared.heightM)) return [];
  const listedKg = hung.value.withoutLoom;
  const pulledKg = listedKg + compared.differenceN / GRAVITY;
  if (!isRatioOfUnits(listedKg, pulledKg, PULLED_SHARE)) return [];
  const like = { what: 'what hangs, by pull test', kind: 'mass', at: { set: lineSet.id } } as const;
  return [
    asked({ ...like, value: pulledKg }, { what: 'what hangs, by the list', value: listedKg }),
  ];
});
