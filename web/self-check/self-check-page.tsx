/** What the program found when it checked itself, here and on the server. */
import type { CheckedCalculation, SelfCheckRecord, SelfCheckReport } from '#selfcheck';
import { CALCULATION_WORDS, SELF_CHECK_CAUTION, sayMoment } from '#sheets';
import { message, phrase, told, type Voice } from '#texts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { RuledTable } from '../house-page/ruled-table.tsx';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { errorWords, figureWords } from './error-words.ts';
import { stateWords } from './screens.ts';
import { useChecks } from './use-checks.ts';

const cellsOf = (each: CheckedCalculation, voice: Voice): readonly string[] => {
  const { calculation, cases, comparisons, failed, worst } = each;
  return [
    phrase(voice, CALCULATION_WORDS[calculation]),
    String(cases),
    String(comparisons),
    worst === null ? phrase(voice, 'none measured') : errorWords(worst, voice),
    worst === null ? '' : figureWords(worst.tolerance, voice),
    worst?.case ?? '',
    failed === 0 ? phrase(voice, 'none') : phrase(voice, '{count} FAILED', { count: failed }),
    String(each.developmentOnly),
  ];
};

const COLUMNS = [
  { head: message('calculation') },
  { head: message('cases'), isNumber: true },
  { head: message('compared'), isNumber: true },
  { head: message('worst error') },
  { head: message('accepted') },
  { head: message('in case') },
  { head: message('failed') },
  { head: message('in development only'), isNumber: true },
];

const Report = ({
  title,
  report,
}: {
  readonly title: string;
  readonly report: SelfCheckReport;
}) => {
  const tell = useTell();
  const voice = useVoice();
  return (
    <>
      {report.failed.map(({ id, title: what, fault }) => (
        <Notice key={id} degree="danger" title={tell('{id} failed', { id })}>
          <p>
            {told(voice, what)}: {told(voice, fault)}
          </p>
        </Notice>
      ))}
      <RuledTable
        title={title}
        note={
          report.failed.length === 0
            ? tell(
                'Every case is within its tolerance. The worst error of a calculation is the one ' +
                  'that is the largest share of what is accepted in its own case.',
              )
            : tell('Do not work by a screen or a sheet that rests on what failed.')
        }
        columns={COLUMNS.map((column) => ({ ...column, head: tell(column.head) }))}
        rows={report.calculations.map((each) => ({
          key: each.calculation,
          cells: cellsOf(each, voice),
        }))}
        empty={tell('No calculation is checked.')}
      />
    </>
  );
};

type CheckProps = { readonly title: string; readonly record: SelfCheckRecord };

const Check = ({ title, record }: CheckProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { installation, state } = record;
  const { version, build, platform } = installation;
  const at =
    state.is === 'done' ? tell(', checked {moment}', { moment: sayMoment(state.at, voice) }) : '';
  return (
    <section className="self-check" aria-label={title}>
      {state.is === 'done' ? (
        <Report title={title} report={state.report} />
      ) : (
        <>
          <h2>{title}</h2>
          <p role="status">{stateWords(record, voice)}</p>
        </>
      )}
      <p className="quiet">
        {tell('Counterpoise {version}, build {build}', { version, build })}
        {at}. {platform}
      </p>
    </section>
  );
};

const pdfLink = (paper: 'letter' | 'a4'): string =>
  `/api/self-check.pdf?${new URLSearchParams({ paper, by: nameOnDevice() }).toString()}`;

/** An old page kept open, or screens of an older build: what is checked here is not what prints. */
const OtherBuild = ({ browser, server }: { browser: SelfCheckRecord; server: SelfCheckRecord }) => {
  const tell = useTell();
  return browser.installation.build === server.installation.build ? null : (
    <Notice degree="caution" title={tell('this page and the server are two builds of the program')}>
      <p>{tell('Load the page again. If that does not help, the screens are to be built anew.')}</p>
    </Notice>
  );
};

export const SelfCheckPage = () => {
  const tell = useTell();
  const { browser, server } = useChecks();
  return (
    <>
      <div className="page-head">
        <h1>{tell('Self-check')}</h1>
        <p className="quiet">
          {tell('The validation cases, run again on this copy of the program.')}{' '}
          {tell(SELF_CHECK_CAUTION)}
        </p>
      </div>
      <div className="house-page">
        {server === null ? null : <OtherBuild browser={browser} server={server} />}
        <Check title={tell('This browser, which works out the screens')} record={browser} />
        {server === null ? (
          <p role="status">{tell('The server has not said yet what its own self-check found.')}</p>
        ) : (
          <Check title={tell('The server, which makes the prints')} record={server} />
        )}
        <p className="leaf-print">
          <span>{tell("Print the server's report:")}</span>
          <a href={pdfLink('letter')} target="_blank" rel="noreferrer">
            {tell('PDF, Letter')}
          </a>
          <a href={pdfLink('a4')} target="_blank" rel="noreferrer">
            {tell('PDF, A4')}
          </a>
        </p>
        <p className="leaf-print">
          <Link to={{ kind: 'thisServer' }}>{tell('Where this server is, and how it is')}</Link>
        </p>
      </div>
      <TitleBlock drawing={tell('Self-check')} scale={tell('no drawing')} />
    </>
  );
};
