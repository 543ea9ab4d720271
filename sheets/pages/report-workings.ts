/** Workings one under another: formula with its values, result and limit, and what it rests on. */

import type { Working } from '#findings';
import type { House } from '#house';
import { message, phrase, told } from '#texts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { typedPowers } from '../words/say-precise.ts';
import { type SaidWorking, sayWorking } from '../words/say-working.ts';
import { inHouseWords } from '../words/trade-translation.ts';

const UNKNOWN = message('unknown');

const sentence = (head: string, words: string | null): Words =>
  words === null || words === '' ? [] : [strong(`${head}: `), `${typedPowers(words)}. `];

/** Each sign with what it is; a value that somebody gave has its source behind it. */
const termsWords = ({ terms }: SaidWorking, house: House): string =>
  typedPowers(
    terms
      .map(({ symbol, meaning, value, source }) => {
        const from = source === null ? '' : ` (${source})`;
        const unknown = value === UNKNOWN ? `: ${phrase(house, UNKNOWN)}` : '';
        return `${symbol} ${meaning}${from}${unknown}`;
      })
      .join('; '),
  );

/** The limit, and how much of it the result is. */
const limitWords = ({ limit, result }: Working, house: House): Words => {
  if (limit === null) return [phrase(house, '; no limit given')];
  const said = sayMeasure(limit.value, house, { round: 'down', style: 'fine' });
  const share =
    result.value === null || limit.value.value === 0
      ? ''
      : phrase(house, ', {measure} of it', {
          measure: sayMeasure(
            { value: result.value.value / limit.value.value, kind: 'ratio' },
            house,
            {
              round: 'up',
            },
          ),
        });
  return limit.value.kind === 'ratio'
    ? [phrase(house, '; limit {said}', { said })]
    : [phrase(house, '; limit {said}{share}', { said, share })];
};

const rowsOf = (working: Working, house: House, isShort: boolean): readonly Row[] => {
  const said = sayWorking(working, house);
  const { limit, result } = working;
  const values = said.numbers.slice(`${result.symbol} = `.length);
  const notes: Words = [
    `${result.symbol} ${inHouseWords(result.meaning, house)}; ${termsWords(said, house)}. `,
    ...sentence(phrase(house, 'Limit'), limit === null ? null : told(house, limit.source)),
    ...sentence(phrase(house, 'Source'), said.source),
    ...sentence(phrase(house, 'Left out'), said.omits),
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
  columns: [
    { head: phrase(house, 'Formula, with its values, result and limit'), align: 'left', share: 1 },
  ],
  rows: workings.flatMap((working) => rowsOf(working, house, isShort)),
});

/** For tables whose columns are fitted to what stands in them. */
export const REPORT_WIDTH = BODY_WIDTH.portrait;
