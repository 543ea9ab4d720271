/** The report of a self-check as lines of a terminal; the words are those of the sheet. */
import type { CheckedCalculation, SelfCheckRecord, SelfCheckReport } from '#selfcheck';
import { CALCULATION_WORDS, SELF_CHECK_CAUTION, sayError, sayMoment, sayWorst } from '#sheets';

const HEAD = ['calculation', 'cases', 'compared', 'worst error', 'accepted', 'in case'];
/** Numbers that are counted stand at the right, under each other. */
const COUNTED = [1, 2];

const cellsOf = (each: CheckedCalculation): readonly string[] => {
  const { calculation, cases, comparisons, worst } = each;
  const counts = [CALCULATION_WORDS[calculation], `${cases}`, `${comparisons}`];
  return worst === null
    ? [...counts, 'none measured', '', '']
    : [...counts, sayWorst(worst), sayError(worst.tolerance), worst.case];
};

const inColumns = (rows: readonly (readonly string[])[]): readonly string[] => {
  const widths = HEAD.map((_, column) =>
    Math.max(...rows.map((cells) => (cells[column] ?? '').length)),
  );
  return rows.map((cells) =>
    cells
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return COUNTED.includes(column) ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd(),
  );
};

const reportLines = ({ calculations, failed }: SelfCheckReport): readonly string[] => {
  const sum = (of: 'cases' | 'developmentOnly'): number =>
    calculations.reduce((all, each) => all + each[of], 0);
  return [
    ...inColumns([HEAD, ...calculations.map(cellsOf)]),
    '',
    ...failed.map(({ id, title, fault }) => `FAILED   ${id} ${title}: ${fault}`),
    failed.length === 0
      ? `All ${sum('cases')} cases are within tolerance.`
      : `${failed.length} of ${sum('cases')} cases FAILED. Do not work by what rests on them.`,
    `${sum('developmentOnly')} further cases need a development tool and were not run.`,
    SELF_CHECK_CAUTION,
  ];
};

export const selfCheckText = ({ installation, state }: SelfCheckRecord): string => {
  const { version, build, platform } = installation;
  const head = `Counterpoise ${version}, build ${build}, ${platform}`;
  const lines =
    state.is === 'done'
      ? [`Checked ${sayMoment(state.at)}`, '', ...reportLines(state.report)]
      : ['The self-check was not run to its end.'];
  return `${[head, ...lines].join('\n')}\n`;
};
