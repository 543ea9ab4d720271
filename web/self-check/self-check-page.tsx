/** What the program found when it checked itself, here and on the server. */
import type { CheckedCalculation, SelfCheckRecord, SelfCheckReport } from '#selfcheck';
import { CALCULATION_WORDS, SELF_CHECK_CAUTION, sayError, sayMoment, sayWorst } from '#sheets';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { RuledTable } from '../house-page/ruled-table.tsx';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { stateWords } from './screens.ts';
import { useChecks } from './use-checks.ts';

const cellsOf = (each: CheckedCalculation): readonly string[] => {
  const { calculation, cases, comparisons, failed, worst } = each;
  return [
    CALCULATION_WORDS[calculation],
    String(cases),
    String(comparisons),
    worst === null ? 'none measured' : sayWorst(worst),
    worst === null ? '' : sayError(worst.tolerance),
    worst?.case ?? '',
    failed === 0 ? 'none' : `${failed} FAILED`,
    String(each.developmentOnly),
  ];
};

const COLUMNS = [
  { head: 'calculation' },
  { head: 'cases', isNumber: true },
  { head: 'compared', isNumber: true },
  { head: 'worst error' },
  { head: 'accepted' },
  { head: 'in case' },
  { head: 'failed' },
  { head: 'in development only', isNumber: true },
];

const Report = ({
  title,
  report,
}: {
  readonly title: string;
  readonly report: SelfCheckReport;
}) => (
  <>
    {report.failed.map(({ id, title: what, fault }) => (
      <Notice key={id} degree="danger" title={`${id} failed`}>
        <p>
          {what}: {fault}
        </p>
      </Notice>
    ))}
    <RuledTable
      title={title}
      note={
        report.failed.length === 0
          ? 'Every case is within its tolerance. The worst error of a calculation is the one ' +
            'that is the largest share of what is accepted in its own case.'
          : 'Do not work by a screen or a sheet that rests on what failed.'
      }
      columns={COLUMNS}
      rows={report.calculations.map((each) => ({ key: each.calculation, cells: cellsOf(each) }))}
      empty="No calculation is checked."
    />
  </>
);

type CheckProps = { readonly title: string; readonly record: SelfCheckRecord };

const Check = ({ title, record }: CheckProps) => {
  const { installation, state } = record;
  const at = state.is === 'done' ? `, checked ${sayMoment(state.at)}` : '';
  return (
    <section className="self-check" aria-label={title}>
      {state.is === 'done' ? (
        <Report title={title} report={state.report} />
      ) : (
        <>
          <h2>{title}</h2>
          <p role="status">{stateWords(record)}</p>
        </>
      )}
      <p className="quiet">
        Counterpoise {installation.version}, build {installation.build}
        {at}. {installation.platform}
      </p>
    </section>
  );
};

const pdfLink = (paper: 'letter' | 'a4'): string =>
  `/api/self-check.pdf?${new URLSearchParams({ paper, by: nameOnDevice() }).toString()}`;

/** An old page kept open, or screens of an older build: what is checked here is not what prints. */
const OtherBuild = ({ browser, server }: { browser: SelfCheckRecord; server: SelfCheckRecord }) =>
  browser.installation.build === server.installation.build ? null : (
    <Notice degree="caution" title="this page and the server are two builds of the program">
      <p>Load the page again. If that does not help, the screens are to be built anew.</p>
    </Notice>
  );

export const SelfCheckPage = () => {
  const { browser, server } = useChecks();
  return (
    <>
      <div className="page-head">
        <h1>Self-check</h1>
        <p className="quiet">
          The validation cases, run again on this copy of the program. {SELF_CHECK_CAUTION}
        </p>
      </div>
      <div className="house-page">
        {server === null ? null : <OtherBuild browser={browser} server={server} />}
        <Check title="This browser, which works out the screens" record={browser} />
        {server === null ? (
          <p role="status">The server has not said yet what its own self-check found.</p>
        ) : (
          <Check title="The server, which makes the prints" record={server} />
        )}
        <p className="leaf-print">
          <span>Print the server's report:</span>
          <a href={pdfLink('letter')} target="_blank" rel="noreferrer">
            PDF, Letter
          </a>
          <a href={pdfLink('a4')} target="_blank" rel="noreferrer">
            PDF, A4
          </a>
        </p>
      </div>
      <TitleBlock drawing="Self-check" scale="no drawing" />
    </>
  );
};
