/** Workings one under another: formula with its values, result and limit, and what it rests on. */
import type { Working } from '#findings';
import type { House } from '#house';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { typedPowers } from '../words/say-precise.ts';
import { type SaidWorking, sayWorking } from '../words/say-working.ts';
import { inHouseWords } from '../words/trade-translation.ts';

const sentence = (head: string, words: string | null): Words =>
  words === null || words === '' ? [] : [strong(`${head}: `), `${typedPowers(words)}. `];

/** Each sign with what it is; a value that somebody gave has its source behind it. */
const termsWords = ({ terms }: SaidWorking): string =>
  typedPowers(
    terms
      .map(({ symbol, meaning, value, source }) => {
        const from = source === null ? '' : ` (${source})`;
        const unknown = value === 'unknown' ? ': unknown' : '';
        return `${symbol} ${meaning}${from}${unknown}`;
      })
      .join('; '),
  );

/** The limit, and how much of it the result is. */
const limitWords = ({ limit, result }: Working, house: House): Words => {
  if (limit === null) return ['; no limit given'];
  const said = sayMeasure(limit.value, house, { round: 'down', style: 'fine' });
  const share =
    result.value === null || limit.value.value === 0
      ? ''
      : `, ${sayMeasure({ value: result.value.value / limit.value.value, kind: 'ratio' }, house, {
          round: 'up',
        })} of it`;
  return limit.value.kind === 'ratio' ? [`; limit ${said}`] : [`; limit ${said}${share}`];
};

const rowsOf = (working: Working, house: House, isShort: boolean): readonly Row[] => {
  const said = sayWorking(working, house);
  const { limit, result } = working;
  const values = said.numbers.slice(`${result.symbol} = `.length);
  const notes: Words = [
    `${result.symbol} ${inHouseWords(result.meaning, house)}; ${termsWords(said)}. `,
    ...sentence('Limit', limit?.source ?? null),
    ...sentence('Source', said.source),
    ...sentence('Left out', said.omits),
  ];
  return [
    { cells: [[strong(said.title)]], rule: 'hair', isGroup: true },
    {
      cells: [
        [
          typedPowers(`${said.symbols} = ${values} = `),
          strong(typedPowers(said.result)),
          ...limitWords(working, house),
        ],
      ],
      rule: 'hair',
    },
    ...(isShort ? [] : [{ cells: [notes], rule: 'hair', isMuted: true } as const]),
  ];
};

/** Short: only formula, values, result and limit, where the same was told in full before. */
export const workingsTable = (
  workings: readonly Working[],
  house: House,
  { isShort = false }: { readonly isShort?: boolean } = {},
): Table => ({
  kind: 'table',
  columns: [{ head: 'Formula, with its values, result and limit', align: 'left', share: 1 }],
  rows: workings.flatMap((working) => rowsOf(working, house, isShort)),
});

/** For tables whose columns are fitted to what stands in them. */
export const REPORT_WIDTH = BODY_WIDTH.portrait;
