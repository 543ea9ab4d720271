/**
 * The documents where nothing else can be shown: a house without a show, or a document that is not
 * understood. They are where it is mended.
 */
import { lazy, type ReactNode, Suspense } from 'react';
import type { Place } from '../address/address.ts';
import { Hatches } from '../drawing/drawing-view.tsx';
import { Frame } from '../frame/frame.tsx';
import { useUndoKeys } from '../frame/use-undo-keys.ts';
import type { Open } from '../keeping/kept.ts';
import { useTell } from '../language/use-tell.ts';

export const DocumentsScreen = lazy(async () => ({
  default: (await import('./documents-screen.tsx')).DocumentsScreen,
}));

type AloneProps = { readonly open: Open; readonly place: Place; readonly children: ReactNode };

/** The documents where the address asks for them, and else what stands there in their place. */
export const OrDocuments = ({ open, place, children }: AloneProps) => {
  const tell = useTell();
  return place.kind === 'documents' ? (
    <main>
      <Suspense fallback={<p className="empty-words">{tell('Fetching this screen …')}</p>}>
        <DocumentsScreen place={place} open={open} noticed={[]} />
      </Suspense>
    </main>
  ) : (
    children
  );
};

export const DocumentsAlone = (props: AloneProps) => {
  const { open, place, children } = props;
  const tell = useTell();
  useUndoKeys(Object.keys(open.documents));
  if (place.kind !== 'documents') return children;
  return (
    <Frame isDemo={open.databases.inHand === 'demo'} title={tell('Documents')}>
      <Hatches />
      <OrDocuments {...props} />
    </Frame>
  );
};
