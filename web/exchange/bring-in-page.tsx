/** Something from elsewhere, told and shown before it is taken; what is here stays till then. */
import { unreachable } from '#outcome';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell } from '../language/use-tell.ts';
import { DocumentsStep } from './documents-step.tsx';
import { FileChoice } from './file-choice.tsx';
import type { Found } from './file-reading.ts';
import { shownText } from './shown-text.ts';
import { TableStep } from './table-step.tsx';
import { type Reading, useReading } from './use-reading.ts';

export const BringInPage = () => {
  const tell = useTell();
  const { reading, begin, cancel } = useReading();
  return (
    <>
      <div className="page-head">
        <h1>{tell('Bring in')}</h1>
        <p className="quiet">
          {tell(
            'A list from a spreadsheet, a document, or a whole archive. First it is shown what ' +
              'would change; nothing is taken before you say so.',
          )}
        </p>
        <p>
          <Link to={{ kind: 'takeOut', at: null }}>{tell('Take out instead')}</Link>
        </p>
      </div>
      <FileChoice onGive={begin} />
      <ReadingState reading={reading} onCancel={cancel} />
      <TitleBlock drawing={tell('Bring in')} scale={tell('none')} />
    </>
  );
};

type StateProps = { readonly reading: Reading; readonly onCancel: () => void };

const ReadingState = ({ reading, onCancel }: StateProps) => {
  const tell = useTell();
  switch (reading.is) {
    case 'none':
      return null;
    case 'reading':
      return (
        <div className="at-work">
          <p role="status">{tell('Reading {file} …', { file: shownText(reading.file) })}</p>
          <progress
            aria-label={tell('files of the archive that were looked through')}
            {...(reading.of === 0 ? {} : { value: reading.done, max: reading.of })}
          />
          <button type="button" onClick={onCancel}>
            {tell('Cancel')}
          </button>
        </div>
      );
    case 'ended':
      return (
        <Notice
          degree="caution"
          title={tell('{file} was not read', { file: shownText(reading.file) })}
          isNews
        >
          <p>{tell('{why} Nothing was changed.', { why: reading.why })}</p>
        </Notice>
      );
    case 'found':
      return <FoundStep key={reading.at} found={reading.found} />;
    default:
      return unreachable(reading);
  }
};

const FoundStep = ({ found }: { readonly found: Found }) => {
  const tell = useTell();
  const file = shownText(found.file);
  switch (found.is) {
    case 'refused':
      return (
        <Notice degree="caution" title={tell('{file} was not understood', { file })} isNews>
          <p>{tell('Nothing was taken, and nothing was changed.')}</p>
          <RefusalsWithPlace
            refusals={found.refusals.map((one) => ({ ...one, found: shownText(one.found, 200) }))}
          />
        </Notice>
      );
    case 'table':
      return <TableStep file={file} sheets={found.sheets} />;
    case 'order':
      return (
        <Notice degree="note" title={tell('{file} is an order of work', { file })}>
          <p>
            {tell(
              'For set {set} of show {show}, with {steps} steps. Orders are not kept with the ' +
                'documents: one is searched for, or written by hand, on the screen of its set, ' +
                'and judged there.',
              {
                set: found.order.set,
                show: shownText(found.order.show),
                steps: found.order.steps,
              },
            )}
          </p>
          <p>
            <Link to={{ kind: 'order', set: found.order.set, job: null, from: null }}>
              {tell('Open the order of set {set}', { set: found.order.set })}
            </Link>
          </p>
        </Notice>
      );
    case 'documents':
    case 'archive':
      return <DocumentsStep found={found} />;
    default:
      return unreachable(found);
  }
};
