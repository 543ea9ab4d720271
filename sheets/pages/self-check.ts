/** What the program found when it checked itself; about a copy of it, not about a house. */
import type { CheckedCalculation, SelfCheckRecord, SelfCheckReport } from '#selfcheck';
import { BODY_WIDTH, CAUTIONS } from '../page-parts.ts';
import { qrDrawing, sheetAddress } from '../qr-drawing.ts';
import type { Block, Notice, Row, Sheet, SheetData, Stamp, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sheetCode } from '../sheet-code.ts';
import { sayMoment } from '../words/say-moment.ts';
import {
  CALCULATION_WORDS,
  SELF_CHECK_CAUTION,
  SELF_CHECK_FAILED,
  sayError,
  sayWorst,
} from '../words/say-self-check.ts';
import { fitted } from './column-shares.ts';

const ID = 'self-check';

const rowOf = ({ calculation, cases, comparisons, worst, failed }: CheckedCalculation): Row => {
  const name = CALCULATION_WORDS[calculation];
  const found: readonly Words[] =
    worst === null
      ? [['none measured'], [''], ['']]
      : [[sayWorst(worst)], [sayError(worst.tolerance)], [worst.case]];
  return {
    cells: [
      failed === 0 ? [name] : [strong(`${name}: ${failed} FAILED`)],
      [`${cases}`],
      [`${comparisons}`],
      ...found,
    ],
    rule: failed === 0 ? 'hair' : 'thick',
    ...(cases === 0 ? { isMuted: true } : {}),
  };
};

const tableOf = ({ calculations }: SelfCheckReport): Table =>
  fitted(
    {
      kind: 'table',
      columns: [
        { head: 'Calculation', align: 'left', share: 0.26 },
        { head: 'Cases', align: 'right', share: 0.08 },
        { head: 'Compared', align: 'right', share: 0.12 },
        { head: 'Worst error', align: 'left', share: 0.26 },
        { head: 'Accepted', align: 'left', share: 0.12 },
        { head: 'In case', align: 'left', share: 0.16 },
      ],
      rows: calculations.map(rowOf),
    },
    BODY_WIDTH.portrait,
  );

const total = (
  { calculations }: SelfCheckReport,
  of: 'cases' | 'comparisons' | 'developmentOnly',
): number => calculations.reduce((sum, each) => sum + each[of], 0);

const developmentWords = (report: SelfCheckReport): string => {
  const parts = report.calculations
    .filter(({ developmentOnly }) => developmentOnly > 0)
    .map((each) => `${CALCULATION_WORDS[each.calculation]} ${each.developmentOnly}`);
  return (
    `Not run here: ${total(report, 'developmentOnly')} further cases need a development tool, ` +
    `and run only where the program is developed (${parts.join('; ')}).`
  );
};

const failedBlocks = ({ failed }: SelfCheckReport): readonly Block[] => {
  if (failed.length === 0) return [];
  const notice: Notice = {
    kind: 'notice',
    degree: 'danger',
    heading: SELF_CHECK_FAILED,
    words: [
      'On this machine the program does not compute as it did when it was checked. ' +
        'Do not work by a screen or a sheet that rests on what failed.',
    ],
  };
  const items = failed.map(({ id, title, fault }): Words => [strong(id), ` ${title}: ${fault}`]);
  return [notice, { kind: 'list', heading: 'Failed', items }];
};

const doneBlocks = (report: SelfCheckReport): readonly Block[] => [
  ...failedBlocks(report),
  tableOf(report),
  {
    kind: 'text',
    words: [
      'The worst error is the one that is the largest share of what is accepted in its own case. ',
      'Each case, what it is held against and why so much is accepted: VALIDATION.md.',
    ],
  },
  { kind: 'text', words: [developmentWords(report)] },
];

const blocksOf = ({ state }: SelfCheckRecord): readonly Block[] => {
  if (state.is === 'done') return doneBlocks(state.report);
  const words =
    state.is === 'running'
      ? `The self-check is not finished: ${state.done} of ${state.total} cases are run.`
      : 'The self-check was not run.';
  return [{ kind: 'notice', degree: 'caution', heading: 'NO REPORT YET', words: [words] }];
};

const nameOf = ({ state }: SelfCheckRecord): string => {
  if (state.is !== 'done') return 'Not finished';
  const { failed } = state.report;
  if (failed.length > 0) return failed.length === 1 ? '1 case FAILED' : `${failed.length} FAILED`;
  return `${total(state.report, 'cases')} cases within tolerance`;
};

/** No sign of its own for "without end": a spreadsheet takes words in a cell too. */
const dataOf = ({ state }: SelfCheckRecord): SheetData | null =>
  state.is === 'done'
    ? {
        columns: ['calculation', 'cases', 'compared', 'failed', 'worst error', 'accepted', 'unit'],
        rows: state.report.calculations.map((each) => [
          each.calculation,
          each.cases,
          each.comparisons,
          each.failed,
          each.worst?.error ?? null,
          each.worst?.tolerance ?? null,
          each.worst?.unit ?? null,
        ]),
      }
    : null;

/** The report as a sheet; it needs no house, and the same is printed from a terminal. */
export const selfCheckSheet = (
  record: SelfCheckRecord,
  { printedAt, printedBy }: Pick<Stamp, 'printedAt' | 'printedBy'>,
): Sheet => {
  const { installation, state } = record;
  const results = state.is === 'done' ? state.report : null;
  const code = sheetCode({ id: ID, installation, results });
  return {
    id: ID,
    kind: ID,
    title: 'Self-check report',
    number: null,
    name: nameOf(record),
    beside: null,
    orientation: 'portrait',
    facts: [
      { term: 'version', value: `${installation.version}, build ${installation.build}` },
      { term: 'runs on', value: installation.platform },
      { term: 'checked', value: state.is === 'done' ? sayMoment(state.at) : 'not finished' },
      { term: 'printed', value: `${sayMoment(printedAt)}, ${printedBy}` },
    ],
    blocks: [...blocksOf(record), { kind: 'text', words: [strong(SELF_CHECK_CAUTION)] }],
    footer: {
      voidIf: 'Void for any other version, build or machine than the one named above.',
      code,
      qr: qrDrawing(sheetAddress(installation.build, ID, code)),
      cautions: CAUTIONS,
    },
    frame: null,
    printedAt,
    data: dataOf(record),
  };
};
