import type { BayTotal, TotalState } from '#assessment';
import { type Finding, measure, type Reckoned } from '#findings';
import type { Known } from '#house';
import { byKnown, lack } from '../known-values.ts';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import type { Opinion } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { worstBy } from '../worst.ts';

type Reckoning = BayTotal['vertical'];

/** One part of the building, all that its sets put on it in each state, and what it may carry. */
export type Carrier = {
  /** `bay A, downward`. */
  readonly name: string;
  readonly totals: readonly {
    readonly when: TotalState;
    readonly total: Reckoning;
    /** What may come on top when battens are out. */
    readonly wire: Reckoned<number>;
  }[];
  readonly limit: Known<number>;
  readonly limitName: string;
  readonly formula: string;
};

/** What cannot be added up is missed, save of a record: that is STA-005. */
export const totalLacks = ({ name, totals }: Carrier): readonly Opinion[] =>
  totals.flatMap(({ when, total }) =>
    total.known || when === 'recorded'
      ? []
      : total.needs.map((need) => lack(need, `load of ${name}`, 'house')),
  );

/** The heaviest of the states in which the total is known. */
export const heaviestOf = ({ totals }: Carrier) =>
  worstBy(
    totals.flatMap(({ when, total, wire }) =>
      total.known ? [{ when, total: total.value, wire }] : [],
    ),
    ({ total }) => total.value,
  );

type Codes = {
  readonly over: 'STL-001' | 'STL-004';
  readonly near: 'STL-002' | 'STL-005';
};

/**
 * Stops a part of the building past its limit in any state. Above nine tenths of it, or where the
 * lines of battens all out would pass it, a caution.
 */
export const judgeCarrier = (carrier: Carrier, { over, near }: Codes): readonly Opinion[] => {
  const heaviest = heaviestOf(carrier);
  const found = byKnown(
    carrier.limit,
    carrier.limitName,
    `load of ${carrier.name}`,
    (fullN, source): readonly Opinion[] => {
      if (heaviest === undefined) return [];
      const { total, wire } = heaviest;
      const byLimit = { limitN: fullN, fullN, source };
      if (isAbove(total.value, fullN)) return [findingOf(over, carrier, heaviest, byLimit)];
      const nearN = NEAR_LOAD * fullN;
      if (isAbove(total.value, nearN)) {
        const byNear = { limitN: nearN, fullN, source: NEAR_SOURCE };
        return [findingOf(near, carrier, heaviest, byNear)];
      }
      const isPassedByWire = wire.known && isAbove(total.value + wire.value, fullN);
      return isPassedByWire ? [findingOf(near, carrier, heaviest, byLimit)] : [];
    },
    'house',
  );
  return [...totalLacks(carrier), ...found];
};

const NEAR_SOURCE = '90 % of the limit: common practice, no source';

type Heaviest = NonNullable<ReturnType<typeof heaviestOf>>;
type Against = { readonly limitN: number; readonly fullN: number; readonly source: string };

const findingOf = (
  code: Codes['over'] | Codes['near'],
  carrier: Carrier,
  { when, total, wire }: Heaviest,
  { limitN, fullN, source }: Against,
): Finding => {
  const limit = measure(limitN, 'force');
  const most = worstBy(total.sets, ({ value }) => value);
  const mostN = most?.value ?? 0;
  return raise(code, {
    at: {},
    measured: measure(total.value, 'force'),
    limit,
    limitSource: source,
    facts: {
      carrier: carrier.name,
      when: WHEN_WORDS[when],
      sets: measure(total.sets.length, 'count'),
      share: measure(total.value / fullN, 'ratio'),
      full: measure(fullN, 'force'),
      most: most?.set ?? 'none',
      mostForce: measure(mostN, 'force'),
      wire: wire.known ? measure(wire.value, 'force') : 'an unknown force',
      what: withWireWords(total.value, wire, fullN),
    },
    working: workedOut(
      `load of ${carrier.name}`,
      'm + r',
      [
        term('m', `set ${most?.set ?? 'none'}, which puts most on it`, mostN, 'force'),
        term('r', 'all other sets, hung or bare', total.value - mostN, 'force'),
      ],
      term('F', `load of ${carrier.name}, ${WHEN_WORDS[when]}`, total.value, 'force'),
      {
        source: carrier.formula,
        limit: { value: limit, source },
        omits: 'the blocks and the steel itself, and pulls on hand lines, which add to it',
      },
    ),
  });
};

const withWireWords = (valueN: number, wire: Reckoned<number>, fullN: number): string => {
  if (!wire.known) return 'not judged';
  return isAbove(valueN + wire.value, fullN) ? 'past the limit then' : 'within the limit then too';
};

const WHEN_WORDS: Readonly<Record<TotalState, string>> = {
  planned: 'as planned',
  bare: 'with nothing hung',
  recorded: 'as recorded',
};
