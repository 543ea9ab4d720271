/**
 * The documents of the database and their revisions. It stands on its own feet: a house without a
 * show, or a document that is not understood, is mended from here.
 */
import { useContext } from 'react';
import { SaveNotices } from '../frame/save-notices.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import type { Open } from '../keeping/kept.ts';
import { useTell } from '../language/use-tell.ts';
import { WorkContext } from '../reckoning/use-work.ts';
import { DocumentPage } from './document-page.tsx';
import type { DocumentsPlace } from './shelf-of.ts';
import { ShelfPage } from './shelf-page.tsx';

type ScreenProps = {
  readonly place: DocumentsPlace;
  readonly open: Open;
  /** Documents whose notices stand above already. */
  readonly noticed: readonly string[];
};

export const DocumentsScreen = ({ place, open, noticed }: ScreenProps) => (
  <>
    <SaveNotices
      documents={Object.values(open.documents).filter(({ id }) => !noticed.includes(id))}
    />
    {place.document === null ? (
      <ShelfPage open={open} />
    ) : (
      <DocumentPage key={place.document} id={place.document} place={place} open={open} />
    )}
    <Closing />
  </>
);

/** The title block speaks of the house in view; where none can be shown there is none. */
const Closing = () => {
  const tell = useTell();
  return useContext(WorkContext) === null ? null : (
    <TitleBlock drawing={tell('Documents')} scale={tell('none')} />
  );
};
