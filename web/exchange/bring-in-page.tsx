/** Something from elsewhere, told and shown before it is taken; what is here stays till then. */
import { unreachable } from '#outcome';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { DocumentsStep } from './documents-step.tsx';
import { FileChoice } from './file-choice.tsx';
import type { Found } from './file-reading.ts';
import { shownText } from './shown-text.ts';
import { TableStep } from './table-step.tsx';
import { type Reading, useReading } from './use-reading.ts';

export const BringInPage = () => {
  const { reading, begin, cancel } = useReading();
  return (
    <>
      <div className="page-head">
        <h1>Bring in</h1>
        <p className="quiet">
          A list from a spreadsheet, a document, or a whole archive. First it is shown what would
          change; nothing is taken before you say so.
        </p>
        <p>
          <Link to={{ kind: 'takeOut', at: null }}>Take out instead</Link>
        </p>
      </div>
      <FileChoice onGive={begin} />
      <ReadingState reading={reading} onCancel={cancel} />
      <TitleBlock drawing="Bring in" scale="none" />
    </>
  );
};

type StateProps = { readonly reading: Reading; readonly onCancel: () => void };

const ReadingState = ({ reading, onCancel }: StateProps) => {
  switch (reading.is) {
    case 'none':
      return null;
    case 'reading':
      return (
        <div className="at-work">
          <p role="status">Reading {shownText(reading.file)} …</p>
          <progress
            aria-label="files of the archive that were looked through"
            {...(reading.of === 0 ? {} : { value: reading.done, max: reading.of })}
          />
          <button type="button" onClick={onCancel}>
            Cancel
          </button>
        </div>
      );
    case 'ended':
      return (
        <Notice degree="caution" title={`${shownText(reading.file)} was not read`} isNews>
          <p>{reading.why} Nothing was changed.</p>
        </Notice>
      );
    case 'found':
      return <FoundStep key={reading.at} found={reading.found} />;
    default:
      return unreachable(reading);
  }
};

const FoundStep = ({ found }: { readonly found: Found }) => {
  const file = shownText(found.file);
  switch (found.is) {
    case 'refused':
      return (
        <Notice degree="caution" title={`${file} was not understood`} isNews>
          <p>Nothing was taken, and nothing was changed.</p>
          <RefusalsWithPlace
            refusals={found.refusals.map((one) => ({ ...one, found: shownText(one.found, 200) }))}
          />
        </Notice>
      );
    case 'table':
      return <TableStep file={file} sheets={found.sheets} />;
    case 'order':
      return (
        <Notice degree="note" title={`${file} is an order of work`}>
          <p>
            For set {found.order.set} of show {shownText(found.order.show)}, with{' '}
            {found.order.steps} steps. Orders are not kept with the documents: one is searched for,
            or written by hand, on the screen of its set, and judged there.
          </p>
          <p>
            <Link to={{ kind: 'order', set: found.order.set, job: null, from: null }}>
              Open the order of set {found.order.set}
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
