/** The rows of the checks: a value, its limit and who says so, with the working behind it. */
import { type SetAssessment, workingsOf } from '#assessment';
import type { Measure, Working } from '#findings';
import type { House, Known } from '#house';
import { formatLength, metres } from '#quantities';
import { basisWords, sayMeasure } from '#sheets';
import { message, phrase } from '#texts';

export type CheckRow = {
  /** English as the engine gives it; said where it is shown. */
  readonly title: string;
  readonly value: string;
  readonly limit: string;
  readonly source: string;
  readonly workings: readonly Working[];
  /** Whether the value is past its limit; the finding beside the table says what it means. */
  readonly isPast: boolean;
};

type Limit = { readonly words: string; readonly source: string };

const unlimited = (house: House): Limit => ({
  words: phrase(house, 'no limit given'),
  source: '',
});

const limitOf = (value: Known<number>, kind: Measure['kind'], house: House): Limit =>
  value.known
    ? {
        words: sayMeasure({ value: value.value, kind }, house, { round: 'down' }),
        source: value.provenance.source ?? basisWords(value.provenance.basis, house),
      }
    : { words: phrase(house, 'limit not known'), source: value.why ?? '' };

const isPast = ({ result, limit }: Working): boolean =>
  result.value !== null &&
  limit !== null &&
  Math.abs(result.value.value) > Math.abs(limit.value.value);

/** The only lengths among the checks are stacks, and the tape at the arbor is read in inches. */
const said = (value: Measure, house: House, round: 'up' | 'down'): string =>
  value.kind === 'length'
    ? formatLength(metres(value.value), house, { round, customaryLength: 'inches' })
    : sayMeasure(value, house, { round });

const loadRow = ({ hung, lineSet, takeoffs }: SetAssessment, house: House): CheckRow => {
  const limit = limitOf(lineSet.liveLimit, 'mass', house);
  return {
    title: message('What hangs'),
    value: hung.known
      ? sayMeasure({ value: hung.value.withoutLoom, kind: 'mass' }, house, { round: 'up' })
      : phrase(house, 'unknown'),
    limit: limit.words,
    source: limit.source,
    workings: takeoffs.map(({ item, working }) => ({
      ...working,
      title: `${item.name}: ${working.title}`,
    })),
    isPast:
      hung.known && lineSet.liveLimit.known && hung.value.withoutLoom > lineSet.liveLimit.value,
  };
};

/** The arbor's own limit stands in the house; the working is of the mass alone. */
const givenLimit = ({ title, limit }: Working, { lineSet }: SetAssessment, house: House): Limit => {
  if (limit !== null) {
    return { words: said(limit.value, house, 'down'), source: limit.source };
  }
  const arbor = title === 'Whole arbor' ? lineSet.arbor : null;
  return arbor === null ? unlimited(house) : limitOf(arbor.massLimit, 'mass', house);
};

/** A row for a working whose own limit is all that it is held against. */
export const rowOfWorking = (working: Working, house: House): CheckRow => {
  const { result, limit, title } = working;
  return {
    title,
    value:
      result.value === null
        ? phrase(house, 'unknown')
        : sayMeasure(result.value, house, { round: limit === null ? 'nearest' : 'up' }),
    limit:
      limit === null
        ? phrase(house, 'no limit given')
        : sayMeasure(limit.value, house, { round: 'down' }),
    source: limit === null ? '' : limit.source,
    workings: [working],
    isPast: isPast(working),
  };
};

export const checkRows = (set: SetAssessment, house: House): readonly CheckRow[] => [
  ...(set.hang === null ? [] : [loadRow(set, house)]),
  ...workingsOf(set, house).map((working) => {
    const { words, source } = givenLimit(working, set, house);
    const { value } = working.result;
    return {
      title: working.title,
      value: value === null ? phrase(house, 'unknown') : said(value, house, 'up'),
      limit: words,
      source,
      workings: [working],
      isPast: isPast(working),
    };
  }),
];
